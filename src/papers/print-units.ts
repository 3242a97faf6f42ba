/** Numbers as they are printed: rounded, in the units the job asks for. Nothing here goes back into a calculation. */
import { convert, quantity } from '../quantities/quantity.ts';
import type { Unit } from '../quantities/unit.ts';

export type System = 'US' | 'SI';

/** A kind of number: the unit it is kept in, and the unit and decimals it is printed with in each system. */
interface Kind {
  readonly kept: Unit;
  readonly US: readonly [Unit, number];
  readonly SI: readonly [Unit, number];
}

const kinds = {
  /** Along a row. */
  spacing: { kept: 'in', US: ['in', 2], SI: ['mm', 0] },
  thickness: { kept: 'in', US: ['in', 4], SI: ['mm', 2] },
  size: { kept: 'in', US: ['in', 3], SI: ['mm', 1] },
  run: { kept: 'ft', US: ['ft', 1], SI: ['m', 2] },
  area: { kept: 'ft²', US: ['ft²', 0], SI: ['m²', 1] },
  smallArea: { kept: 'ft²', US: ['ft²', 2], SI: ['m²', 3] },
  force: { kept: 'lbf', US: ['lbf', 0], SI: ['N', 0] },
  pressure: { kept: 'psf', US: ['psf', 1], SI: ['kPa', 2] },
  stress: { kept: 'psi', US: ['psi', 0], SI: ['MPa', 0] },
  torque: { kept: 'lbf·in', US: ['lbf·in', 0], SI: ['N·m', 1] },
  speed: { kept: 'mph', US: ['mph', 0], SI: ['m/s', 1] },
} as const satisfies Record<string, Kind>;
export type PrintKind = keyof typeof kinds;

export interface Printer {
  readonly system: System;
  readonly unit: (kind: PrintKind) => string;
  /** The number alone, for a column that names its unit once. */
  readonly number: (kind: PrintKind, value: number) => string;
  readonly text: (kind: PrintKind, value: number) => string;
  /** Like text, with figures after the decimal point that say nothing left out. */
  readonly short: (kind: PrintKind, value: number) => string;
  readonly weight: (value_lbf: number) => string;
}

/** Mass of a pound by definition. Weights are ordered and carried as masses in SI. */
const KG_PER_LB = 0.45359237;

/** Groups of three, with a thin gap that no reader takes for a decimal sign. */
export function grouped(value: number, decimals = 0): string {
  const [whole = '', part] = Math.abs(value).toFixed(decimals).split('.');
  const spaced = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, ' ') : whole;
  const sign = value < 0 && Number(value.toFixed(decimals)) !== 0 ? '−' : '';
  return `${sign}${spaced}${part === undefined ? '' : `.${part}`}`;
}

export const trimmed = (text: string): string =>
  text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;

export function printer(system: System): Printer {
  const inUnit = (kind: PrintKind, value: number): number => {
    const { kept, [system]: printed } = kinds[kind] as Kind;
    return convert(quantity(value, kept), kept, printed[0]);
  };
  const unit = (kind: PrintKind): string => kinds[kind][system][0];
  const number = (kind: PrintKind, value: number): string =>
    grouped(inUnit(kind, value), kinds[kind][system][1]);
  return {
    system,
    unit,
    number,
    text: (kind, value) => `${number(kind, value)} ${unit(kind)}`,
    short: (kind, value) => `${trimmed(number(kind, value))} ${unit(kind)}`,
    weight: (value) => (system === 'US' ? `${grouped(value, 1)} lb` : `${grouped(value * KG_PER_LB, 1)} kg`),
  };
}

/**
 * A length a crew can read off a tape, never longer than it is: down to the eighth of an inch, or to the millimetre.
 */
export function tapeLength(value_in: number, system: System): string {
  if (system === 'SI') return `${Math.floor(value_in * 25.4 + 1e-6)} mm`;
  const eighths = Math.floor(value_in * 8 + 1e-6);
  return `${withFraction(Math.floor(eighths / 8), eighths % 8)} in`;
}

const fractions = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'] as const;

function withFraction(whole: number, eighths: number): string {
  const part = fractions[eighths] ?? '';
  if (part === '') return String(whole);
  return whole === 0 ? part : `${whole} ${part}`;
}

/** Feet and inches as on a drawing, to the nearest inch; metres in SI. */
export function planLength(value_in: number, system: System): string {
  if (system === 'SI') return `${((value_in * 25.4) / 1000).toFixed(2)} m`;
  const inches = Math.round(value_in);
  return `${Math.floor(inches / 12)}'-${inches % 12}"`;
}
