/** Quantities in a JSON document: text with a unit outside, a number of one fixed unit inside. */
import * as z from 'zod';
import type { Quantity } from './quantity.ts';
import { isReadFault, readQuantity } from './read-quantity.ts';
import type { Unit } from './unit.ts';

export interface Bounds {
  readonly above?: number;
  readonly min?: number;
  readonly max?: number;
}

/** Text such as "1 1/2 in" read to the unit named, inside the bounds (in that unit). */
export function quantityText<const U extends Unit>(unit: U, bounds: Bounds = {}) {
  return z
    .string()
    .max(60, { error: 'longer than any quantity' })
    .transform((text, context): Quantity<U> => {
      const read = readQuantity(text, unit);
      if (isReadFault(read)) {
        context.addIssue({ code: 'custom', message: `${read.fault}; ${read.mend}` });
        return z.NEVER;
      }
      const fault = boundsFault(read, unit, bounds);
      if (!fault) return read;
      context.addIssue({ code: 'custom', message: `"${text}" is out of range: ${fault}` });
      return z.NEVER;
    });
}

function boundsFault(value: number, unit: Unit, { above, min, max }: Bounds): string | undefined {
  if (above !== undefined && !(value > above)) return `it must be above ${above} ${unit}`;
  if (min !== undefined && value < min) return `it must be at least ${min} ${unit}`;
  if (max !== undefined && value > max) return `it must be at most ${max} ${unit}`;
  return undefined;
}

/** A length above nothing, in inches. */
export const lengthText = (max = 240_000) => quantityText('in', { above: 0, max });
/** A distance that may be nothing, in inches. */
export const offsetText = (max = 24_000) => quantityText('in', { min: 0, max });
