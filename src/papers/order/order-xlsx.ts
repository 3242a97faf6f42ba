/** The order as a workbook: typed numbers, prices as formulas with their values stored beside them. */
import type ExcelJS from 'exceljs';
import type { Answer } from '../../answer/answer.ts';
import type { Solved } from '../../answer/solve-job.ts';
import { breakLines } from '../pdf/break-lines.ts';
import { wordsOf } from '../words/words.ts';
import { fixZipTime } from './fixed-zip-time.ts';
import { orderRows, scheduleRows, zoneCountRows } from './order-rows.ts';

/** No clock: the file says when the job is dated, or nothing of worth. */
const EPOCH = '1980-01-01';

export async function orderXlsx({ answer }: Solved): Promise<Uint8Array> {
  const { default: Excel } = await import('exceljs');
  const book = new Excel.Workbook();
  const date = new Date(`${answer.job.date ?? EPOCH}T00:00:00Z`);
  book.creator = 'Deckbite';
  book.lastModifiedBy = 'Deckbite';
  book.created = date;
  book.modified = date;
  orderSheet(book, answer);
  zoneSheet(book, answer);
  scheduleSheet(book, answer);
  book.eachSheet(rowHeights);
  return fixZipTime(new Uint8Array(await book.xlsx.writeBuffer()));
}

type Book = ExcelJS.Workbook;
type Column = readonly [header: string, key: string, width: number, format?: string];

/** Named: a bold face of no name is set in another family by some programs. */
const FONT_BOLD = { name: 'Calibri', family: 2, size: 11, bold: true } as const;

/** Columns of long texts, which go on over several lines. */
const wrapped: ReadonlySet<string> = new Set(['designation', 'serves', 'connection', 'governing']);

function sheetOf(book: Book, name: string, columns: readonly Column[]): ExcelJS.Worksheet {
  const sheet = book.addWorksheet(name, {
    views: [{ state: 'frozen', ySplit: 1 }],
    pageSetup: { orientation: 'landscape', fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
  });
  sheet.columns = columns.map(([header, key, width, numFmt]) => ({
    header,
    key,
    width,
    style: {
      ...(numFmt === undefined ? {} : { numFmt }),
      alignment: { vertical: 'top', wrapText: wrapped.has(key) },
    },
  }));
  const head = sheet.getRow(1);
  head.font = FONT_BOLD;
  // Two lines, stated: spreadsheet programs guess the height of wrapped heads, and guess it too low.
  head.height = 32;
  columns.forEach(([, , , numFmt], i) => {
    const cell = head.getCell(i + 1);
    cell.alignment = {
      wrapText: true,
      vertical: 'bottom',
      horizontal: numFmt === undefined ? 'left' : 'right',
    };
  });
  head.border = { bottom: { style: 'medium' } };
  return sheet;
}

const LINE = 15;

/** Stated as well, as not every program measures wrapped rows when it opens a file. */
function rowHeights(sheet: ExcelJS.Worksheet): void {
  sheet.eachRow((row, number) => {
    if (number === 1) return;
    let lines = 1;
    row.eachCell((cell, column) => {
      const { key = '', width = 10 } = sheet.getColumn(column);
      const text = typeof cell.value === 'string' && wrapped.has(key) ? cell.value : '';
      lines = Math.max(lines, breakLines(text, width * 0.95, (part) => part.length).length);
    });
    row.height = LINE * lines;
  });
}

/** What XML cannot hold is dropped; everything else stays as written, as plain text. */
const plain = (text: string): string => text.replace(/[\p{Cc}\p{Cs}\ufffe\uffff]/gu, ' ');

const WHOLE = '#,##0';
const MONEY = '#,##0.00';

function orderSheet(book: Book, answer: Answer): void {
  const w = wordsOf(answer.job.print.language);
  const { currency, total, weight_lbf } = answer.takeoff;
  const sheet = sheetOf(book, w.order.sheetOrder, [
    [w.order.item, 'item', 16],
    [w.order.designation, 'designation', 44],
    [w.order.kind, 'kind', 9],
    [w.order.colour, 'colour', 14],
    [w.order.serves, 'serves', 40],
    [w.order.count, 'count', 10, WHOLE],
    [w.order.withWaste, 'withWaste', 11, WHOLE],
    [w.order.pack, 'pack', 11, WHOLE],
    [w.order.packs, 'packs', 11, WHOLE],
    [w.order.ordered, 'ordered', 10, WHOLE],
    [`${w.order.unitPrice}, ${currency}`, 'unitPrice', 12, '#,##0.0000'],
    [`${w.order.price}, ${currency}`, 'price', 13, MONEY],
    [`${w.order.weight}, lb`, 'weight_lbf', 11, '#,##0.0'],
  ]);
  const rows = orderRows(answer, w);
  rows.forEach(({ price, ...row }, i) => {
    const texts = Object.fromEntries(
      Object.entries(row).map(([key, value]) => [key, typeof value === 'string' ? plain(value) : value]),
    );
    sheet.addRow({ ...texts, price: { formula: `J${i + 2}*K${i + 2}`, result: price } });
  });
  const last = rows.length + 1;
  const sum = (column: string, result: number) =>
    rows.length === 0 ? result : { formula: `SUM(${column}2:${column}${last})`, result };
  const foot = sheet.addRow({
    item: w.order.total,
    price: sum('L', total),
    weight_lbf: sum('M', weight_lbf),
  });
  foot.font = FONT_BOLD;
  foot.border = { top: { style: 'medium' } };
}

function zoneSheet(book: Book, answer: Answer): void {
  const w = wordsOf(answer.job.print.language);
  const sheet = sheetOf(book, w.order.sheetZones, [
    [w.order.item, 'item', 16],
    [w.order.connection, 'connection', 28],
    [w.order.zone, 'zone', 14],
    [w.order.count, 'count', 12, WHOLE],
  ]);
  for (const row of zoneCountRows(answer, w)) sheet.addRow({ ...row, zone: plain(row.zone) });
}

function scheduleSheet(book: Book, answer: Answer): void {
  const w = wordsOf(answer.job.print.language);
  const sheet = sheetOf(book, w.order.sheetSchedule, [
    [w.order.connection, 'connection', 28],
    [w.order.item, 'item', 16],
    [w.order.zone, 'zone', 14],
    [`${w.order.spacing}, in`, 'spacing_in', 12, '0.00'],
    [w.order.each, 'each', 10, WHOLE],
    [`${w.order.load}, lbf`, 'load_lbf', 12, '0.0'],
    [w.order.governing, 'governing', 22],
    [w.order.ratio, 'ratio', 10, '0.00'],
    [w.order.verdict, 'verdict', 16],
  ]);
  for (const row of scheduleRows(answer, w)) {
    const { load_lbf, ratio, ...known } = row;
    sheet.addRow({ ...known, load_lbf: load_lbf ?? null, ratio: ratio ?? null });
  }
}
