import { describe, expect, test } from 'vitest';
import { megapascal, millimetre, ratio } from '../../quantities/quantity.ts';
import { isRefusal, refusalText } from '../../trace/refusal.ts';
import { caiRows, taoRows, zhangRows } from '../aisi-s100-16/j4.3.1-measured.table.ts';
import { screwBearing } from './t8.2-screw-bearing.ts';

interface Lap {
  readonly t1: number;
  readonly t2: number;
  readonly d: number;
  readonly Fu1: number;
  readonly Fu2: number;
}

/** Characteristic bearing resistance, N. In sheets of one thickness the weaker one bears. */
function characteristic({ t1, t2, d, Fu1, Fu2 }: Lap): number {
  const fu = t1 === t2 ? Math.min(Fu1, Fu2) : t1 < t2 ? Fu1 : Fu2;
  const sheets = { t: millimetre(Math.min(t1, t2)), t1: millimetre(Math.max(t1, t2)) };
  const outcome = screwBearing({ ...sheets, d: millimetre(d), fu: megapascal(fu), γM2: ratio(1) });
  if (isRefusal(outcome)) throw new Error(refusalText(outcome));
  return outcome;
}

// Measured laps beside EN 1993-1-3 Table 8.2: predictions computed by an independent program, to whole newtons.
describe('predictions of measured laps', () => {
  test('the tables are not empty', () =>
    expect([taoRows.length, zhangRows.length, caiRows.length]).toEqual([30, 13, 14]));
  for (const row of [...taoRows, ...zhangRows])
    test(`${row.name}: ${row.EN} N`, () =>
      expect(Math.abs(characteristic(row) - row.EN)).toBeLessThanOrEqual(1));
  for (const row of caiRows)
    test(`${row.name}: ${row.EN} kN`, () => {
      const value = (row.screws * characteristic(row)) / 1000;
      // Printed to 0.01 kN, from strengths printed to 1 MPa.
      const printing = 0.0051 + (0.5 * value) / Math.min(row.Fu1, row.Fu2);
      expect(Math.abs(value - row.EN)).toBeLessThanOrEqual(printing);
    });
});
