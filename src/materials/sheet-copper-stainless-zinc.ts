/**
 * Copper, stainless and zinc sheet by the names a job uses. Thickness and least strengths only: AISI S100 covers carbon
 * steel, so its screw equations do not hold for these sheets; joints in them need tests. Nearly all recalled.
 */
import { convert, type Inch, inch, megapascal, millimetre, type Psi, psi } from '../quantities/quantity.ts';
import type { Origin } from './sheet-steel.ts';

export type OtherMetal = 'copper' | 'stainless' | 'zinc';

export interface SheetThickness {
  readonly metal: OtherMetal;
  /** As ordered: "16 oz", "24 ga", "0.7 mm". */
  readonly name: string;
  readonly thickness: Inch;
  readonly source: string;
  readonly origin: Origin;
}

export interface SheetStrength {
  readonly metal: OtherMetal;
  readonly name: string;
  /** Least yield or 0.2 % proof strength. */
  readonly Fy: Psi;
  /** Least tensile strength. */
  readonly Fu: Psi;
  readonly source: string;
  readonly origin: Origin;
}

/** Ounces per square foot and inches: weight over 8.94 g/cm³. */
const copper: readonly (readonly [string, number])[] = [
  ['16 oz', 0.0216],
  ['20 oz', 0.027],
  ['24 oz', 0.0323],
  ['32 oz', 0.0431],
];
/** 22 gauge was seen in a public gauge page, the rest is recalled. */
const stainless: readonly (readonly [string, number, Origin])[] = [
  ['22 ga', 0.0313, 'published'],
  ['24 ga', 0.025, 'memory'],
  ['26 ga', 0.0188, 'memory'],
  ['28 ga', 0.0156, 'memory'],
];
const zinc: readonly (readonly [string, number])[] = [
  ['0.7 mm', 0.7],
  ['0.8 mm', 0.8],
  ['1.0 mm', 1],
];

export const sheetThicknesses: readonly SheetThickness[] = [
  ...copper.map(([name, t]) => ({
    metal: 'copper' as const,
    name,
    thickness: inch(t),
    source: 'ASTM B370, weight to thickness',
    origin: 'memory' as const,
  })),
  ...stainless.map(([name, t, origin]) => ({
    metal: 'stainless' as const,
    name,
    thickness: inch(t),
    source: 'US Standard gauge',
    origin,
  })),
  ...zinc.map(([name, t]) => ({
    metal: 'zinc' as const,
    name,
    thickness: convert(millimetre(t), 'mm', 'in'),
    source: 'EN 988, usual roofing thickness',
    origin: 'memory' as const,
  })),
];

const annealed = {
  Fy: psi(30_000),
  Fu: psi(75_000),
  source: 'ASTM A240, annealed',
  origin: 'memory',
} as const;
const stress = (value: number): Psi => convert(megapascal(value), 'MPa', 'psi');

export const sheetStrengths: readonly SheetStrength[] = [
  // Cold-rolled roofing copper; the recalled band of tensile strength is 32 to 36 ksi, the low end counts.
  { metal: 'copper', name: 'H00', Fy: psi(20_000), Fu: psi(32_000), source: 'ASTM B370', origin: 'memory' },
  { metal: 'stainless', name: '304', ...annealed },
  { metal: 'stainless', name: '316', ...annealed },
  {
    metal: 'zinc',
    name: 'titanium zinc',
    Fy: stress(100),
    Fu: stress(150),
    source: 'EN 988',
    origin: 'memory',
  },
];

const key = (name: string): string =>
  name
    .toLowerCase()
    .replace(/gauge|gage|ga\./g, 'ga')
    .replace(/ounces?|oz\./g, 'oz')
    .replace(/\s+/g, '');

/**
 * Thickness of a sheet by its metal and name, or nothing.
 * @example sheetThickness('copper', '16 oz')?.thickness // 0.0216
 */
export function sheetThickness(metal: OtherMetal, name: string): SheetThickness | undefined {
  return sheetThicknesses.find((row) => row.metal === metal && key(row.name) === key(name));
}

/** Least strengths of a sheet by its metal and temper or grade, or nothing. */
export function sheetStrength(metal: OtherMetal, name: string): SheetStrength | undefined {
  return sheetStrengths.find((row) => row.metal === metal && key(row.name) === key(name));
}
