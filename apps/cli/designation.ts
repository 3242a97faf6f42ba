/** deckbite designation: what a written description of a fastener says, piece by piece. */
import { readDesignation } from '../../src/answer/designation.ts';
import type { Designation } from '../../src/shelf/designation/reading.ts';
import { BAD_INPUT, reportCall } from './faults.ts';
import { ink, printable } from './terminal.ts';

const IN_DOUBT = 2;

export function run(args: readonly string[]): number {
  const json = args.includes('--json');
  const words = args.filter((arg) => arg !== '--json');
  const option = words.find((word) => word.startsWith('--'));
  if (option !== undefined) return reportCall(`"${option}" is no option of deckbite designation`);
  if (words.length === 0) return reportCall('give the description to read, in quotes');
  const read = readDesignation(words.join(' '));
  process.stdout.write(json ? `${JSON.stringify(read)}\n` : page(read));
  return exitCode(read);
}

function exitCode({ fields, doubts, leftovers }: Designation): number {
  if (Object.keys(fields).length === 0) return BAD_INPUT;
  return doubts.length + leftovers.length > 0 ? IN_DOUBT : 0;
}

function page(read: Designation): string {
  const bold = ink('bold');
  const doubts = read.doubts.map((sentence) => `  ${printable(sentence)}\n`);
  const leftovers = read.leftovers.map(({ text }) => `  ${short(text)}\n`);
  return [
    `${bold(read.kind)}\n`,
    ...table(read),
    ...(doubts.length > 0 ? [`${bold('in doubt')}\n`, ...doubts] : []),
    ...(leftovers.length > 0 ? [`${bold('not understood')}\n`, ...leftovers] : []),
  ].join('');
}

const MOST_SHOWN = 60;
const short = (text: string): string =>
  printable(text.length > MOST_SHOWN ? `${text.slice(0, MOST_SHOWN)} ... (${text.length} characters)` : text);

/** Field, value, piece of text, meaning; columns as wide as what stands in them. */
function table({ fields }: Designation): string[] {
  const rows = Object.entries(fields).map(([name, { value, text, means }]) => [
    printable(name),
    shown(value),
    `"${printable(text)}"`,
    printable(means),
  ]);
  if (rows.length === 0) return [];
  const all = [['field', 'value', 'read from', 'meaning'], ...rows];
  const widths = [0, 1, 2].map((column) => Math.max(...all.map((row) => row[column]?.length ?? 0)));
  return all.map(
    (row) =>
      `  ${row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd()}\n`,
  );
}

/** Six figures are more than any description gives. */
const shown = (value: string | number | boolean): string =>
  typeof value === 'number' ? String(Number(value.toPrecision(6))) : printable(String(value));
