import { describe, expect, test } from 'vitest';
import { foot } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { unchangedClausesOf716 } from '../asce-7-16/unchanged-clauses.ts';
import { unchangedClausesOf722 } from '../asce-7-22/unchanged-clauses.ts';
import { distance, height, steepness, whole } from './26.08-topographic.table.ts';

/** Two printed decimals of factors that the source rounded once. */
const PRINTED = 0.006;
const editions = [unchangedClausesOf716, unchangedClausesOf722];

for (const { steepnessMultiplier, distanceMultiplier, heightMultiplier, topographicFactor } of editions)
  describe(`topographic factor, ${topographicFactor.about.cites}`, () => {
    test.each(steepness)('K1 of $feature in exposure $exposure at H/Lh $steepness is $K1', (row) => {
      const [H, Lh] = [foot(row.steepness * 400), foot(400)];
      const K1 = steepnessMultiplier({ feature: row.feature, exposure: row.exposure, H, Lh });
      expect(Math.abs(Number(K1) - row.K1)).toBeLessThanOrEqual(PRINTED);
    });
    test.each(distance)('K2 with mu $mu at x/Lh $xOverLh is $K2', (row) => {
      const [feature, side] =
        row.mu === 4 ? (['escarpment', 'downwind'] as const) : (['ridge', 'upwind'] as const);
      const K2 = distanceMultiplier({
        feature,
        side,
        H: foot(100),
        Lh: foot(400),
        x: foot(row.xOverLh * 400),
      });
      expect(Math.abs(Number(K2) - row.K2)).toBeLessThanOrEqual(PRINTED);
    });
    test.each(height)('K3 of $feature at z/Lh $zOverLh is $K3', (row) => {
      const K3 = heightMultiplier({
        feature: row.feature,
        H: foot(100),
        Lh: foot(400),
        z: foot(row.zOverLh * 400),
      });
      expect(Math.abs(Number(K3) - row.K3)).toBeLessThanOrEqual(PRINTED);
    });
    test.each(whole)('Kzt of $feature, exposure $exposure, H $H ft, Lh $Lh ft, x $x ft is $Kzt', (row) => {
      const { feature, exposure, side } = row;
      const measures = { H: foot(row.H), Lh: foot(row.Lh), x: foot(row.x), z: foot(row.z) };
      expect(topographicFactor({ feature, exposure, side, ...measures })).toBeCloseTo(row.Kzt, 3);
      expect(steepnessMultiplier({ feature, exposure, ...measures })).toBeCloseTo(row.K1, 3);
      expect(distanceMultiplier({ feature, side, ...measures })).toBeCloseTo(row.K2, 3);
      expect(heightMultiplier({ feature, ...measures })).toBeCloseTo(row.K3, 3);
    });
    test('every table has rows', () => {
      expect([steepness, distance, height, whole].every((table) => table.length >= 5)).toBe(true);
    });

    const place = { feature: 'hill', exposure: 'C', side: 'upwind', x: foot(0), z: foot(20) } as const;
    test('a hill below 15 ft in exposure C has no effect', () => {
      expect(topographicFactor({ ...place, H: foot(14.9), Lh: foot(50) })).toBe(1);
      expect(topographicFactor({ ...place, H: foot(15), Lh: foot(50) })).toBeGreaterThan(1);
    });
    test('a slope gentler than H/Lh 0.2 has no effect', () => {
      expect(topographicFactor({ ...place, H: foot(19.9), Lh: foot(100) })).toBe(1);
      expect(topographicFactor({ ...place, H: foot(20), Lh: foot(100) })).toBeGreaterThan(1);
    });
    test('a negative distance from the crest is refused', () => {
      const outcome = topographicFactor({ ...place, x: foot(-1), H: foot(50), Lh: foot(100) });
      expect(isRefusal(outcome) && outcome.input).toBe('x');
    });
  });
