/** The answer in a terminal: what is asked, the schedule, what falls short and what would mend it, the order. */
import type { Answer } from '../../src/answer/answer.ts';
import type { ConnectionChoice, ScheduleLine } from '../../src/choose/schedule.ts';
import { type Printer, printer } from '../../src/papers/print-units.ts';
import { ink, printable } from './terminal.ts';

export function summaryOf(answer: Answer): string {
  const bold = ink('bold');
  const print = printer(answer.job.print.units);
  const { job, basis, count, takeoff } = answer;
  const area = answer.roof.planes.reduce((sum, plane) => sum + plane.slopeArea_ft2, 0);
  return [
    bold(printable(job.name)),
    `${printable(answer.field.cites)}, ${basis.method}; ${answer.roof.planes.length} plane${answer.roof.planes.length === 1 ? '' : 's'}, ${print.text('area', area)} on the slope`,
    '',
    ...asked(answer),
    ...schedule(answer, print),
    '',
    ...shortfalls(answer, print),
    `${bold(`${count.holds} hold, ${count.fallsShort} fall short, ${count.unproven} unproven`)}   order ${takeoff.total.toFixed(2)} ${takeoff.currency}, ${print.weight(takeoff.weight_lbf)}`,
    '',
  ].join('\n');
}

function asked(answer: Answer): string[] {
  const open = answer.inputs.filter((input) => input.standing === 'asked');
  return open.length === 0
    ? []
    : ['To ask:', ...open.map((input) => `  ${input.path}: ${printable(input.because ?? '')}`), ''];
}

function schedule(answer: Answer, print: Printer): string[] {
  const rows = answer.choices.flatMap((choice) => {
    if (choice.lines.length > 0)
      return choice.lines.map((line, i) => rowOf(answer, choice, line, i === 0, print));
    return [[choice.connection.id, choice.item?.id ?? 'nothing fits', 'none', '', '', '', '', '', '']];
  });
  const head = [
    'connection',
    'item',
    'zone',
    print.unit('spacing'),
    'each',
    `load ${print.unit('force')}`,
    'governed by',
    'ratio',
    'verdict',
  ];
  const widths = head.map((title, i) => Math.max(title.length, ...rows.map((row) => (row[i] ?? '').length)));
  const right = new Set([3, 4, 5, 7]);
  const line = (row: readonly string[]) =>
    row
      .map((cell, i) =>
        right.has(i) ? cell.padStart(widths[i] as number) : cell.padEnd(widths[i] as number),
      )
      .join('  ')
      .trimEnd();
  return [ink('dim')(line(head)), ...rows.map(line)];
}

/** The ratio of an unproven line is that of its worst link that is known, in brackets. */
function ratioOf(line: ScheduleLine): string {
  if (line.ratio !== undefined) return line.ratio.toFixed(2);
  const known = line.checks.flatMap((check) => (check.ratio === undefined ? [] : [check.ratio]));
  return known.length === 0 ? '-' : `(${Math.max(...known).toFixed(2)})`;
}

function rowOf(
  answer: Answer,
  choice: ConnectionChoice,
  line: ScheduleLine,
  first: boolean,
  print: Printer,
): string[] {
  return [
    first ? choice.connection.id : '',
    first ? (choice.item?.id ?? 'nothing fits') : '',
    answer.field.zones[line.zone]?.label ?? '',
    print.number('spacing', line.spacing_in),
    String(line.each),
    line.fastenerLoad_lbf === undefined ? '-' : print.number('force', line.fastenerLoad_lbf),
    line.checks[line.governing]?.capacity.link ?? 'nothing checked',
    ratioOf(line),
    line.verdict,
  ];
}

function shortfalls(answer: Answer, print: Printer): string[] {
  const short = answer.choices.flatMap((choice) =>
    choice.lines
      .filter((line) => line.verdict === 'falls short')
      .map((line) => shortfall(answer, choice, line, print)),
  );
  return short.length === 0 ? [] : [ink('red')('Falls short:'), ...short, ''];
}

function shortfall(answer: Answer, choice: ConnectionChoice, line: ScheduleLine, print: Printer): string {
  const check = line.checks[line.governing];
  const where = `  ${choice.connection.id}, zone ${answer.field.zones[line.zone]?.label}`;
  if (check?.capacity.value === undefined || check.demand === undefined)
    return `${where}: ${printable(check?.capacity.because ?? '')}`;
  const kind = check.capacity.unit === 'psf' ? 'pressure' : 'force';
  const mend =
    line.holdsAt_in === undefined
      ? ''
      : `; supports ${print.short('spacing', line.holdsAt_in)} apart would do`;
  return `${where}: ${check.capacity.link} carries ${print.number(kind, check.capacity.value)} of ${print.text(kind, check.demand)}${mend}`;
}
