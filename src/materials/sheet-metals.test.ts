import { describe, expect, test } from 'vitest';
import { effectiveTensileStrength } from '../standards/aisi-s100-16/a3.1-sheet-strength.ts';
import { aluminiumAlloy, aluminiumAlloys, aluminiumRoofThicknesses } from './sheet-aluminium.ts';
import {
  sheetStrength,
  sheetStrengths,
  sheetThickness,
  sheetThicknesses,
} from './sheet-copper-stainless-zinc.ts';
import { steelGrade, steelGrades, steelThickness, steelThicknesses } from './sheet-steel.ts';

describe('steel thickness', () => {
  // Manufacturers' Standard Gauge: weight of the sheet in pounds per square foot (published for the usual
  // gauges, the rest by the sixteenths of a pound the gauge is built on). Thickness = weight / 41.82, to 0.0001 in.
  const weights: readonly (readonly [number, number])[] = [
    [10, 5.625],
    [12, 4.375],
    [13, 3.75],
    [14, 3.125],
    [15, 2.8125],
    [16, 2.5],
    [17, 2.25],
    [18, 2],
    [19, 1.75],
    [20, 1.5],
    [21, 1.375],
    [22, 1.25],
    [23, 1.125],
    [24, 1],
    [25, 0.875],
    [26, 0.75],
    [27, 0.6875],
    [28, 0.625],
    [29, 0.5625],
    [30, 0.5],
  ];
  for (const [gauge, weight] of weights)
    test(`${gauge} ga is the base metal of ${weight} lb/ft²`, () => {
      const row = steelThickness(`${gauge} ga`);
      expect(Math.abs((row?.designThickness ?? 0) - weight / 41.82)).toBeLessThanOrEqual(0.0001);
    });
  test('coating makes a galvanized gauge 0.0037 to 0.0038 in thicker than its base metal', () => {
    const coated = steelThicknesses.filter((row) => row.coatedThickness !== undefined);
    expect(coated.length).toBe(11);
    for (const row of coated) {
      const more = (row.coatedThickness ?? 0) - row.designThickness;
      expect(more).toBeGreaterThan(0.00365);
      expect(more).toBeLessThan(0.00385);
    }
  });
  // Framing, AISI S240 / ASTM A1003: least and design thickness in inches (published but for 27 mil).
  for (const [mil, least, design] of [
    [18, 0.0179, 0.0188],
    [27, 0.0269, 0.0283],
    [30, 0.0296, 0.0312],
    [33, 0.0329, 0.0346],
    [43, 0.0428, 0.0451],
    [54, 0.0538, 0.0566],
    [68, 0.0677, 0.0713],
    [97, 0.0966, 0.1017],
    [118, 0.118, 0.1242],
  ] as const)
    test(`${mil} mil: ${least} delivered at least, ${design} in design`, () => {
      const row = steelThickness(`${mil} mil`);
      expect([row?.minimumThickness, row?.designThickness]).toEqual([least, design]);
      expect(Math.abs(least / 0.95 - design)).toBeLessThanOrEqual(0.0001);
    });
  test('the delivered minimum is 95 % of design, rounded to a tenth of a mil', () => {
    for (const row of steelThicknesses)
      expect(Math.abs(row.minimumThickness - 0.95 * row.designThickness)).toBeLessThanOrEqual(0.00011);
  });
  test('names are read as they are written on orders; unknown ones give nothing', () => {
    for (const name of ['24 ga', '24ga', '24 gauge', '24 GAGE', ' 24-ga. '])
      expect(steelThickness(name)?.designThickness).toBe(0.0239);
    expect(steelThickness('54 mils')?.designThickness).toBe(0.0566);
    for (const name of ['24', '11 ga', '54 ga', '24 mil', '0.024 in', '', 'ga', '24 oz'])
      expect(steelThickness(name)).toBeUndefined();
  });
});

describe('steel grades', () => {
  // ASTM A653, A792, A1008 structural grades, ksi.
  for (const [name, Fy, Fu, origin] of [
    ['SS33', 33, 45, 'published'],
    ['SS37', 37, 52, 'memory'],
    ['SS40', 40, 55, 'memory'],
    ['SS50', 50, 65, 'published'],
    ['SS50 class 3', 50, 70, 'memory'],
    ['SS50 class 4', 50, 60, 'memory'],
    ['SS80', 80, 82, 'published'],
  ] as const)
    test(`${name}: ${Fy}/${Fu} ksi (${origin})`, () => {
      const grade = steelGrade(name);
      expect([grade?.Fy, grade?.Fu, grade?.origin]).toEqual([Fy * 1000, Fu * 1000, origin]);
    });
  test('every grade belongs to the class it is put in', () => {
    expect(steelGrades.length).toBe(10);
    for (const { ductility, Fy, Fu, elongation } of steelGrades) {
      const given = elongation === undefined ? {} : { elongation: elongation as never };
      expect(typeof effectiveTensileStrength({ ductility, Fy, Fu, ...given })).toBe('number');
    }
  });
  test('names are read as they are written; unknown ones give nothing', () => {
    for (const name of ['SS50', 'ss 50', 'Grade 50', 'Gr. 50', 'SS Grade 50', 'SS50 class 1', 'ss50 cl. 1'])
      expect(steelGrade(name)?.name).toBe('SS50');
    expect(steelGrade('SS Grade 50 Class 4')?.Fu).toBe(60_000);
    for (const name of ['50', 'SS51', 'SS50 class 2', 'SS33 class 3', '3105-H25', '', 'SS'])
      expect(steelGrade(name)).toBeUndefined();
  });
});

describe('aluminium', () => {
  for (const [name, Ftu, Fty, origin] of [
    ['5052-H32', 31, 23, 'published'],
    ['5052-H34', 34, 26, 'published'],
    ['5052-H36', 37, 29, 'published'],
    ['5050-H32', 22, 16, 'published'],
    ['5050-H34', 25, 20, 'published'],
    ['3003-H14', 20, 17, 'memory'],
    ['3003-H16', 24, 21, 'memory'],
    ['3004-H34', 32, 25, 'memory'],
    ['Alclad 3004-H34', 31, 24, 'memory'],
    ['3105-H25', 23, 19, 'memory'],
    ['5005-H34', 20, 15, 'memory'],
    ['6061-T6', 42, 35, 'memory'],
    ['6063-T5', 22, 16, 'memory'],
    ['6063-T6', 30, 25, 'memory'],
  ] as const)
    test(`${name}: ${Ftu}/${Fty} ksi (${origin})`, () => {
      const alloy = aluminiumAlloy(name);
      expect([alloy?.Ftu, alloy?.Fty, alloy?.origin]).toEqual([Ftu * 1000, Fty * 1000, origin]);
    });
  test('names are read with or without dash; unknown tempers give nothing', () => {
    expect(aluminiumAlloys).toHaveLength(14);
    expect(aluminiumAlloy('3105 h25')?.name).toBe('3105-H25');
    expect(aluminiumAlloy('3105')).toBeUndefined();
    expect(aluminiumRoofThicknesses).toEqual([0.032, 0.04, 0.05, 0.063]);
  });
});

describe('copper, stainless, zinc', () => {
  // Copper: weight over 8.94 g/cm³; the printed thickness is good to 0.0002 in.
  for (const [oz, t] of [
    [16, 0.0216],
    [20, 0.027],
    [24, 0.0323],
    [32, 0.0431],
  ] as const)
    test(`${oz} oz copper is ${t} in (memory, by weight)`, () => {
      expect(sheetThickness('copper', `${oz} oz`)?.thickness).toBe(t);
      const byWeight = ((oz / 16) * 453.59237) / (8.94 * 144 * 2.54 ** 3);
      expect(Math.abs(t - byWeight)).toBeLessThanOrEqual(0.0002);
    });
  for (const [gauge, t] of [
    [22, 0.0313],
    [24, 0.025],
    [26, 0.0188],
    [28, 0.0156],
  ] as const)
    test(`${gauge} ga stainless is ${t} in, not the steel gauge`, () => {
      expect(sheetThickness('stainless', `${gauge} gauge`)?.thickness).toBe(t);
      expect(t).toBeGreaterThan(steelThickness(`${gauge} ga`)?.designThickness ?? 1);
    });
  test('zinc of 0.7 mm is 0.0276 in; its strength is that of EN 988 (memory)', () => {
    expect(sheetThickness('zinc', '0.7 mm')?.thickness).toBeCloseTo(0.7 / 25.4, 12);
    expect(sheetStrength('zinc', 'titanium zinc')?.Fu).toBeCloseTo(21_756, 0);
  });
  test('an unknown metal, thickness or temper gives nothing', () => {
    expect(sheetThickness('copper', '24 ga')).toBeUndefined();
    expect(sheetThickness('stainless', '16 oz')).toBeUndefined();
    expect(sheetStrength('stainless', '430')).toBeUndefined();
    expect(sheetStrength('copper', 'H00')?.Fu).toBe(32_000);
    expect([sheetThicknesses.length, sheetStrengths.length]).toEqual([11, 4]);
  });
});
