/** The order as CSV (RFC 4180), safe to open in a spreadsheet program. */
import type { Solved } from '../../answer/solve-job.ts';
import { orderRows } from './order-rows.ts';

const columns = [
  'item',
  'designation',
  'kind',
  'colour',
  'serves',
  'count',
  'withWaste',
  'pack',
  'packs',
  'ordered',
  'unitPrice',
  'price',
  'weight_lbf',
] as const;

export function orderCsv({ answer }: Solved): string {
  const rows = orderRows(answer).map((row) => columns.map((column) => cell(row[column])).join(','));
  const head = columns.map((column) => (column === 'price' ? `price_${answer.takeoff.currency}` : column));
  return `${[head.join(','), ...rows].join('\r\n')}\r\n`;
}

/** Money and weights to a millionth: enough to add up, and no tail of binary digits. */
const printed = (value: number): string => String(Math.round(value * 1e6) / 1e6);

function cell(value: string | number): string {
  if (typeof value === 'number') return printed(value);
  const safe = spreadsheetSafe(value);
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/**
 * A text a spreadsheet program would run as a formula gets an apostrophe in front, the usual guard: programs show
 * the text as it stands. Control characters, which some programs skip before looking, are dropped first.
 */
export function spreadsheetSafe(text: string): string {
  const first = text.replace(/^[\p{Cc}\p{Cf}]+/u, (start) => (/[\t\r\n]/.test(start) ? ' ' : ''));
  return /^\s*[=+\-@]/.test(first) || first !== text ? `'${first}` : first;
}
