import { describe, expect, test } from 'vitest';
import { findCategory, panelGravityOf, performanceCategories, spanRatings } from './wood-panels.ts';
import { findSpecies, specificGravityOf, woodSpecies } from './wood-species.ts';

describe('specific gravity of lumber, NDS Table 12.3.3A (published, two copies)', () => {
  test.each([
    ['Douglas Fir-Larch', 0.5],
    ['Douglas Fir-Larch (North)', 0.49],
    ['Douglas Fir-South', 0.46],
    ['Hem-Fir', 0.43],
    ['Hem-Fir (North)', 0.46],
    ['Spruce-Pine-Fir', 0.42],
    ['Spruce-Pine-Fir (South)', 0.36],
    ['Southern Pine', 0.55],
    ['Mixed Southern Pine', 0.51],
    ['Western Cedars', 0.36],
    ['Redwood', 0.37],
    ['Western Woods', 0.36],
    ['Eastern White Pine', 0.36],
    ['Red Oak', 0.67],
    ['White Oak', 0.73],
    ['Red Pine', 0.44],
    ['Northern Species', 0.35],
    ['Northern White Cedar', 0.31],
  ])('%s: %d', (species, G) => expect(specificGravityOf(species)).toBe(G));

  test.each([
    ['SYP', 0.55],
    ['sp', 0.55],
    ['SPF', 0.42],
    ['S-P-F', 0.42],
    ['spf (south)', 0.36],
    ['SPF-S', 0.36],
    ['DF-L', 0.5],
    ['df-l (n)', 0.49],
    ['HEM-FIR', 0.43],
    ['HF', 0.43],
  ])('short form %s: %d', (name, G) => expect(specificGravityOf(name)).toBe(G));

  test('an unknown wood has no gravity: there is no default', () => {
    expect(['', ' ', 'pine', 'fir', 'lumber', 'whitewood'].map(specificGravityOf)).toEqual(
      Array(6).fill(undefined),
    );
  });

  test('each name and short form leads to its own row, and every gravity lies in the withdrawal tables', () => {
    expect(woodSpecies.length).toBe(47);
    for (const row of woodSpecies) {
      for (const name of [row.species, ...row.short]) expect(findSpecies(name), name).toBe(row);
      expect(row.G >= 0.31 && row.G <= 0.73, row.species).toBe(true);
    }
  });
});

// Half of the third printed digit, and the last bit of a double: 0.4375 is printed 0.438.
const HALF_DIGIT = 0.0005 + 1e-12;

describe('panels', () => {
  test('15/32 is 0.469 in and at least 0.438 in (least thickness from memory)', () => {
    expect(findCategory('15/32 in')).toMatchObject({
      thickness_in: 0.469,
      leastThickness_in: 0.438,
      origin: { least: 'memory' },
    });
    expect(findCategory('5/16')).toBeUndefined();
  });

  test('each category is its fraction, and its least thickness 1/32 in less, to the printed third digit', () => {
    for (const { category, thickness_in, leastThickness_in } of performanceCategories) {
      const [top = 0, bottom = 1] = category.split('/').map(Number);
      expect(Math.abs(top / bottom - thickness_in), category).toBeLessThanOrEqual(HALF_DIGIT);
      expect(Math.abs(top / bottom - 1 / 32 - leastThickness_in), category).toBeLessThanOrEqual(HALF_DIGIT);
    }
  });

  test('gravity for bearing and pull-through by panel; OSB is recalled', () => {
    expect(panelGravityOf('plywood Structural I or Marine')).toBe(0.5);
    expect(panelGravityOf('plywood, other or unknown')).toBe(0.42);
    expect(panelGravityOf('OSB')).toBe(0.5);
  });

  test('every span rating names a category of the table', () => {
    expect(spanRatings.length).toBe(4);
    for (const { category } of spanRatings) expect(findCategory(category), category).toBeDefined();
  });
});
