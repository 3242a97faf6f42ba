/** The plies of a build-up, from head side to point side. */
import type { Metal } from '../shelf/metals.ts';

/** Sheet metal that has a strength: what the head bears on, or what the thread holds in. */
export interface SheetPly {
  readonly kind: 'sheet';
  readonly role: 'panel' | 'trim' | 'clip base' | 'plate' | 'deck' | 'purlin' | 'second sheet';
  readonly name: string;
  readonly family: 'steel' | 'aluminium' | 'copper' | 'stainless' | 'zinc';
  readonly metal: Metal;
  /** Base metal without coating; nothing while it is not known. */
  readonly thickness_in: number | undefined;
  readonly Fu_psi: number | undefined;
  readonly Fy_psi: number | undefined;
  /** Grade as named, for the strength to be used in design. */
  readonly ductility: 'normal' | 'grade 80' | 'low' | 'unknown';
  /** The screw passes a hole punched for it: nothing to drill, nothing to hold. */
  readonly punched: boolean;
}

export interface WoodPly {
  readonly kind: 'wood';
  readonly role: 'deck' | 'purlin';
  readonly name: string;
  readonly product: 'plywood' | 'OSB' | 'lumber';
  readonly thickness_in: number | undefined;
  readonly specificGravity: number | undefined;
  readonly moisture: 'dry' | 'wet';
  readonly treatment: 'none' | 'borate' | 'copper';
}

/** Plies that only take room: underlayment, insulation. */
export interface SoftPly {
  readonly kind: 'soft';
  readonly role: 'underlayment' | 'insulation';
  readonly name: string;
  readonly thickness_in: number;
  readonly compressiveStrength_psi: number | undefined;
}

export type Ply = SheetPly | WoodPly | SoftPly;

export interface BuildUp {
  /** Head side first. */
  readonly plies: readonly Ply[];
  /** Index of the ply whose grip on the thread carries the load. */
  readonly holding: number;
}

export const holdingPly = (buildUp: BuildUp): SheetPly | WoodPly =>
  buildUp.plies[buildUp.holding] as SheetPly | WoodPly;

/** What lies between the head and the holding ply, in inches; nothing while a thickness is not known. */
export function stackAbove(buildUp: BuildUp): number | undefined {
  let sum = 0;
  for (const ply of buildUp.plies.slice(0, buildUp.holding)) {
    if (ply.thickness_in === undefined) return undefined;
    sum += ply.thickness_in;
  }
  return sum;
}
