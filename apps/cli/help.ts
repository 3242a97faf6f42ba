/** Help that teaches: what each command is for, how it is called, what comes back. */
export const commands = {
  solve: {
    line: 'solve JOB         the fastening of one roof: schedule, proof, order, papers',
    text: `deckbite solve JOB [--shelf FILE] [--out DIR] [--json]

  JOB          a job document (JSON); "deckbite schema job" prints what may stand in it
  --shelf FILE catalogue to choose from; without it the demonstration shelf
  --out DIR    write the papers there: submittal.pdf, crew-sheet.pdf, order.csv, order.xlsx,
               layout.svg, layout.dxf, result.json
  --json       print the whole result as JSON instead of the summary

  Leaves 0 when all hold, 1 when something falls short, 2 when nothing falls short but something
  is unproven, 3 when the input is bad; then every fault is listed with its field and nothing is written.
  4 when the program or the file system breaks down; no verdict is reached then, one sentence says why.

  deckbite solve demo/a-boathouse.json --out out/a
`,
  },
  ask: {
    line: 'ask JOB           what to ask next: the unknowns that change the answer, most decisive first',
    text: `deckbite ask JOB [--shelf FILE] [--json]

  Tries every unknown of the job (asked, assumed, or left out although something hangs on it) over its
  plausible values and ranks the questions by what they move: verdicts, items, spacings, price. Tells
  which need not be asked, and the one order that serves whatever the answer is.

  Leaves 0 when nothing needs asking, 2 when questions remain, 3 when the input is bad.
`,
  },
  margins: {
    line: 'margins JOB       what would break it: wind speed, spacing, thicknesses at which each line ends',
    text: `deckbite margins JOB [--shelf FILE] [--json]

  For each line of the schedule, item and spacing held: between which wind speeds, spacings, thicknesses
  of support and panel it holds, to half a percent, and what decides beyond; where it does not hold, the
  value at which it would start to, or why there is none.

  Leaves 0, or 3 when the input is bad.
`,
  },
  clause: {
    line: 'clause [ID ...]   the clauses of the standards; with values, one of them worked out',
    text: `deckbite clause                        lists every clause, one a line
deckbite clause ID                     what it takes
deckbite clause ID name=value ...      works it out and prints the steps
  --json                               value, unit and steps, or the refusal

  Values carry their unit; choices are given by their words.
  deckbite clause aisi-s100-16/j4.4.1-pull-out tc="0.0566 in" d="0.19 in" Fu2="65 ksi"

  Leaves 0 with a value, 2 when the clause refuses (outside its limits), 3 when the input is bad.
`,
  },
  designation: {
    line: 'designation TEXT  what a written description of a screw, nail or rivet says, piece by piece',
    text: `deckbite designation TEXT [--json]

  Reads one description as the trade writes it: every field with the piece of text it was read from and
  what it means, then what is in doubt, then the words not understood.
  deckbite designation "12-14 x 1 1/2 HWH SDS #3 w/ washer"

  Leaves 0 when all was read without doubt, 2 with doubts or words not understood, 3 when nothing was read.
`,
  },
  schema: {
    line: 'schema [NAME]     the JSON Schema of job, shelf or result',
    text: `deckbite schema [job|shelf|result]

  Prints the JSON Schema (job without a name). Documents are checked against it when they are read.
`,
  },
  demo: {
    line: 'demo              solves the demonstration jobs and writes all their papers',
    text: `deckbite demo [--out DIR]

  Solves the four demonstration jobs and writes their papers to DIR (out without one), a folder each.
`,
  },
} as const;

export type CommandName = keyof typeof commands;

export const isCommand = (name: string): name is CommandName => Object.hasOwn(commands, name);

export function helpFor(name: CommandName | undefined): string {
  if (name) return commands[name].text;
  const lines = Object.values(commands).map(({ line }) => `  ${line}`);
  return `deckbite: what holds this metal roof down, and how do we know?

${lines.join('\n')}

  deckbite help COMMAND   tells more of one

Every command leaves 4 when the program itself or the file system breaks down, never a verdict.

Results are for a licensed engineer and the building official to accept; tables and tests of the
panel maker and the local code govern.
`;
}
