/** Tables with a thin rule under each row and a head that is repeated on every page. */
import type { Verdict } from '../../links/verdict.ts';
import { FAINT, GREY, INK, leadingOf } from './pen.ts';
import type { Sheet } from './sheet.ts';
import { MARK_WIDTH, threadMark } from './thread-mark.ts';

export interface Column {
  readonly head: string;
  /** Share of the free width, or points when fixed. */
  readonly width: number;
  readonly fixed?: boolean;
  readonly align?: 'left' | 'right';
  /** Lines above this number are cut. */
  readonly most?: number;
}

export interface CellText {
  readonly text: string;
  readonly bold?: boolean;
  readonly color?: string;
  /** A verdict mark before the text. */
  readonly mark?: Verdict;
  /** Drawn in the cell instead of text. */
  readonly draw?: (x: number, y: number, width: number, height: number) => void;
  readonly note?: string;
}
export type Cell = string | CellText;
export interface Row {
  readonly cells: readonly Cell[];
  /** Starts a group: a stronger rule above. */
  readonly group?: boolean;
  readonly bold?: boolean;
  /** First cell when the row comes first on a page in the middle of its group. */
  readonly leadAgain?: Cell;
}

const GAP = 7;
const SIZE = 8;
const NOTE = 7;
export const HEAD_SIZE = 7.5;

/** @param below height of what must stay under the last row, in points */
export function table(sheet: Sheet, columns: readonly Column[], rows: readonly Row[], below = 0): void {
  const widths = widthsOf(sheet.width, columns);
  const head = () => drawHead(sheet, columns, widths);
  sheet.room(tableStart(sheet, columns, rows) + (rows.length <= TAIL + 1 ? below : 0));
  head();
  let onPage = 0;
  for (const [i, given] of rows.entries()) {
    let row = given;
    let height = heightOf(sheet, columns, widths, row);
    // The last rows go over the page together: one or two alone would be overlooked.
    const last = i > 0 && i === rows.length - TAIL;
    const needed = last ? sumOf(sheet, columns, widths, rows.slice(i)) + below : height;
    if (onPage > 0 && sheet.y + needed > sheet.bottom) {
      sheet.newPage();
      head();
      onPage = 0;
      if (row.leadAgain !== undefined) row = { ...row, cells: [row.leadAgain, ...row.cells.slice(1)] };
      height = heightOf(sheet, columns, widths, row);
    }
    if (onPage++ > 0)
      sheet.pen.rule(
        sheet.left,
        sheet.y,
        sheet.width,
        row.group ? { width: 0.6 } : { color: FAINT, width: 0.4 },
      );
    drawRow(sheet, columns, widths, row, height);
    sheet.y += height;
  }
  sheet.pen.rule(sheet.left, sheet.y, sheet.width, { width: 0.8 });
  sheet.y += 8;
}

/** Rows that are not parted from one another at the end of a table. */
const TAIL = 3;
const HEAD_ROOM = 30;

/** Height that must be free where a table starts: the whole of a short one, head and two rows of a longer one. */
export function tableStart(sheet: Sheet, columns: readonly Column[], rows: readonly Row[]): number {
  const widths = widthsOf(sheet.width, columns);
  const start = rows.slice(0, rows.length <= TAIL + 1 ? rows.length : 2);
  return HEAD_ROOM + sumOf(sheet, columns, widths, start);
}

const sumOf = (
  sheet: Sheet,
  columns: readonly Column[],
  widths: readonly number[],
  rows: readonly Row[],
): number => rows.reduce((sum, row) => sum + heightOf(sheet, columns, widths, row), 0);

/** The widths of columns in points. */
export function widthsOf(width: number, columns: readonly Column[]): number[] {
  const gaps = GAP * (columns.length - 1);
  const fixed = columns.reduce((sum, column) => sum + (column.fixed ? column.width : 0), 0);
  const shares = columns.reduce((sum, column) => sum + (column.fixed ? 0 : column.width), 0);
  const free = width - gaps - fixed;
  return columns.map((column) => (column.fixed ? column.width : (free * column.width) / shares));
}

const asText = (cell: Cell): CellText => (typeof cell === 'string' ? { text: cell } : cell);

function heightOf(sheet: Sheet, columns: readonly Column[], widths: readonly number[], row: Row): number {
  const heights = columns.map((column, i) => {
    const cell = asText(row.cells[i] ?? '');
    const width = (widths[i] ?? 0) - (cell.mark ? MARK_WIDTH + 4 : 0);
    const text = sheet.pen.heightOf(cell.text, {
      width,
      size: SIZE,
      face: cell.bold || row.bold ? 'bold' : 'regular',
      most: column.most ?? 4,
    });
    const note = cell.note
      ? sheet.pen.heightOf(cell.note, { width: widths[i] ?? 0, size: NOTE, most: 4 })
      : 0;
    return text + note;
  });
  return Math.max(leadingOf({ size: SIZE }), ...heights) + 5;
}

function drawHead(sheet: Sheet, columns: readonly Column[], widths: readonly number[]): void {
  const { pen } = sheet;
  const blocks = columns.map(
    (column, i) =>
      ({
        width: widths[i] ?? 0,
        size: HEAD_SIZE,
        color: GREY,
        align: column.align ?? 'left',
        most: 3,
      }) as const,
  );
  const height = Math.max(
    ...columns.map((column, i) => pen.heightOf(column.head, blocks[i] as (typeof blocks)[number])),
  );
  let x = sheet.left;
  columns.forEach((column, i) => {
    const block = blocks[i] as (typeof blocks)[number];
    pen.block(column.head, x, sheet.y + height - pen.heightOf(column.head, block), block);
    x += (widths[i] ?? 0) + GAP;
  });
  sheet.y += height + 2;
  pen.rule(sheet.left, sheet.y, sheet.width, { width: 0.8 });
}

function drawRow(
  sheet: Sheet,
  columns: readonly Column[],
  widths: readonly number[],
  row: Row,
  height: number,
): void {
  const { pen } = sheet;
  const top = sheet.y + 2.5;
  let x = sheet.left;
  columns.forEach((column, i) => {
    const cell = asText(row.cells[i] ?? '');
    const width = widths[i] ?? 0;
    const inset = cell.mark ? MARK_WIDTH + 4 : 0;
    if (cell.mark) threadMark(pen, cell.mark, x, top + SIZE * 0.66);
    cell.draw?.(x, top, width, height - 5);
    const below = pen.block(cell.text, x + inset, top, {
      width: width - inset,
      size: SIZE,
      face: cell.bold || row.bold ? 'bold' : 'regular',
      color: cell.color ?? INK,
      align: column.align ?? 'left',
      most: column.most ?? 4,
    });
    if (cell.note)
      pen.block(cell.note, x, below, {
        width,
        size: NOTE,
        color: GREY,
        align: column.align ?? 'left',
        most: 4,
      });
    x += width + GAP;
  });
}
