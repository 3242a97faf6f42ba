/** What goes where: a row for each kind of joint, both languages in every cell, numbers once. */
import { FAINT, GREY, INK, RED } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { threadMark } from '../pdf/thread-mark.ts';
import { tapeLength } from '../print-units.ts';
import { type Words, wordsOf } from '../words/words.ts';
import type { CrewRow } from './crew-rows.ts';

const en = wordsOf('en');
const es = wordsOf('es');
const SIZE = 10;
const GAP = 8;
/** Shares of the width: where, what, spacing by zone, how many. */
const shares = [0.18, 0.28, 0.33, 0.21] as const;

interface Part {
  readonly text: string;
  readonly bold?: boolean;
  readonly quiet?: boolean;
}
type Cell = readonly Part[];

export function jointRows(sheet: Sheet, rows: readonly CrewRow[]): void {
  for (const row of rows) jointRow(sheet, row);
}

export const jointRowsHeight = (sheet: Sheet, rows: readonly CrewRow[]): number =>
  rows.reduce((sum, row) => sum + heightOf(sheet, cellsOf(sheet, row)), 0);

const widthOf = (sheet: Sheet, column: number): number =>
  (sheet.width - GAP * (shares.length - 1)) * (shares[column] ?? 0);

const typeOf = (part: Part, width: number) =>
  ({
    width,
    size: part.quiet ? 8.5 : SIZE,
    face: part.bold ? 'bold' : 'regular',
    color: part.quiet ? GREY : INK,
    leading: 1.17,
    most: 4,
  }) as const;

function heightOf(sheet: Sheet, cells: readonly Cell[]): number {
  const heights = cells.map((cell, i) =>
    cell.reduce((sum, part) => sum + sheet.pen.heightOf(part.text, typeOf(part, widthOf(sheet, i))), 0),
  );
  return Math.max(...heights) + 5;
}

function jointRow(sheet: Sheet, row: CrewRow): void {
  const cells = cellsOf(sheet, row);
  const height = heightOf(sheet, cells);
  sheet.room(height);
  let x = sheet.left;
  cells.forEach((cell, i) => {
    const width = widthOf(sheet, i);
    let y = sheet.y + 1.5;
    for (const part of cell) y = sheet.pen.block(part.text, x, y, typeOf(part, width));
    x += width + GAP;
  });
  if (row.verdict !== 'holds') threadMark(sheet.pen, row.verdict, sheet.right - 22, sheet.y + 8, 22);
  sheet.y += height;
  sheet.pen.rule(
    sheet.left,
    sheet.y - 1,
    sheet.width,
    row.verdict === 'falls short' ? { color: RED } : { color: FAINT },
  );
}

function cellsOf(sheet: Sheet, row: CrewRow): readonly Cell[] {
  const bit = row.bit === '' ? [] : [{ text: `${en.crew.bit} / ${es.crew.bit}: ${row.bit}` }];
  return [
    [{ text: row.names(en), bold: true }, { text: row.names(es) }],
    [{ text: row.item, bold: true }, { text: shortOf(sheet, row.designation), quiet: true }, ...bit],
    spacingCell(sheet, row),
    eachCell(row),
  ];
}

/** One line of the designation: the stock number is what the crew looks for on the box. */
const shortOf = (sheet: Sheet, text: string): string =>
  sheet.pen.lines(text, { width: widthOf(sheet, 1), size: 8.5, most: 1 })[0] ?? '';

function spacingCell(sheet: Sheet, row: CrewRow): Cell {
  const { job, field } = sheet.plan.answer;
  const { placement } = row.choice.connection;
  if (row.spacings.length === 0) return [{ text: '–' }];
  const one = row.spacings.length === 1 && row.zones === field.zones.length;
  const spaced = row.spacings.map(({ zones, text }) => ({
    text: one
      ? `${text}: ${en.crew.allZones} / ${es.crew.allZones}`
      : `${text}: ${en.crew.zone} / ${es.crew.zone} ${zones}`,
    bold: true,
  }));
  if (placement.by !== 'field') return spaced;
  if (placement.along === 'supports')
    return [...spaced, { text: `${en.crew.onSupports} / ${es.crew.onSupports}`, quiet: true }];
  const { units } = job.print;
  const ends = [tapeLength(job.ends.first, units), tapeLength(job.ends.last, units)];
  const end = (words: Words) => `${words.crew.first} ${ends[0]}, ${words.crew.last} ${ends[1]}`;
  return [...spaced, { text: end(en), quiet: true }, { text: end(es), quiet: true }];
}

const eachCell = ({ each }: CrewRow): Cell => [{ text: en.crew.each(each) }, { text: es.crew.each(each) }];
