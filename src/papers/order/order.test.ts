import { parse } from 'csv-parse/sync';
import Excel from 'exceljs';
import fc from 'fast-check';
import readXlsx from 'read-excel-file/node';
import { describe, expect, test, vi } from 'vitest';
import { hostileName, solvedAsIs } from '../read-back/solved-demo.ts';
import { fixZipTime } from './fixed-zip-time.ts';
import { orderCsv, spreadsheetSafe } from './order-csv.ts';
import { orderXlsx } from './order-xlsx.ts';

const solved = solvedAsIs('a-boathouse');
const { takeoff, choices } = solved.answer;
type Record_ = Readonly<Record<string, string>>;
const csvRows = (text: string): Record_[] => parse(text, { columns: true });

describe('order.csv', () => {
  const rows = csvRows(orderCsv(solved));
  test('has a row for each line of the take-off with its numbers', () => {
    expect(rows.map((row) => row.item)).toEqual(takeoff.lines.map((line) => line.item));
    rows.forEach((row, i) => {
      const line = takeoff.lines[i];
      expect(Number(row.ordered)).toBe(line?.ordered);
      expect(Number(row.price_USD)).toBeCloseTo(line?.price ?? Number.NaN, 6);
    });
    const sum = rows.reduce((total, row) => total + Number(row.price_USD), 0);
    expect(sum).toBeCloseTo(takeoff.total, 4);
  });
  test('a text that a spreadsheet would run gets an apostrophe in front', () => {
    for (const evil of ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\u0000=cmd', ' =1', '\ufeff=1'])
      expect(spreadsheetSafe(evil), JSON.stringify(evil)).toMatch(/^'/);
    for (const plain of ['10-13 x 1', 'plain', '', '5/16 in hex socket'])
      expect(spreadsheetSafe(plain)).toBe(plain);
  });
  test('no text, whatever it is, starts a formula', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 12 }), (text) => {
        expect(spreadsheetSafe(text)).not.toMatch(/^[\s\p{Cc}\p{Cf}]*[=+\-@]/u);
      }),
    );
  });
  test('a hostile designation and colour come back as one cell each', () => {
    const evil = '=HYPERLINK("http://x","a"),\r\nb';
    const { job } = solved.answer;
    const line = {
      ...takeoff.lines[0],
      designation: evil,
      colour: hostileName,
    } as (typeof takeoff.lines)[number];
    const changed = { ...solved, answer: { ...solved.answer, job, takeoff: { ...takeoff, lines: [line] } } };
    const [row, ...others] = csvRows(orderCsv(changed));
    expect(others).toEqual([]);
    expect(row?.designation).toBe(`'${evil}`);
    expect(row?.colour).toBe(hostileName);
  });
});

describe('order.xlsx', () => {
  test('comes back with the numbers of the take-off, typed', async () => {
    const bytes = Buffer.from(await orderXlsx(solved));
    const [head, ...rows] = await sheetRows(bytes, 'Order');
    expect(head?.[0]).toBe('item');
    expect(rows).toHaveLength(takeoff.lines.length + 1);
    takeoff.lines.forEach((line, i) => {
      const row = rows[i] ?? [];
      expect([row[0], row[5], row[6], row[7], row[8], row[9]]).toEqual([
        line.item,
        line.count,
        line.withWaste,
        line.pack,
        line.packs,
        line.ordered,
      ]);
      expect(row[11], 'the value stored beside the formula').toBeCloseTo(line.price, 9);
    });
    expect(rows.at(-1)?.[11]).toBeCloseTo(takeoff.total, 9);
  });
  test('prices are formulas, ordered times price of one, and a sum', async () => {
    const book = new Excel.Workbook();
    await book.xlsx.load((await orderXlsx(solved)).buffer as ArrayBuffer);
    const sheet = book.getWorksheet('Order');
    expect(sheet?.getCell('L2').formula).toBe('J2*K2');
    expect(sheet?.getCell(`L${takeoff.lines.length + 2}`).formula).toBe(
      `SUM(L2:L${takeoff.lines.length + 1})`,
    );
    expect(sheet?.getCell('J2').value).toBe(takeoff.lines[0]?.ordered);
    expect(sheet?.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 });
  });
  test('counts by zone and schedule have their rows', async () => {
    const bytes = Buffer.from(await orderXlsx(solved));
    const zones = await sheetRows(bytes, 'Counts by zone');
    const counted = takeoff.lines.flatMap((line) => line.uses.flatMap((use) => use.zones));
    expect(zones).toHaveLength(counted.length + 1);
    const lines = choices.flatMap((choice) => choice.lines);
    expect(await sheetRows(bytes, 'Schedule')).toHaveLength(lines.length + 1);
  });
  test('a text that looks like a formula stays a text', async () => {
    const line = { ...takeoff.lines[0], designation: '=1+1' } as (typeof takeoff.lines)[number];
    const changed = { ...solved, answer: { ...solved.answer, takeoff: { ...takeoff, lines: [line] } } };
    const rows = await sheetRows(Buffer.from(await orderXlsx(changed)), 'Order');
    expect(rows[1]?.[1]).toBe('=1+1');
  });
  test('the same order gives the same bytes, without a clock', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('2001-02-03T04:05:06Z') });
    const first = await orderXlsx(solved);
    vi.setSystemTime(new Date('2033-04-05T06:07:08Z'));
    const second = await orderXlsx(solved);
    vi.useRealTimers();
    expect(Buffer.compare(Buffer.from(first), Buffer.from(second))).toBe(0);
  });
  test('what is no ZIP file is refused', () => {
    expect(() => fixZipTime(new Uint8Array(40))).toThrow('not a ZIP file');
  });
});

async function sheetRows(bytes: Buffer, name: string): Promise<readonly (readonly unknown[])[]> {
  const sheets = await readXlsx(bytes);
  const found = sheets.find((one) => one.sheet === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found.data;
}
