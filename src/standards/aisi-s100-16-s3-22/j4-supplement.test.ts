import { describe, expect, test } from 'vitest';
import { inch, lbf, psi } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { aisiS10016 } from '../aisi-s100-16/edition.ts';
import { lapShearRows } from '../aisi-s100-16/j4.3.1-tilting-and-bearing.table.ts';
import { pullOutRows } from '../aisi-s100-16/j4.4.1-pull-out.table.ts';
import { headRows, washerRows } from '../aisi-s100-16/j4.4.2-pull-over.table.ts';
import { aisiS10016S322 } from './edition.ts';
import { pullOut } from './j4.4.1-pull-out.ts';
import { pullOver } from './j4.4.2-pull-over.ts';
import { factor } from './j4-factors.ts';

/** Printed to 0.1 lb. */
const within = (value: unknown, printed: number): void =>
  expect(Math.abs(Number(value) - printed)).toBeLessThanOrEqual(0.06);

describe('factors, S100-16 w/S3-22 J4 (published, a reproduction of chapter J)', () => {
  for (const [limitState, ASD, LRFD, LSD] of [
    ['tilting and bearing', 2.8, 0.55, 0.45],
    ['pull-out', 2.8, 0.55, 0.45],
    ['pull-over', 2.9, 0.55, 0.4],
    ['screw shear', 3, 0.5, 0.4],
    ['screw tension', 3, 0.5, 0.4],
    ['end tear-out', 3, 0.5, 0.4],
  ] as const)
    test(`${limitState}: ${ASD}, ${LRFD}, ${LSD}`, () => {
      const all = (['ASD', 'LRFD', 'LSD'] as const).map((method) => factor({ limitState, method }));
      expect(all).toEqual([ASD, LRFD, LSD]);
    });
});

describe('pull-out, S100-16 w/S3-22 J4.4.1', () => {
  test('0.0451 in sheet of 45 ksi, #10: 306 lb (published, AISI D110-16, whole pounds)', () => {
    const values = { tc: inch(0.0451), d: inch(0.19), Fu2: psi(45_000) };
    expect(Math.abs(Number(pullOut(values)) - 306)).toBeLessThanOrEqual(0.5);
  });
  test('the table is not empty', () => expect(pullOutRows.length).toBeGreaterThan(10));
  for (const row of pullOutRows)
    test(`${row.name}: ${row.nominal2022} lb nominal (computed)`, () => {
      const values = { tc: inch(row.tc), d: inch(row.d), Fu2: psi(row.Fu2) };
      const trace: Trace = [];
      within(pullOut(values, trace), row.nominal2022);
      within(aisiS10016S322.pullOut(values, 'ASD'), row.ASD2022);
      within(aisiS10016S322.pullOut(values, 'LRFD'), row.LRFD2022);
      const kt = trace.find((step) => step.kind === 'equation' && step.symbol === 'kt');
      expect(kt?.kind === 'equation' && Math.abs(kt.value - row.factor)).toBeLessThanOrEqual(0.00006);
    });

  test('nominal values of both editions meet at 0.0662 in, allowable values at 0.0452 in (computed, to 0.0001 in)', () => {
    const share = (tc: number) => {
      const values = { tc: inch(tc), d: inch(0.19), Fu2: psi(45_000) };
      const nominal = Number(pullOut(values)) / (3 * Number(aisiS10016.pullOut(values, 'ASD')));
      const allowable =
        Number(aisiS10016S322.pullOut(values, 'ASD')) / Number(aisiS10016.pullOut(values, 'ASD'));
      return { nominal, allowable };
    };
    expect(share(0.0661).nominal).toBeLessThan(1);
    expect(share(0.0664).nominal).toBeGreaterThan(1);
    expect(share(0.0451).allowable).toBeLessThan(1);
    expect(share(0.0454).allowable).toBeGreaterThan(1);
  });

  // Metric form: 1.5 mm, 5.5 mm, 450 MPa with α = 0.0394 per mm: factor 0.9797, 3091 N (computed, 0.1 %).
  test('in inches it agrees with the metric form of the clause', () => {
    const values = { tc: inch(1.5 / 25.4), d: inch(5.5 / 25.4), Fu2: psi(450 / 0.006894757293168361) };
    expect(Math.abs((Number(pullOut(values)) * 4.4482216152605) / 3091 - 1)).toBeLessThanOrEqual(0.001);
  });

  for (const [name, change, input] of [
    ['a 5/16 in screw', { d: inch(0.3125) }, 'd'],
    ['no penetration', { tc: inch(0) }, 'tc'],
    ['a strength that is not a number', { Fu2: psi(Number.NaN) }, 'Fu2'],
  ] as const)
    test(`${name} is refused`, () => {
      const outcome = pullOut({ tc: inch(0.0451), d: inch(0.19), Fu2: psi(45_000), ...change });
      expect(isRefusal(outcome) && outcome.input).toBe(input);
    });
});

describe('pull-over, S100-16 w/S3-22 J4.4.2, lower bound', () => {
  const head = { bearing: 'head alone', pull: 'all round', d: inch(0.216) } as const;
  for (const row of headRows)
    test(`${row.name}, ${row.t1} in: ${row.nominal2022} lb nominal (computed)`, () => {
      const values = { ...head, dh: inch(row.dh), t1: inch(row.t1), Fu1: psi(row.Fu1) };
      within(pullOver(values), row.nominal2022);
      within(aisiS10016S322.pullOver(values, 'ASD'), row.ASD2022);
    });
  for (const row of washerRows)
    test(`${row.name}, ${row.t1} in: ${row.nominal2022} lb nominal (computed)`, () => {
      const bearing = row.name.startsWith('domed') ? 'domed washer' : 'solid washer';
      const washer = { bearing, dw: inch(row.dw), tw: inch(row.tw) } as const;
      const values = { ...head, ...washer, dh: inch(row.dh), t1: inch(row.t1), Fu1: psi(row.Fu1) };
      within(pullOver(values), row.nominal2022);
      within(aisiS10016S322.pullOver(values, 'ASD'), row.ASD2022);
    });
  const values = { ...head, dh: inch(0.415), t1: inch(0.0239), Fu1: psi(65_000) };
  test('the working says that it is a lower bound', () => {
    const trace: Trace = [];
    pullOver(values, trace);
    expect(trace.some((step) => step.kind === 'note' && step.text.startsWith('lower bound'))).toBe(true);
  });
  test('a pull on one side counts half, a head below 5/16 in not at all', () => {
    expect(pullOver({ ...values, pull: 'one side' })).toBe(Number(pullOver(values)) / 2);
    expect(isRefusal(pullOver({ ...values, dh: inch(0.3) }))).toBe(true);
  });
});

describe('tilting and bearing, S100-16 w/S3-22 J4.3.1', () => {
  for (const row of lapShearRows)
    test(`${row.name}: ${row.ASD2022} lb allowable (computed)`, () => {
      const values = {
        t1: inch(row.t1),
        t2: inch(row.t2),
        d: inch(row.d),
        Fu1: psi(row.Fu1),
        Fu2: psi(row.Fu2),
      };
      within(aisiS10016S322.shear(values, 'ASD'), row.ASD2022);
      within(aisiS10016S322.shear(values, 'LRFD'), row.LRFD2022);
    });
});

describe('shear and tension together, S100-16 w/S3-22 J4.5 (not confirmed)', () => {
  const load = { V: lbf(100), T: lbf(80) };
  test('it is never kinder than S100-16, and says that it is not confirmed', () => {
    const over = { t1: inch(0.0359), t2: inch(0.1), d: inch(0.216), dw: inch(0.5), Fu1: psi(65_000) };
    const values = { ...load, ...over, pull: 'all round' } as const;
    const trace: Trace = [];
    const share = Number(aisiS10016S322.shearAndPullOver(values, 'ASD', trace));
    expect(share).toBeGreaterThan(Number(aisiS10016.shearAndPullOver(values, 'ASD')));
    expect(trace.some((step) => step.kind === 'note' && step.text.startsWith('not confirmed'))).toBe(true);
  });
  test('the thickness factor enters pull-out where it lowers it, not where it raises it', () => {
    const at = (t2: number) => {
      const sheet = { t2: inch(t2), tc: inch(t2), d: inch(0.19), Fu2: psi(65_000), Fy2: psi(50_000) };
      const values = { ...load, V: lbf(0), ...sheet };
      return (
        Number(aisiS10016S322.shearAndPullOut(values, 'ASD')) /
        Number(aisiS10016.shearAndPullOut(values, 'ASD'))
      );
    };
    expect(at(0.0359)).toBeCloseTo(1 / 0.8956, 3);
    expect(at(0.07)).toBeCloseTo(1, 12);
  });
});
