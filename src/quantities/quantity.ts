/**
 * Numbers that know their unit, at no cost at run time: a quantity is a plain number with a brand.
 * A stress passed where a length belongs, or a bare number, does not compile.
 */
import { sameDimension, type Unit, units } from './unit.ts';

declare const unitOf: unique symbol;

/** A number in the unit U. */
export type Quantity<U extends Unit> = number & { readonly [unitOf]: U };

export type Ratio = Quantity<'1'>;
export type Inch = Quantity<'in'>;
export type Foot = Quantity<'ft'>;
export type SqFt = Quantity<'ft²'>;
export type SqIn = Quantity<'in²'>;
export type Lbf = Quantity<'lbf'>;
export type LbfPerInch = Quantity<'lbf/in'>;
export type LbfInch = Quantity<'lbf·in'>;
export type Psi = Quantity<'psi'>;
export type Psf = Quantity<'psf'>;
export type Mph = Quantity<'mph'>;
export type Degree = Quantity<'deg'>;
export type PerInch = Quantity<'1/in'>;
export type Millimetre = Quantity<'mm'>;
export type Newton = Quantity<'N'>;
export type Megapascal = Quantity<'MPa'>;

/** Marks a number as being in the unit named; converts nothing. */
export function quantity<U extends Unit>(value: number, _unit: U): Quantity<U> {
  return value as Quantity<U>;
}

const marker =
  <U extends Unit>() =>
  (value: number): Quantity<U> =>
    value as Quantity<U>;

export const ratio = marker<'1'>();
export const inch = marker<'in'>();
export const foot = marker<'ft'>();
export const sqft = marker<'ft²'>();
export const sqin = marker<'in²'>();
export const lbf = marker<'lbf'>();
export const lbfPerInch = marker<'lbf/in'>();
export const lbfInch = marker<'lbf·in'>();
export const psi = marker<'psi'>();
export const psf = marker<'psf'>();
export const mph = marker<'mph'>();
export const degree = marker<'deg'>();
export const perInch = marker<'1/in'>();
export const millimetre = marker<'mm'>();
export const newton = marker<'N'>();
export const megapascal = marker<'MPa'>();

/**
 * The same physical quantity in another unit.
 * @throws when the units measure different things: a fault of our own code, never of a user's input.
 * @example convert(inch(12), 'in', 'ft') // 1
 */
export function convert<F extends Unit, T extends Unit>(value: Quantity<F>, from: F, to: T): Quantity<T> {
  if ((from as Unit) === (to as Unit)) return value as unknown as Quantity<T>;
  if (!sameDimension(from, to)) throw new Error(`cannot convert ${from} to ${to}`);
  return ((value * units[from].factor) / units[to].factor) as Quantity<T>;
}
