import { describe, expect, test } from 'vitest';
import { inch, millimetre, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { clausesOfNds2018 as nds } from '../nds-2018/clauses.ts';
import {
  lagAcrossFactors,
  lagSideFactors,
  lateralCoefficients,
  proportionalLimitLateral,
  screwShanks,
} from './8-lateral.ts';
import {
  lagScrewUltimate,
  smoothNailUltimate,
  threadedNailUltimate,
  withdrawalCoefficients,
  woodScrewUltimate,
} from './8-withdrawal.ts';

const one = (G: number, D: number, L = 1) => ({ G: ratio(G), D: inch(D), L: inch(L) });

describe('ultimate withdrawal, Wood Handbook chapter 8', () => {
  test('five equations are listed', () => expect(withdrawalCoefficients.length).toBe(5));
  // 1 psi is 0.00689476 MPa; the lag carries length to the power 1.75.
  for (const row of withdrawalCoefficients)
    test(`Eq. ${row.equation}: ${row.metric} in N and mm is ${row.inch} in lb and in (${row.origin})`, () => {
      const turned =
        row.fastener === 'lag screw' ? (row.inch * 4.44822) / 25.4 ** 1.75 : row.inch * 0.00689476;
      expect(Math.abs(turned / row.metric - 1)).toBeLessThanOrEqual(
        row.fastener === 'lag screw' ? 0.001 : 0.0005,
      );
    });

  test.each([
    ['No. 8', 0.38, 0.164, 0.75, 278.9, 'computed'],
    ['No. 10', 0.48, 0.19, 1, 687.3, 'computed'],
    ['No. 12', 0.51, 0.216, 1.5, 1323.1, 'computed'],
  ] as const)('%s in G %d, %d in, %d in of thread: %d lb (%s)', (_number, G, D, L, ultimate, _origin) => {
    expect(Math.abs(Number(woodScrewUltimate(one(G, D, L))) - ultimate)).toBeLessThanOrEqual(0.1);
  });

  // Ratios as the notes to the handbook state them, printed to two figures; before the change of gravity basis.
  test('the reference values of NDS lie below the averages by 5.5, 5.7, 6.25 and 4.5', () => {
    const at = { G: ratio(0.42), D: inch(0.19) };
    const screw =
      Number(woodScrewUltimate(one(0.42, 0.19))) /
      Number(nds.screwReference({ ...at, screwStandard: 'ASME B18.6.1' }));
    const nail =
      Number(smoothNailUltimate(one(0.42, 0.19))) / Number(nds.nailReference({ ...at, shank: 'smooth' }));
    const ring =
      Number(threadedNailUltimate(one(0.42, 0.19))) / Number(nds.nailReference({ ...at, shank: 'ring' }));
    const lag =
      Number(lagScrewUltimate(one(0.42, 0.5))) / Number(nds.lagReference({ G: ratio(0.42), D: inch(0.5) }));
    expect([screw.toFixed(1), nail.toFixed(1), ring.toFixed(2), lag.toFixed(1)]).toEqual([
      '5.5',
      '5.7',
      '6.25',
      '4.5',
    ]);
  });

  test('a gravity outside the woods tested is refused', () => {
    for (const G of [0.28, 0.75]) expect(isRefusal(woodScrewUltimate(one(G, 0.19)))).toBe(true);
    expect(isRefusal(woodScrewUltimate(one(0.5, 0.19, 0)))).toBe(true);
  });
});

describe('lateral tables (published, copied)', () => {
  test.each([
    ['hardwood', 0.33, 0.47, 50.04, 23.17, 26.34],
    ['hardwood', 0.57, 0.74, 94.52, 44.13, 34.13],
    ['softwood', 0.43, 0.47, 62.55, 29.79, 26.34],
    ['softwood', 0.48, 0.52, 76.45, 36.4, 29.51],
  ] as const)('Table 8-4, %s from %d to %d', (wood, from, to, nail, screw, lag) => {
    expect(lateralCoefficients).toContainEqual({ wood, from, to, nail, screw, lag, origin: 'published' });
    const at = { wood, G: ratio(from), D: millimetre(1) };
    expect(proportionalLimitLateral({ ...at, fastener: 'nail' })).toBe(nail);
    expect(proportionalLimitLateral({ ...at, fastener: 'lag' })).toBe(lag);
  });

  test.each([
    [2, 0.62],
    [3, 0.93],
    [3.5, 1],
    [5, 1.18],
    [6.5, 1.22],
  ])('Table 8-10, thickness %d diameters: %d', (t, factor) =>
    expect(lagSideFactors).toContainEqual([t, factor]),
  );

  test.each([
    [6.4, 0.97],
    [9.5, 0.76],
    [12.7, 0.65],
    [19, 0.55],
  ])('Table 8-11, shank %d mm across the grain: %d', (d, factor) =>
    expect(lagAcrossFactors).toContainEqual([d, factor]),
  );

  test.each([
    [6, 3.51, 0.138],
    [8, 4.17, 0.164],
    [10, 4.83, 0.19],
    [12, 5.49, 0.216],
    [14, 6.15, 0.242],
    [16, 6.81, 0.268],
  ])('Table 8-9, No. %d is %d mm, %d in', (number, mm, inches) => {
    expect(screwShanks).toContainEqual([number, mm]);
    expect(Math.abs(mm / 25.4 - inches)).toBeLessThanOrEqual(0.0005);
  });

  test('between two bands the lower one counts; outside all of them there is no value', () => {
    const at = (wood: 'softwood' | 'hardwood', G: number) =>
      proportionalLimitLateral({ fastener: 'nail', wood, G: ratio(G), D: millimetre(1) });
    expect(at('softwood', 0.425)).toBe(50.04);
    expect([at('softwood', 0.53), at('hardwood', 0.3)].map(isRefusal)).toEqual([true, true]);
  });

  test('bearing strength: 114.5 MPa in the handbook is 16,600 psi of NDS, within 0.1 percent (published)', () => {
    expect(Math.abs((16_600 * 0.00689476) / 114.5 - 1)).toBeLessThanOrEqual(0.001);
  });
});
