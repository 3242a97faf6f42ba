import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Inch, inch, psi } from '../../quantities/quantity.ts';
import { stepLine } from '../../trace/print.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { aisiS10016 } from './edition.ts';
import { lapShearRows } from './j4.3.1-tilting-and-bearing.table.ts';
import { tiltingAndBearing } from './j4.3.1-tilting-and-bearing.ts';

const quantities = (row: { t1: number; t2: number; d: number; Fu1: number; Fu2: number }) => ({
  t1: inch(row.t1),
  t2: inch(row.t2),
  d: inch(row.d),
  Fu1: psi(row.Fu1),
  Fu2: psi(row.Fu2),
});
const sheet = { t1: 0.0239, t2: 0.0598, d: 0.216, Fu1: 65_000, Fu2: 65_000 };

describe('tilting and bearing, S100-16 J4.3.1', () => {
  test('the table is not empty', () => expect(lapShearRows.length).toBeGreaterThan(15));
  for (const row of lapShearRows)
    test(`${row.name}: ${row.nominal} lb nominal (computed, to 0.1 lb)`, () => {
      const values = quantities(row);
      expect(Math.abs(Number(tiltingAndBearing(values)) - row.nominal)).toBeLessThanOrEqual(0.06);
      expect(Math.abs(Number(aisiS10016.shear(values, 'ASD')) - row.ASD)).toBeLessThanOrEqual(0.06);
      expect(Math.abs(Number(aisiS10016.shear(values, 'LRFD')) - row.LRFD)).toBeLessThanOrEqual(0.06);
      expect(Math.abs(Number(aisiS10016.shear(values, 'LSD')) - row.LSD)).toBeLessThanOrEqual(0.06);
    });

  // AISI D110-16, pages 1-31 and 2-23: whole pounds.
  const guide = { t1: 0.0566, t2: 0.0451, d: 0.19, Fu1: 65_000, Fu2: 45_000 };
  test('design guide D110-16: tilting 789 lb, bearing under the head 1887 lb, and tilting governs (published)', () => {
    const trace: Trace = [];
    expect(Math.abs(Number(tiltingAndBearing(quantities(guide), trace)) - 789)).toBeLessThanOrEqual(0.5);
    const bearing = trace.find((step) => step.kind === 'equation' && step.symbol === 'Pb1');
    expect(bearing?.kind === 'equation' && Math.abs(bearing.value - 1887)).toBeLessThanOrEqual(0.5);
    expect(trace.map(stepLine).join('\n')).toContain('Ptilt = 4.2 · √(t2^3 · d) · Fu2');
  });

  test('t1 is under the head: swapping the sheets changes the strength', () => {
    const swapped = { ...sheet, t1: sheet.t2, t2: sheet.t1 };
    expect(Number(tiltingAndBearing(quantities(swapped)))).toBeLessThan(
      0.6 * Number(tiltingAndBearing(quantities(sheet))),
    );
  });

  test('it does not jump where tilting begins and where it ends to count', () => {
    for (const share of [1, 2.5]) {
      const at = (t2: number) => Number(tiltingAndBearing(quantities({ ...sheet, t2 })));
      const t2 = share * sheet.t1;
      expect(Math.abs(at(t2 * (1 + 1e-9)) / at(t2 * (1 - 1e-9)) - 1)).toBeLessThan(1e-6);
    }
  });

  test('between, it goes from the least of three to the least of two: at t2/t1 = 2.25 five sixths of the way', () => {
    const soft = { t1: 0.024, t2: 0.054, d: 0.25, Fu1: 82_000, Fu2: 33_000 };
    const tilting = 4.2 * Math.sqrt(0.054 ** 3 * 0.25) * 33_000;
    const bearing = 2.7 * 0.054 * 0.25 * 33_000;
    expect(tilting).toBeLessThan(0.9 * bearing);
    expect(tiltingAndBearing(quantities(soft))).toBeCloseTo(tilting + ((bearing - tilting) * 1.25) / 1.5, 6);
  });

  const thickness = fc.double({ min: 0.0135, max: 0.25, noNaN: true });
  const strength = fc.double({ min: 30_000, max: 90_000, noNaN: true });
  const diameter = fc.double({ min: 0.08, max: 0.25, noNaN: true });
  test('a thicker or stronger sheet or a thicker screw never lowers it', () => {
    fc.assert(
      fc.property(
        thickness,
        thickness,
        diameter,
        strength,
        strength,
        fc.double({ min: 1, max: 1.5, noNaN: true }),
        (t1, t2, d, Fu1, Fu2, more) => {
          const at = (change: object) =>
            Number(tiltingAndBearing(quantities({ t1, t2, d, Fu1, Fu2, ...change })));
          const now = at({}) * (1 - 1e-9);
          expect(at({ t2: t2 * more })).toBeGreaterThanOrEqual(now);
          expect(at({ Fu1: Fu1 * more })).toBeGreaterThanOrEqual(now);
          expect(at({ Fu2: Fu2 * more })).toBeGreaterThanOrEqual(now);
          expect(at({ d: Math.min(0.25, d * more) })).toBeGreaterThanOrEqual(now);
        },
      ),
    );
  });

  const refused: readonly (readonly [string, object, string])[] = [
    ['a 5/16 in screw', { d: inch(0.3125) }, 'd'],
    ['a #17 screw', { d: inch(0.29) }, 'd'],
    ['a screw thinner than 0.08 in', { d: inch(0.079) }, 'd'],
    ['a sheet without thickness', { t1: inch(0) }, 't1'],
    ['a negative thickness', { t2: inch(-0.1) }, 't2'],
    ['a strength that is not a number', { Fu1: psi(Number.NaN) }, 'Fu1'],
    ['a sheet without strength', { Fu2: psi(0) }, 'Fu2'],
    ['an unknown thickness', { t1: undefined as unknown as Inch }, 't1'],
  ];
  for (const [name, change, input] of refused)
    test(`${name} is refused`, () => {
      const outcome = tiltingAndBearing({ ...quantities(sheet), ...change });
      expect(isRefusal(outcome) && outcome.input).toBe(input);
    });
});
