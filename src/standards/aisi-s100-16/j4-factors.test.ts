import { describe, expect, test } from 'vitest';
import { inch, lbf, psi, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { limitStates } from '../aisi-s100-common/screw-terms.ts';
import { aisiS10016 } from './edition.ts';
import { minimumEdgeDistance, minimumEndDistance, minimumSpacing } from './j4.2-spacing.ts';
import { endTearOut } from './j4.3.1-end-tear-out.ts';
import { screwShear, screwTestFactor } from './j4.3.2-screw-shear.ts';
import { screwTension } from './j4.4.3-screw-tension.ts';
import { factor } from './j4-factors.ts';

describe('factors, S100-16 J4', () => {
  for (const limitState of limitStates)
    test(`${limitState}: 3.00, 0.50, 0.40 (published but for LSD, screw tension and end tear-out)`, () => {
      const all = (['ASD', 'LRFD', 'LSD'] as const).map((method) => factor({ limitState, method }));
      expect(all).toEqual([3, 0.5, 0.4]);
    });
  test('an unknown limit state or method is refused', () => {
    const state = factor({ limitState: 'block shear' as 'pull-out', method: 'ASD' });
    const method = factor({ limitState: 'pull-out', method: 'WSD' as 'ASD' });
    expect([isRefusal(state) && state.input, isRefusal(method) && method.input]).toEqual([
      'limitState',
      'method',
    ]);
  });
  test('a factor of the screw found by tests keeps 1.25, within its bounds', () => {
    const tested = (value: number, method: 'ASD' | 'LRFD' | 'LSD') =>
      screwTestFactor({ tested: ratio(value), method });
    expect(tested(2, 'ASD')).toBe(2.5);
    expect(tested(2.6, 'ASD')).toBe(3);
    expect(tested(0.7, 'LRFD')).toBeCloseTo(0.56, 12);
    expect(tested(0.5, 'LRFD')).toBe(0.5);
    expect(tested(0.4, 'LSD')).toBe(0.4);
  });
});

describe('spacing, S100-16 J4.2', () => {
  test('1/4 in screw: 3/4 in apart, 3/8 in from an edge (published)', () => {
    const screw = { d: inch(0.25) };
    expect(minimumSpacing(screw)).toBe(0.75);
    expect([minimumEdgeDistance(screw), minimumEndDistance(screw)]).toEqual([0.375, 0.375]);
  });
  test('outside 0.08 to 0.25 in there is no spacing', () => {
    for (const d of [0.079, 0.251]) expect(isRefusal(minimumSpacing({ d: inch(d) }))).toBe(true);
  });
});

describe('end tear-out, S100-16 J6.1 (recalled)', () => {
  const sheet = { t: inch(0.0299), e: inch(0.5), d: inch(0.25), Fu: psi(65_000) };
  test('0.0299 in sheet, 0.5 in end, 1/4 in screw: 0.6 · 65000 · 2 · 0.0299 · 0.375 = 874.6 lb', () => {
    expect(endTearOut(sheet)).toBeCloseTo(874.575, 6);
    expect(aisiS10016.endTearOut(sheet, 'ASD')).toBeCloseTo(874.575 / 3, 6);
  });
  test('it stays below t e Fu, the form of the 2007 edition (971.8 lb, published form)', () => {
    expect(Number(endTearOut(sheet))).toBeLessThan(0.0299 * 0.5 * 65_000);
    expect(0.0299 * 0.5 * 65_000).toBeCloseTo(971.8, 1);
  });
  test('two screws tear twice as much, and an end nearer than 1.5 d is refused', () => {
    expect(endTearOut({ ...sheet, n: ratio(2) })).toBeCloseTo(2 * 874.575, 6);
    const near = endTearOut({ ...sheet, e: inch(0.374) });
    expect(isRefusal(near) && near.input).toBe('e');
  });
});

describe('the screw itself, S100-16 J4.3.2 and J4.4.3', () => {
  test('its nominal strength is what its maker states', () => {
    expect(screwShear({ Pnvs: lbf(1644), d: inch(0.19) })).toBe(1644);
    expect(screwTension({ Pnts: lbf(1158) })).toBe(1158);
    expect(aisiS10016.screwTension({ Pnts: lbf(1158) }, 'LRFD')).toBe(579);
  });
  test('without a stated strength, or for a 5/16 in screw, it is refused', () => {
    const none = screwTension({} as { Pnts: never });
    const thick = screwShear({ Pnvs: lbf(5000), d: inch(0.3125) });
    expect([isRefusal(none) && none.code, isRefusal(thick) && thick.input]).toEqual(['missing-input', 'd']);
  });
});
