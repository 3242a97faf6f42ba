/**
 * The units the engine knows. Every factor is exact by definition (international yard and pound, standard
 * gravity), so a conversion and its return differ only in the last bit of a double.
 */

/** Exponents of force, length and time. */
export interface Dimension {
  readonly force: number;
  readonly length: number;
  readonly time: number;
}

const dim = (force: number, length: number, time = 0): Dimension => ({ force, length, time });

// Whole numbers of 0.1 mm and of 1e-13 N: then 40 ft is 480 in to the last bit, which 0.3048 / 0.0254 is not.
const INCH = 254;
const FOOT = 3048;
const METRE = 10_000;
const MILLIMETRE = 10;
const POUND = 44_482_216_152_605;
const NEWTON = 1e13;

export const units = {
  '1': { factor: 1, dimension: dim(0, 0) },
  '%': { factor: 0.01, dimension: dim(0, 0) },
  deg: { factor: 1, dimension: dim(0, 0) },
  in: { factor: INCH, dimension: dim(0, 1) },
  ft: { factor: FOOT, dimension: dim(0, 1) },
  mm: { factor: MILLIMETRE, dimension: dim(0, 1) },
  m: { factor: METRE, dimension: dim(0, 1) },
  mi: { factor: 5280 * FOOT, dimension: dim(0, 1) },
  km: { factor: 1000 * METRE, dimension: dim(0, 1) },
  'in²': { factor: INCH ** 2, dimension: dim(0, 2) },
  'in²/in': { factor: INCH, dimension: dim(0, 1) },
  'ft²': { factor: FOOT ** 2, dimension: dim(0, 2) },
  'mm²': { factor: MILLIMETRE ** 2, dimension: dim(0, 2) },
  'm²': { factor: METRE ** 2, dimension: dim(0, 2) },
  '1/in': { factor: 1 / INCH, dimension: dim(0, -1) },
  lbf: { factor: POUND, dimension: dim(1, 0) },
  N: { factor: NEWTON, dimension: dim(1, 0) },
  kN: { factor: 1000 * NEWTON, dimension: dim(1, 0) },
  'lbf/in': { factor: POUND / INCH, dimension: dim(1, -1) },
  'lbf/ft': { factor: POUND / FOOT, dimension: dim(1, -1) },
  'N/mm': { factor: NEWTON / MILLIMETRE, dimension: dim(1, -1) },
  lbf·in: { factor: POUND * INCH, dimension: dim(1, 1) },
  N·m: { factor: NEWTON * METRE, dimension: dim(1, 1) },
  N·mm: { factor: NEWTON * MILLIMETRE, dimension: dim(1, 1) },
  psi: { factor: POUND / INCH ** 2, dimension: dim(1, -2) },
  ksi: { factor: (1000 * POUND) / INCH ** 2, dimension: dim(1, -2) },
  psf: { factor: POUND / FOOT ** 2, dimension: dim(1, -2) },
  Pa: { factor: NEWTON / METRE ** 2, dimension: dim(1, -2) },
  kPa: { factor: (1000 * NEWTON) / METRE ** 2, dimension: dim(1, -2) },
  MPa: { factor: NEWTON / MILLIMETRE ** 2, dimension: dim(1, -2) },
  mph: { factor: 0.44704 * METRE, dimension: dim(0, 1, -1) },
  'm/s': { factor: METRE, dimension: dim(0, 1, -1) },
  'kg/m³': { factor: NEWTON / METRE ** 4, dimension: dim(1, -4, 2) },
} as const satisfies Record<string, { readonly factor: number; readonly dimension: Dimension }>;

export type Unit = keyof typeof units;

/** True when two units measure the same kind of thing. */
export function sameDimension(a: Unit, b: Unit): boolean {
  const [p, q] = [units[a].dimension, units[b].dimension];
  return p.force === q.force && p.length === q.length && p.time === q.time;
}

export function isUnit(text: string): text is Unit {
  return Object.hasOwn(units, text);
}
