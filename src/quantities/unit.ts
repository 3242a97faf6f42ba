/**
 * The units the engine knows. One factor per unit, to newton, metre and second; every factor is exact by
 * definition (international yard and pound, standard gravity), so a conversion and its return differ only
 * in the last bit of a double.
 */

/** Exponents of force, length and time. */
export interface Dimension {
  readonly force: number;
  readonly length: number;
  readonly time: number;
}

const dim = (force: number, length: number, time = 0): Dimension => ({ force, length, time });

const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 4.4482216152605;

export const units = {
  '1': { factor: 1, dimension: dim(0, 0) },
  '%': { factor: 0.01, dimension: dim(0, 0) },
  deg: { factor: 1, dimension: dim(0, 0) },
  in: { factor: INCH, dimension: dim(0, 1) },
  ft: { factor: FOOT, dimension: dim(0, 1) },
  mm: { factor: 0.001, dimension: dim(0, 1) },
  m: { factor: 1, dimension: dim(0, 1) },
  mi: { factor: 1609.344, dimension: dim(0, 1) },
  km: { factor: 1000, dimension: dim(0, 1) },
  'in²': { factor: INCH ** 2, dimension: dim(0, 2) },
  'in²/in': { factor: INCH, dimension: dim(0, 1) },
  'ft²': { factor: FOOT ** 2, dimension: dim(0, 2) },
  'mm²': { factor: 1e-6, dimension: dim(0, 2) },
  'm²': { factor: 1, dimension: dim(0, 2) },
  '1/in': { factor: 1 / INCH, dimension: dim(0, -1) },
  lbf: { factor: POUND, dimension: dim(1, 0) },
  N: { factor: 1, dimension: dim(1, 0) },
  kN: { factor: 1000, dimension: dim(1, 0) },
  'lbf/in': { factor: POUND / INCH, dimension: dim(1, -1) },
  'lbf/ft': { factor: POUND / FOOT, dimension: dim(1, -1) },
  'N/mm': { factor: 1000, dimension: dim(1, -1) },
  'lbf·in': { factor: POUND * INCH, dimension: dim(1, 1) },
  'N·m': { factor: 1, dimension: dim(1, 1) },
  'N·mm': { factor: 0.001, dimension: dim(1, 1) },
  psi: { factor: POUND / INCH ** 2, dimension: dim(1, -2) },
  ksi: { factor: (1000 * POUND) / INCH ** 2, dimension: dim(1, -2) },
  psf: { factor: POUND / FOOT ** 2, dimension: dim(1, -2) },
  Pa: { factor: 1, dimension: dim(1, -2) },
  kPa: { factor: 1000, dimension: dim(1, -2) },
  MPa: { factor: 1e6, dimension: dim(1, -2) },
  mph: { factor: 0.44704, dimension: dim(0, 1, -1) },
  'm/s': { factor: 1, dimension: dim(0, 1, -1) },
  'kg/m³': { factor: 1, dimension: dim(1, -4, 2) },
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
