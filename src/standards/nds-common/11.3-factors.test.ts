import { describe, expect, test } from 'vitest';
import { degree, inch, lbf, psi, quantity, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { clausesOfNds2018 as nds } from '../nds-2018/clauses.ts';
import type { wetServiceKinds } from './11.3-service-factors.ts';
import { combinedRows } from './12.4-sheathing.table.ts';

const refusedInput = (outcome: unknown) => (isRefusal(outcome) ? outcome.input : outcome);
type Moisture = 'dry' | 'wet';

describe('service factors (quoted from the 2018 edition)', () => {
  test.each([
    ['permanent', 0.9, 'published'],
    ['occupancy live', 1, 'published'],
    ['snow', 1.15, 'published'],
    ['roof live', 1.25, 'published'],
    ['wind or earthquake', 1.6, 'published'],
  ] as const)('load duration, %s: %d (%s)', (load, CD, _origin) => {
    expect(nds.loadDuration({ load })).toBe(CD);
    expect(nds.methodFactor({ method: 'ASD', load })).toBe(CD);
  });

  // Table N3, λ recalled; K_F 3.32 and φ 0.65 published.
  test.each([
    ['permanent', 0.6, 'memory'],
    ['occupancy live', 0.8, 'memory'],
    ['snow', 0.8, 'memory'],
    ['roof live', 0.8, 'memory'],
    ['wind or earthquake', 1, 'memory'],
  ] as const)('LRFD, %s: λ %d (%s), and no load duration factor', (load, λ, _origin) => {
    expect(nds.methodFactor({ method: 'LRFD', load })).toBeCloseTo(3.32 * 0.65 * λ, 12);
  });

  test.each<[(typeof wetServiceKinds)[number], number, Moisture, Moisture, number, string]>([
    ['lateral', 0.19, 'dry', 'dry', 1, 'published'],
    ['lateral', 0.19, 'wet', 'dry', 0.7, 'published'],
    ['lateral', 0.5, 'wet', 'dry', 0.4, 'published'],
    ['lateral', 0.19, 'dry', 'wet', 0.7, 'published'],
    ['lateral', 0.5, 'wet', 'wet', 0.7, 'published'],
    ['withdrawal of screw or lag', 0.19, 'wet', 'dry', 1, 'published'],
    ['withdrawal of screw or lag', 0.19, 'dry', 'wet', 0.7, 'published'],
    ['withdrawal of smooth nail', 0.131, 'dry', 'dry', 1, 'published'],
    ['withdrawal of smooth nail', 0.131, 'wet', 'dry', 0.25, 'published'],
    ['withdrawal of smooth nail', 0.131, 'dry', 'wet', 0.25, 'published'],
    ['withdrawal of smooth nail', 0.131, 'wet', 'wet', 1, 'published'],
    ['withdrawal of ring-shank nail', 0.113, 'dry', 'wet', 1, 'published'],
    ['head pull-through', 0.281, 'dry', 'dry', 1, 'memory'],
    ['head pull-through', 0.281, 'dry', 'wet', 0.7, 'memory'],
  ])('%s, %d in, %s when driven, %s in service: %d (%s)', (kind, D, atFabrication, inService, CM) => {
    expect(nds.wetService({ kind, D: inch(D), atFabrication, inService, arrangement: 'other' })).toBe(CM);
  });

  test('one fastener, or one row along the grain, escapes the 0.4 of large dowels in drying wood', () => {
    const row = { kind: 'lateral', D: inch(0.5), atFabrication: 'wet', inService: 'dry' } as const;
    expect(nds.wetService({ ...row, arrangement: 'one fastener or one row along the grain' })).toBe(1);
  });

  test.each([
    ['to 100 F', 'dry', 1],
    ['to 100 F', 'wet', 1],
    ['100 to 125 F', 'dry', 0.8],
    ['100 to 125 F', 'wet', 0.7],
    ['125 to 150 F', 'dry', 0.7],
    ['125 to 150 F', 'wet', 0.5],
  ] as const)('temperature %s, %s: %d', (temperature, inService, Ct) => {
    expect(nds.temperatureFactor({ temperature, inService })).toBe(Ct);
  });

  test('above 150 F there is no factor', () => {
    const temperature = '150 to 200 F' as 'to 100 F';
    expect(refusedInput(nds.temperatureFactor({ temperature, inService: 'dry' }))).toBe('temperature');
  });
});

describe('group, geometry and position', () => {
  test.each([
    ['Table 11.3.6A', 4, 12, 12, 1.4e6, 'wood', 0.96],
    ['Table 11.3.6A', 12, 64, 64, 1.4e6, 'wood', 0.88],
    ['Table 11.3.6C', 6, 5, 0.41667, 30e6, 'steel', 0.62],
  ] as const)(
    '%s, %d in a row, %d and %d in²: published to two figures',
    (_table, n, Am, As, Es, side, Cg) => {
      const rest = { D: inch(1), s: inch(4), Em: psi(1.4e6), Es: psi(Es), side };
      const value = nds.groupAction({
        ...rest,
        n: ratio(n),
        Am: quantity(Am, 'in²'),
        As: quantity(As, 'in²'),
      });
      expect(Math.abs(Number(value) - Cg)).toBeLessThanOrEqual(0.005);
    },
  );

  test('ten small screws in a row have no group factor (published)', () => {
    const rest = { D: inch(0.19), s: inch(4), Em: psi(1.4e6), Es: psi(30e6), side: 'steel' } as const;
    expect(nds.groupAction({ ...rest, n: ratio(10), Am: quantity(5, 'in²'), As: quantity(0.4, 'in²') })).toBe(
      1,
    );
  });

  test('half of the full end distance gives one half, less is refused', () => {
    const at = (e: number, s = 2) =>
      nds.geometry({ D: inch(0.5), e: inch(e), s: inch(s), end: 'tension, softwood' });
    expect([at(3.5), at(1.75), at(3.5, 1.5)]).toEqual([1, 0.5, 0.75]);
    expect([refusedInput(at(1.74)), refusedInput(at(3.5, 1.49))]).toEqual(['e', 's']);
  });

  test('end grain: a lag keeps 0.75, any dowel 0.67 sideways, screws and nails no withdrawal at all (published)', () => {
    const at = (fastener: 'lag screw' | 'wood screw' | 'nail', load: 'withdrawal' | 'lateral') =>
      refusedInput(nds.endGrain({ fastener, load, grain: 'end grain' }));
    expect(at('lag screw', 'withdrawal')).toBe(0.75);
    expect(['lag screw', 'wood screw', 'nail'].map((each) => at(each as 'nail', 'lateral'))).toEqual([
      0.67, 0.67, 0.67,
    ]);
    expect([at('wood screw', 'withdrawal'), at('nail', 'withdrawal')]).toEqual(['grain', 'grain']);
  });

  test('toe-nails 0.67 and 0.83, diaphragm nails 1.1 (published)', () => {
    expect([nds.toeNail({ load: 'withdrawal' }), nds.toeNail({ load: 'lateral' })]).toEqual([0.67, 0.83]);
    expect([nds.diaphragm({ use: 'diaphragm' }), nds.diaphragm({ use: 'other' })]).toEqual([1.1, 1]);
  });
});

describe('combined loading', () => {
  test('the table holds its rows', () => expect(combinedRows.length).toBe(10));
  for (const { fastener, Wp, Z, alpha, expected, source, origin } of combinedRows)
    test(`${fastener} at ${alpha} degrees, ${Wp} and ${Z} lb: ${expected} lb (${source}, ${origin})`, () => {
      const value = nds.combined({ fastener, Wp: lbf(Wp), Z: lbf(Z), α: degree(alpha) });
      expect(Math.abs(Number(value) - expected)).toBeLessThanOrEqual(0.01);
    });
  test('an angle above 90 degrees or a value of nothing is refused', () => {
    const row = { fastener: 'nail', Wp: lbf(60), Z: lbf(90), α: degree(45) } as const;
    expect(refusedInput(nds.combined({ ...row, α: degree(90.1) }))).toBe('α');
    expect(refusedInput(nds.combined({ ...row, Wp: lbf(0) }))).toBe('Wp');
  });
});

describe('lengths', () => {
  test.each([
    ['nail', 1.25, 0.162, 0.7716],
    ['nail', 0.75, 0.162, undefined],
    ['wood screw', 1.14, 0.19, 0.6],
    ['wood screw', 1.13, 0.19, undefined],
    ['wood screw', 0.4375, 0.19, undefined],
    ['lag screw', 2, 0.5, 0.5],
    ['lag screw', 1.99, 0.5, undefined],
  ] as const)(
    '%s %d in deep, %d in: factor %s (clause text quoted, arithmetic)',
    (fastener, p, D, factor) => {
      const outcome = nds.penetrationFactor({ fastener, p: inch(p), D: inch(D) });
      if (factor === undefined) expect(refusedInput(outcome)).toBe('p');
      else expect(outcome).toBeCloseTo(factor, 4);
    },
  );

  test('full penetration has no more than 1', () => {
    expect(nds.penetrationFactor({ fastener: 'nail', p: inch(3), D: inch(0.131) })).toBe(1);
  });

  test.each([
    [1, 0.19, 0.76],
    [1.5, 0.19, 1],
    [2, 0.216, 2 * (2 / 3)],
    [3, 0.19, 2],
  ] as const)('thread of a %d in screw, %d in: %d in (Table L3)', (L, D, T) => {
    expect(nds.screwThread({ L: inch(L), D: inch(D) })).toBeCloseTo(T, 3);
  });

  test.each([
    [1, 0.75],
    [1.5, 1.25],
    [2, 1.5],
    [2.5, 1.75],
    [3, 2],
    [4, 2.5],
    [5, 3],
    [6, 3.5],
    [8, 4.5],
    [10, 5.5],
    [12, 6],
  ] as const)('thread of a %d in lag: %d in (Table L2, published)', (L, T) => {
    expect(nds.lagThread({ L: inch(L) })).toBe(T);
  });

  test('thread beyond a thin member does not count, nor a shank that never gets there', () => {
    const at = (L: number, ts: number, tm: number) =>
      nds.threadInMember({ L: inch(L), T: inch(2), E: inch(0), ts: inch(ts), tm: inch(tm) });
    expect(at(3, 0.02, 0.4375)).toBeCloseTo(0, 12); // the smooth shank is in the panel, the thread below it
    expect(at(2, 0.02, 0.4375)).toBeCloseTo(0.4375, 12);
    expect(at(2, 0.5, 3)).toBeCloseTo(1.5, 12);
  });

  test('half of the tip does not bear; a lag without its tip length is a question', () => {
    const screw = { fastener: 'wood screw', D: inch(0.19), p: inch(1.9) } as const;
    expect(nds.bearingLength(screw)).toBeCloseTo(1.71, 12);
    const lag = { fastener: 'lag screw', D: inch(0.5), p: inch(2.5) } as const;
    expect(nds.bearingLength({ ...lag, E: inch(0.3125) })).toBeCloseTo(2.34375, 12);
    expect(isRefusal(nds.bearingLength(lag)) && nds.bearingLength(lag)).toMatchObject({
      code: 'missing-input',
      input: 'E',
    });
    expect(refusedInput(nds.bearingLength({ ...screw, p: inch(0.38) }))).toBe('p');
  });
});
