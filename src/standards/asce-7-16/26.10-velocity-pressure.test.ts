import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foot, mph, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { kzLaw, kzTable } from './26.10-kz.table.ts';
import { velocityPressureOf716 } from './26.10-velocity-pressure.ts';
import { heightAdjustment } from './height-adjustment.table.ts';

const { kz, fromFactors, atRoof } = velocityPressureOf716;

describe('Kz, ASCE/SEI 7-16', () => {
  test.each(kzTable)('table, exposure %s at %f ft: %f (%s)', (exposure, z, Kz) => {
    expect(kz.byTable({ exposure, z: foot(z) })).toBe(Kz);
  });
  // Computed values are given to four decimals.
  test.each(kzLaw)('power law, exposure %s at %f ft: %f (%s)', (exposure, z, Kz) => {
    expect(Math.abs(Number(kz.byPowerLaw({ exposure, z: foot(z) })) - Kz)).toBeLessThanOrEqual(0.0005);
  });
  test('both tables have rows', () => {
    expect([kzTable.length, kzLaw.length]).toEqual([63, 4]);
  });
  test('table and law differ by no more than 0.01 at the rows', () => {
    const gaps = kzTable.map(([exposure, z, Kz]) =>
      Math.abs(Number(kz.byPowerLaw({ exposure, z: foot(z) })) - Kz),
    );
    expect(Math.max(...gaps)).toBeLessThanOrEqual(0.01);
  });
  test('below 15 ft the 15 ft row holds: no floor of 0.70 in exposure B for components', () => {
    expect(kz.byTable({ exposure: 'B', z: foot(12.1) })).toBe(0.57);
  });
  test('between rows the table is read on a straight line', () => {
    expect(kz.byTable({ exposure: 'C', z: foot(22) })).toBeCloseTo(0.916, 9);
  });
  test('the table ends at 500 ft', () => {
    const outcome = kz.byTable({ exposure: 'C', z: foot(500.1) });
    expect(isRefusal(outcome) && [outcome.code, outcome.input]).toEqual(['outside-limits', 'z']);
  });
  test('neither table nor law falls with height', () => {
    const exposure = fc.constantFrom('B', 'C', 'D' as const);
    const z = fc.double({ min: 0, max: 500, noNaN: true });
    fc.assert(
      fc.property(exposure, z, z, (category, one, other) => {
        const [low, high] = [foot(Math.min(one, other)), foot(Math.max(one, other))];
        for (const by of [kz.byTable, kz.byPowerLaw])
          expect(Number(by({ exposure: category, z: high }))).toBeGreaterThanOrEqual(
            Number(by({ exposure: category, z: low })) - 1e-12,
          );
      }),
    );
  });
});

describe('the height adjustment of the tables for 30 ft in exposure B', () => {
  // Those editions took no Kz below that at 30 ft in exposure B; there the adjustment is 1 by definition.
  const rows = heightAdjustment.filter(([exposure, h]) => exposure !== 'B' || h > 30);
  test.each(rows)('exposure %s at %f ft: %f (published)', (exposure, h, lambda) => {
    const at30 = Number(kz.byPowerLaw({ exposure: 'B', z: foot(30) }));
    expect(Math.abs(Number(kz.byPowerLaw({ exposure, z: foot(h) })) / at30 - lambda)).toBeLessThanOrEqual(
      0.006,
    );
  });
  test('has rows', () => {
    expect(rows.length).toBeGreaterThanOrEqual(20);
  });
});

describe('the house of the guide to the 7-16 wind provisions, exposure B, 12.1 ft, 105 mph', () => {
  test('Kz is 0.57 (published) and q 13.67 psf (computed, two decimals)', () => {
    const Kz = kz.byTable({ exposure: 'B', z: foot(12.1) });
    expect(Kz).toBe(0.57);
    expect(fromFactors({ V: mph(105), Kz: ratio(0.57), Kzt: ratio(1), Ke: ratio(1) })).toBeCloseTo(13.67, 1);
  });
});

describe('velocity pressure at mean roof height, ASCE/SEI 7-16', () => {
  const site = { V: mph(120), exposure: 'C', h: foot(30), kzBy: 'table' } as const;
  test('without topography and elevation both factors are 1', () => {
    expect(atRoof(site)).toBe(fromFactors({ V: mph(120), Kz: ratio(0.98), Kzt: ratio(1), Ke: ratio(1) }));
  });
  test('topography and elevation multiply', () => {
    const qh = Number(atRoof({ ...site, Kzt: ratio(1.5), groundElevation: foot(6000) }));
    expect(qh / Number(atRoof(site))).toBeCloseTo(1.5 * Math.exp(-0.0000362 * 6000), 9);
  });
  test('a topographic factor below 1 is refused', () => {
    const outcome = atRoof({ ...site, Kzt: ratio(0.9) });
    expect(isRefusal(outcome) && outcome.input).toBe('Kzt');
  });
  test('a height the table does not cover is refused, by the law it is not', () => {
    expect(isRefusal(atRoof({ ...site, h: foot(600) }))).toBe(true);
    expect(Number(atRoof({ ...site, h: foot(600), kzBy: 'power law' }))).toBeGreaterThan(0);
  });
});
