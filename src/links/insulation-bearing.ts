/** Rigid insulation under a clip carries snow through the bearing plate. Uplift does not load it. */

import type { LinkContext } from './link-context.ts';
import type { Capacity } from './verdict.ts';

/**
 * Part of the compressive strength (at 10 % strain) that sustained load may use: common practice, since foam creeps.
 * The load is snow on the tributary area of a clip; it is compared as the area a plate can carry.
 */
export const SUSTAINED_SHARE = 1 / 3;

/** Snow pressure a plate can pass into the insulation, for a given tributary area. */
export function insulationSnow_psf(
  context: LinkContext,
  place_ft2: number,
): { readonly value: number | undefined; readonly because?: string } {
  const strength = context.insulation?.compressiveStrength;
  if (!strength || strength.standing === 'asked')
    return { value: undefined, because: 'the compressive strength of the insulation is not known' };
  const plate = context.parts.plate;
  if (!plate)
    return {
      value: undefined,
      because: 'no bearing plate is named under the clip; the clip base alone would sink in',
    };
  return { value: (strength.value * SUSTAINED_SHARE * plate.size.length * plate.size.width) / place_ft2 };
}

export function insulationCapacity(context: LinkContext, place_ft2: number): Capacity | undefined {
  if (!context.insulation) return undefined;
  const base = {
    link: 'insulation',
    of: 'snow',
    unit: 'psf',
    evidence: 'common practice',
    cites: 'a third of the compressive strength for lasting load',
    remarks: [],
  } as const;
  const { value, because } = insulationSnow_psf(context, place_ft2);
  return because === undefined ? { ...base, value } : { ...base, value, because };
}
