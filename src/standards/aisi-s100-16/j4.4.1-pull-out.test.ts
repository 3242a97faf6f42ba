import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inch, psi } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { aisiS10016 } from './edition.ts';
import { pullOutRows } from './j4.4.1-pull-out.table.ts';
import { pullOut, pullOutColumn } from './j4.4.1-pull-out.ts';

// Framing associations' screw table, basis S100 E4.4 (the same equation), ASD with safety factor 3.0,
// printed to whole pounds, hence 0.5 lb.
const rows = [
  { sheet: '18 mil', tc: 0.0188, screw: '#6', d: 0.138, Fu2: 33_000, allowable: 24, origin: 'published' },
  { sheet: '18 mil', tc: 0.0188, screw: '#8', d: 0.164, Fu2: 33_000, allowable: 29, origin: 'published' },
  { sheet: '18 mil', tc: 0.0188, screw: '#10', d: 0.19, Fu2: 33_000, allowable: 33, origin: 'published' },
  { sheet: '27 mil', tc: 0.0283, screw: '1/4', d: 0.25, Fu2: 33_000, allowable: 66, origin: 'published' },
] as const;

describe('pull-out, S100-16 J4.4.1', () => {
  for (const row of rows)
    test(`${row.screw} in ${row.sheet} sheet: ${row.allowable} lb (${row.origin})`, () => {
      const nominal = pullOut({ tc: inch(row.tc), d: inch(row.d), Fu2: psi(row.Fu2) });
      expect(isRefusal(nominal) ? nominal : Math.abs(nominal / 3 - row.allowable)).toBeLessThanOrEqual(0.5);
    });

  test('a 5/16 in screw is outside the section: strength by test only', () => {
    const outcome = pullOut({ tc: inch(0.06), d: inch(0.3125), Fu2: psi(65_000) });
    expect(isRefusal(outcome) && [outcome.code, outcome.input]).toEqual(['outside-limits', 'd']);
  });

  test('the computed table is not empty', () => expect(pullOutRows.length).toBeGreaterThan(10));
  for (const row of pullOutRows)
    test(`${row.name}: ${row.nominal} lb nominal (computed, to 0.1 lb)`, () => {
      const values = { tc: inch(row.tc), d: inch(row.d), Fu2: psi(row.Fu2) };
      expect(Math.abs(Number(pullOut(values)) - row.nominal)).toBeLessThanOrEqual(0.06);
      expect(Math.abs(Number(aisiS10016.pullOut(values, 'ASD')) - row.ASD)).toBeLessThanOrEqual(0.06);
    });

  // 43 mil sheet of 45 ksi, the sheet of AISI D110-16; computed with the equation before the revision.
  test('43 mil sheet, #10: 327.8 lb, 109.3 lb allowable (computed)', () => {
    const values = { tc: inch(0.0451), d: inch(0.19), Fu2: psi(45_000) };
    expect(pullOut(values)).toBeCloseTo(327.8, 0);
    expect(aisiS10016.pullOut(values, 'ASD')).toBeCloseTo(109.3, 1);
  });

  test('thicker, stronger or a thicker screw never lowers it, and it is proportional to each', () => {
    const positive = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(positive, fc.double({ min: 1, max: 3, noNaN: true }), (tc, more) => {
        const at = (t: number, Fu: number) => Number(pullOut({ tc: inch(t), d: inch(0.19), Fu2: psi(Fu) }));
        expect(at(tc * more, 45_000) / at(tc, 45_000)).toBeCloseTo(more, 9);
        expect(at(tc, 45_000 * more) / at(tc, 45_000)).toBeCloseTo(more, 9);
      }),
    );
  });

  test('the column gives what the clause gives', () => {
    const columns = {
      tc: Float64Array.of(0.0451, 0),
      d: Float64Array.of(0.19, 0.19),
      Fu2: Float64Array.of(45_000, 1),
    };
    const { values, refused } = pullOutColumn()(columns, 2);
    expect(values[0]).toBe(pullOut({ tc: inch(0.0451), d: inch(0.19), Fu2: psi(45_000) }));
    expect(refused).toBe(1);
  });

  for (const [name, change, input] of [
    ['no penetration', { tc: inch(0) }, 'tc'],
    ['a screw thinner than 0.08 in', { d: inch(0.0799) }, 'd'],
    ['a screw thicker than 1/4 in', { d: inch(0.2501) }, 'd'],
    ['a sheet without strength', { Fu2: psi(0) }, 'Fu2'],
    ['an infinite strength', { Fu2: psi(Number.POSITIVE_INFINITY) }, 'Fu2'],
  ] as const)
    test(`${name} is refused`, () => {
      const outcome = pullOut({ tc: inch(0.0451), d: inch(0.19), Fu2: psi(45_000), ...change });
      expect(isRefusal(outcome) && outcome.input).toBe(input);
    });
});
