/** Inputs in two columns: solid underline given, dashed underline assumed with its reason, open box to ask. */
import { BLUE, FAINT, GREY, INK, type Pen, RED } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { type InputGroup, inputGroups } from './input-rows.ts';

const SIZE = 7.6;
const GAP = 20;
const NAME = 0.4;

type Row = InputGroup['rows'][number];

/** One thing in the column: a head, or a row; each knows its height and how to draw itself. */
interface Entry {
  readonly height: number;
  /** A head stays with the row after it. */
  readonly head: boolean;
  readonly draw: (x: number, y: number) => void;
}

export function whatWeKnow(sheet: Sheet): void {
  const { words, answer } = sheet.plan;
  sheet.head(words.submittal.whatWeKnow, '', 80);
  legend(sheet);
  const width = (sheet.width - GAP) / 2;
  const entries = inputGroups(answer.inputs, words).flatMap((group) => [
    headEntry(sheet, group.head, width),
    ...group.rows.map((row) => rowEntry(sheet, row, width)),
  ]);
  flow(sheet, entries, width);
}

function legend(sheet: Sheet): void {
  const { standing } = sheet.plan.words;
  let x = sheet.left;
  const y = sheet.y + 8;
  for (const kind of ['given', 'assumed', 'asked'] as const) {
    const room = kind === 'asked' ? 10 : 26;
    standingMark(sheet.pen, kind, x, y, 22);
    sheet.pen.line(standing[kind], x + room, y, { size: SIZE, color: kind === 'asked' ? RED : GREY });
    x += room + 10 + sheet.pen.width(standing[kind], { size: SIZE }) + 10;
  }
  sheet.y += 16;
}

function standingMark(pen: Pen, standing: Row['standing'], x: number, baseline: number, width: number): void {
  if (standing === 'asked') pen.box(x, baseline - 6, 6, 6, { color: RED, width: 0.8 });
  else
    pen.rule(x, baseline + 2, width, {
      width: 0.6,
      ...(standing === 'assumed' ? { dash: [2, 1.6] as const } : {}),
    });
}

function headEntry({ pen }: Sheet, text: string, width: number): Entry {
  return {
    height: 16,
    head: true,
    draw: (x, y) => {
      pen.line(text, x, y + 10.5, { size: 9, face: 'bold', color: BLUE });
      pen.rule(x, y + 13.2, width, { color: FAINT, width: 0.5 });
    },
  };
}

function rowEntry({ pen }: Sheet, row: Row, width: number): Entry {
  const nameWidth = width * NAME - 6;
  const valueWidth = width * (1 - NAME);
  const asked = row.standing === 'asked';
  const name = { width: nameWidth, size: SIZE, most: 2 };
  const value = {
    width: valueWidth - (asked ? 11 : 0),
    size: SIZE,
    most: asked ? 6 : 3,
    color: asked ? RED : INK,
  };
  const text = asked ? (row.because ?? '') : row.text;
  const reason = { width: valueWidth, size: 7, most: 4, color: GREY };
  const because = row.standing === 'assumed' ? (row.because ?? '') : '';
  const valueHeight = pen.heightOf(text, value);
  const height = Math.max(
    pen.heightOf(row.name, name),
    valueHeight + (because ? pen.heightOf(because, reason) + 2 : 0),
  );
  return {
    height: height + 2.6,
    head: false,
    draw: (x, y) => {
      pen.block(row.name, x, y, { ...name, color: GREY });
      const at = x + width * NAME;
      if (asked) {
        standingMark(pen, 'asked', at, y + 8, 0);
        pen.block(text, at + 11, y, value);
        return;
      }
      const below = pen.block(text, at, y, value);
      standingMark(pen, row.standing, at, below - 2.8, valueWidth);
      if (because) pen.block(because, at, below + 1.5, reason);
    },
  };
}

/** Fills two columns evenly; what does not fit goes on, in two columns again, on the next page. */
function flow(sheet: Sheet, entries: readonly Entry[], width: number): void {
  let rest = entries;
  while (rest.length > 0) {
    if (sheet.bottom - sheet.y < 40) sheet.newPage();
    const free = sheet.bottom - sheet.y;
    const total = rest.reduce((sum, entry) => sum + entry.height, 0);
    const even = total / 2 + Math.max(...rest.map((entry) => entry.height));
    const limit = Math.min(free, Math.max(even, 30));
    const first = take(rest, limit);
    const second = take(rest.slice(first), Math.max(limit, Math.min(free, limit + 20)));
    column(rest.slice(0, first), sheet.left, sheet.y);
    column(rest.slice(first, first + second), sheet.left + width + GAP, sheet.y);
    sheet.y += Math.max(heightOf(rest.slice(0, first)), heightOf(rest.slice(first, first + second)));
    rest = rest.slice(first + second);
    if (rest.length > 0) sheet.newPage();
  }
  sheet.y += 6;
}

const heightOf = (entries: readonly Entry[]): number => entries.reduce((sum, entry) => sum + entry.height, 0);

function take(entries: readonly Entry[], limit: number): number {
  let sum = 0;
  let count = 0;
  for (const entry of entries) {
    if (sum + entry.height > limit && count > 0) break;
    sum += entry.height;
    count++;
  }
  while (count > 1 && count < entries.length && entries[count - 1]?.head) count--;
  return count;
}

function column(entries: readonly Entry[], x: number, top: number): void {
  let y = top;
  for (const entry of entries) {
    entry.draw(x, y);
    y += entry.height;
  }
}
