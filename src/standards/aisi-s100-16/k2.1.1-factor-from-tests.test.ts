import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { resistanceFactorFromTests, safetyFactorFromTests } from './k2.1.1-factor-from-tests.ts';

const tests = (n: number, Pm: number, VP: number) =>
  ({ n: ratio(n), Pm: ratio(Pm), VP: ratio(VP), kind: 'screw connection' }) as const;

describe('factors from tests, S100-16 K2.1.1', () => {
  // Computed by an independent program from the published equations; φ to 0.0001, Ω to 0.001.
  const rows = [
    { name: 'three tests, scatter below the floor', n: 3, Pm: 1, VP: 0.05, CP: 5.7, φ: 0.5914, Ω: 2.706 },
    { name: 'five tests', n: 5, Pm: 0.95, VP: 0.08, CP: 2.4, φ: 0.5922, Ω: 2.702 },
    { name: 'six tests', n: 6, Pm: 1, VP: 0.1, CP: 1.9444, φ: 0.608, Ω: 2.632 },
    { name: 'eight tests', n: 8, Pm: 1, VP: 0.15, CP: 1.575, φ: 0.5542, Ω: 2.887 },
    { name: 'ten tests', n: 10, Pm: 1.05, VP: 0.12, CP: 1.4143, φ: 0.6348, Ω: 2.52 },
    { name: 'lap shear, 26 groups', n: 26, Pm: 1.312, VP: 0.239, CP: 1.1288, φ: 0.6254, Ω: 2.559 },
    { name: 'thin sheet, 12 groups', n: 12, Pm: 0.989, VP: 0.291, CP: 1.3241, φ: 0.3805, Ω: 4.205 },
  ] as const;
  for (const row of rows)
    test(`${row.name}: φ ${row.φ}, Ω ${row.Ω}`, () => {
      const trace: Trace = [];
      const values = tests(row.n, row.Pm, row.VP);
      const φ = resistanceFactorFromTests({ ...values, method: 'LRFD' }, trace);
      expect(Math.abs(Number(φ) - row.φ)).toBeLessThanOrEqual(0.00006);
      expect(Math.abs(Number(safetyFactorFromTests(values)) - row.Ω)).toBeLessThanOrEqual(0.0006);
      const CP = trace.find((step) => step.kind !== 'note' && step.symbol === 'CP');
      expect(CP?.kind !== 'note' && Math.abs((CP?.value ?? 0) - row.CP)).toBeLessThanOrEqual(0.00006);
    });
  test('Canada, ten tests: φ 0.5129', () => {
    const φ = resistanceFactorFromTests({ ...tests(10, 1.05, 0.12), method: 'LSD' });
    expect(Math.abs(Number(φ) - 0.5129)).toBeLessThanOrEqual(0.00006);
  });

  test('fewer than three tests, or two and a half, give no factor', () => {
    for (const n of [0, 1, 2, 3.5, Number.NaN]) {
      const outcome = safetyFactorFromTests(tests(n, 1, 0.1));
      expect(isRefusal(outcome) && outcome.input).toBe('n');
    }
  });
  test('a mean of nothing and a negative scatter are refused', () => {
    const none = safetyFactorFromTests(tests(5, 0, 0.1));
    const negative = safetyFactorFromTests(tests(5, 1, -0.1));
    expect([isRefusal(none) && none.input, isRefusal(negative) && negative.input]).toEqual(['Pm', 'VP']);
  });
  test('a connection that is not listed gets the lower factor', () => {
    const other = { ...tests(5, 1, 0.1), kind: 'connection not listed' } as const;
    expect(Number(safetyFactorFromTests(other))).toBeGreaterThan(
      Number(safetyFactorFromTests(tests(5, 1, 0.1))),
    );
  });
  test('more tests never lower φ, more scatter never raises it', () => {
    const VP = fc.double({ min: 0, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 60 }),
        VP,
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (n, V, more) => {
          const φ = (count: number, scatter: number) =>
            Number(resistanceFactorFromTests({ ...tests(count, 1, scatter), method: 'LRFD' }));
          expect(φ(n + 1, V)).toBeGreaterThanOrEqual(φ(n, V));
          expect(φ(n, V + more)).toBeLessThanOrEqual(φ(n, V));
        },
      ),
    );
  });
});
