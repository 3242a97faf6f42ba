import { describe, expect, test } from 'vitest';
import { convert, megapascal, millimetre, newton, type Psi } from '../../quantities/quantity.ts';
import { isRefusal, refusalText } from '../../trace/refusal.ts';
import { effectiveTensileStrength } from './a3.1-sheet-strength.ts';
import { caiRows, taoRows, zhangRows } from './j4.3.1-measured.table.ts';
import { tiltingAndBearing } from './j4.3.1-tilting-and-bearing.ts';

interface Lap {
  readonly t1: number;
  readonly t2: number;
  readonly d: number;
  readonly Fu1: number;
  readonly Fu2: number;
}

const stress = (value: number): Psi => convert(megapascal(value), 'MPa', 'psi');

/** Nominal strength of the sheets in newtons; `design` changes the strengths before they enter. */
function predicted({ t1, t2, d, Fu1, Fu2 }: Lap, design: (Fu: number) => Psi = stress): number {
  const length = (value: number) => convert(millimetre(value), 'mm', 'in');
  const outcome = tiltingAndBearing({
    t1: length(t1),
    t2: length(t2),
    d: length(d),
    Fu1: design(Fu1),
    Fu2: design(Fu2),
  });
  if (isRefusal(outcome)) throw new Error(refusalText(outcome));
  return convert(outcome as number as never, 'lbf', 'N');
}

/** A3.1 for the sheets of 800 MPa, whose Fu/Fy is about 1.0; the others count in full. */
function reduced(Fu: number): Psi {
  if (Fu < 700) return stress(Fu);
  const outcome = effectiveTensileStrength({ ductility: 'grade 80', Fu: stress(Fu) });
  if (isRefusal(outcome)) throw new Error(refusalText(outcome));
  return outcome;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

// Predictions are printed to whole newtons, ratios to 0.01; measured means are rounded to a newton.
describe('measured lap shear, screws #8 to #12 in sheets of 0.5 to 2.6 mm (published)', () => {
  test('the table is not empty', () => expect(taoRows).toHaveLength(30));
  for (const row of taoRows)
    test(`${row.name}: ${row.mean} N measured, ratio ${row.ratio}`, () => {
      const sheet = predicted(row);
      expect(Math.abs(sheet - row.sheet)).toBeLessThanOrEqual(1);
      expect(Math.abs(row.mean / Math.min(sheet, row.screw) - row.ratio)).toBeLessThanOrEqual(0.006);
    });
  test('where the sheet governs and is ductile the strength is met with room to spare', () => {
    const ratios = taoRows
      .filter((row) => row.sheet < row.screw && row.ratio > 1)
      .map((row) => row.mean / predicted(row));
    expect(ratios.length).toBeGreaterThan(12);
    expect(mean(ratios)).toBeGreaterThan(1.3);
  });
});

/** Printed to 0.01 kN, from strengths printed to 1 MPa. */
const printing = (row: Lap, value: number): number => 0.0051 + (0.5 * value) / Math.min(row.Fu1, row.Fu2);

describe('measured lap shear of thin sheet of 465 to 820 MPa (published)', () => {
  test('the table is not empty', () => expect(caiRows).toHaveLength(14));
  for (const row of caiRows)
    test(`${row.name}: ${row.peak} kN measured, ratio ${row.ratio}`, () => {
      const full = (row.screws * predicted(row)) / 1000;
      expect(Math.abs(full - row.full)).toBeLessThanOrEqual(printing(row, full));
      const design = (row.screws * predicted(row, reduced)) / 1000;
      expect(Math.abs(design - row.reduced)).toBeLessThanOrEqual(printing(row, design));
      expect(Math.abs(row.peak / full - row.ratio)).toBeLessThanOrEqual(0.01);
    });
  test('with the full Fu the equation promises more than every sheet held; A3.1 puts that right on average', () => {
    const rows = caiRows.filter((row) => row.sheetFailed === 1);
    const share = (design?: typeof reduced) =>
      rows.map((row) => (1000 * row.peak) / (row.screws * predicted(row, design)));
    expect(Math.max(...share())).toBeLessThan(1);
    expect(mean(share(reduced))).toBeGreaterThan(1.2);
  });
});

describe('measured lap shear of thin sheet on framing (published)', () => {
  test('the table is not empty', () => expect(zhangRows).toHaveLength(13));
  for (const row of zhangRows)
    test(`${row.name}: ${row.peak} N measured, ratio ${row.ratio}`, () => {
      expect(Math.abs(predicted(row) - row.sheet)).toBeLessThanOrEqual(1);
      expect(Math.abs(row.peak / predicted(row) - row.ratio)).toBeLessThanOrEqual(0.006);
    });
  test('a sheet between two thick parts holds half as much again as a lap', () => {
    const share = (row: (typeof zhangRows)[number]) => row.peak / predicted(row);
    expect(Math.min(...zhangRows.filter((row) => row.sandwiched).map(share))).toBeGreaterThan(1.4);
  });
});

test('the conversion to newtons is that of the pound force', () => {
  expect(convert(newton(4.4482216152605), 'N', 'lbf')).toBeCloseTo(1, 12);
});
