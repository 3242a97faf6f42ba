/**
 * Aluminium sheet and extrusions: least strengths (never the typical values, which are higher: 3003-H14 typical 22/21
 * against 20/17) and the thicknesses in which roof sheet is sold.
 */
import { type Inch, inch, type Psi, psi } from '../quantities/quantity.ts';
import type { Origin } from './sheet-steel.ts';

export interface AluminiumAlloy {
  /** Alloy and temper: "3105-H25". */
  readonly name: string;
  /** Least tensile ultimate strength. */
  readonly Ftu: Psi;
  /** Least tensile yield strength. */
  readonly Fty: Psi;
  readonly source: string;
  readonly origin: Origin;
}

/** Alloy, Ftu ksi, Fty ksi, origin. */
const rows: readonly (readonly [string, number, number, Origin])[] = [
  ['3003-H14', 20, 17, 'memory'],
  ['3003-H16', 24, 21, 'memory'],
  ['3004-H34', 32, 25, 'memory'],
  ['Alclad 3004-H34', 31, 24, 'memory'],
  ['3105-H25', 23, 19, 'memory'],
  ['5005-H34', 20, 15, 'memory'],
  ['5050-H32', 22, 16, 'published'],
  ['5050-H34', 25, 20, 'published'],
  ['5052-H32', 31, 23, 'published'],
  ['5052-H34', 34, 26, 'published'],
  ['5052-H36', 37, 29, 'published'],
  ['6061-T6', 42, 35, 'memory'],
  ['6063-T5', 22, 16, 'memory'],
  ['6063-T6', 30, 25, 'memory'],
];

export const aluminiumAlloys: readonly AluminiumAlloy[] = rows.map(([name, Ftu, Fty, origin]) => ({
  name,
  Ftu: psi(Ftu * 1000),
  Fty: psi(Fty * 1000),
  source: 'Aluminum Design Manual, least properties / ASTM B209, B221',
  origin,
}));

/** Thicknesses of aluminium roof sheet; common practice. */
export const aluminiumRoofThicknesses: readonly Inch[] = [0.032, 0.04, 0.05, 0.063].map(inch);

const key = (name: string): string => name.toLowerCase().replace(/[\s-]+/g, '');
const byName = new Map(aluminiumAlloys.map((row) => [key(row.name), row]));

/**
 * Alloy by its name, or nothing; spaces, dashes and case do not matter.
 * @example aluminiumAlloy('3105 H25')?.Ftu // 23000
 */
export function aluminiumAlloy(name: string): AluminiumAlloy | undefined {
  return byName.get(key(name));
}
