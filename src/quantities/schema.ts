/** Quantities in a JSON document: text with a unit outside, a number of one fixed unit inside. */
import * as z from 'zod';
import type { Quantity } from './quantity.ts';
import { isReadFault, quantityPattern, readQuantity, type Sign } from './read-quantity.ts';
import type { Unit } from './unit.ts';

export interface Bounds {
  readonly above?: number;
  readonly min?: number;
  readonly max?: number;
}

const LONGEST = 60;

/**
 * Text such as "1 1/2 in" read to the unit named, inside the bounds (in that unit). The pattern stands in the
 * published schema too; what it cannot say of the bounds is checked when the text is read.
 */
export function quantityText<const U extends Unit>(unit: U, bounds: Bounds = {}) {
  return z
    .string()
    .max(LONGEST, { error: `is longer than any quantity; at most ${LONGEST} characters`, abort: true })
    .regex(quantityPattern(unit, signOf(bounds), bounds.above === undefined), {
      error: (issue) =>
        faultOf(String(issue.input), unit, bounds) ?? 'write it as a plain number with its unit',
      abort: true,
    })
    .transform((text, context): Quantity<U> => {
      const message = faultOf(text, unit, bounds);
      if (message === undefined) return readQuantity(text, unit) as Quantity<U>;
      context.addIssue({ code: 'custom', message });
      return z.NEVER;
    });
}

function signOf({ above, min, max }: Bounds): Sign {
  if ((above ?? min ?? -1) >= 0) return 'positive';
  return max !== undefined && max <= 0 ? 'negative' : 'either';
}

function faultOf(text: string, unit: Unit, bounds: Bounds): string | undefined {
  const read = readQuantity(text, unit);
  if (isReadFault(read)) return `${read.fault}; ${read.mend}`;
  const fault = boundsFault(read, unit, bounds);
  return fault === undefined ? undefined : `"${text}" is out of range: ${fault}`;
}

function boundsFault(value: number, unit: Unit, { above, min, max }: Bounds): string | undefined {
  if (above !== undefined && !(value > above)) return `it must be above ${above} ${unit}`;
  if (min !== undefined && value < min) return `it must be at least ${min} ${unit}`;
  if (max !== undefined && value > max) return `it must be at most ${max} ${unit}`;
  return undefined;
}

/** A length above nothing, in inches. */
export const lengthText = (max = 240_000) => quantityText('in', { above: 0, max });
/** A length of at least so much, in inches: the least that is no slip of the pen and can be laid out. */
export const lengthFrom = (min: number, max = 240_000) => quantityText('in', { above: 0, min, max });
/** A distance that may be nothing, in inches. */
export const offsetText = (max = 24_000) => quantityText('in', { min: 0, max });
