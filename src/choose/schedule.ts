/** The schedule: connections by zones, each cell with its fastener, spacing, chain and verdict. */
import type { Connection } from '../connections/connection.ts';
import type { LinkCheck, Verdict } from '../links/verdict.ts';
import type { Clip, Rivet, Screw } from '../shelf/item.ts';
import type { Rejection } from './rejection.ts';

/** What set the spacing of a line. */
export const spacingReasons = ['calculation', 'cap', 'supports', 'practice', 'override', 'pieces'] as const;
export type SpacingReason = (typeof spacingReasons)[number];

export interface ScheduleLine {
  /** Index of the zone in the pressure field. */
  readonly zone: number;
  /** Along the row, in inches: the greatest spacing allowed; the layout makes intervals equal below it. */
  readonly spacing_in: number;
  readonly setBy: SpacingReason;
  /** Where the supports force a spacing at which the line falls short: one at which it would not. */
  readonly holdsAt_in?: number;
  /** Fasteners at one place. */
  readonly each: number;
  readonly place_ft2: number;
  readonly fastener_ft2: number;
  /** Net uplift on the place and on one fastener, at the level of the job's method, positive away from the roof. */
  readonly placePressure_psf: number | undefined;
  readonly fastenerPressure_psf: number | undefined;
  readonly placeLoad_lbf: number | undefined;
  readonly fastenerLoad_lbf: number | undefined;
  /** Why there is no load, when there is none. */
  readonly noLoad?: string;
  readonly checks: readonly LinkCheck[];
  /** Index of the check that decides: the worst verdict, then the highest ratio. */
  readonly governing: number;
  readonly ratio: number | undefined;
  /** Of all links in series. */
  readonly verdict: Verdict;
  /** Of the fastener's own links, and of the panel system: shown side by side. */
  readonly fastenerVerdict: Verdict;
  readonly panelVerdict: Verdict | undefined;
}

export interface ConnectionChoice {
  readonly connection: Connection;
  /** Nothing when nothing on the shelf fits; then every rejection says why. */
  readonly item: Screw | Rivet | undefined;
  readonly clip: Clip | undefined;
  /** In words: why this item, against the runner-up. */
  readonly because: string;
  readonly lines: readonly ScheduleLine[];
  readonly rejected: readonly Rejection[];
  /** Prying of the clip, when it has one: screw tension over seam pull. */
  readonly prying: number | undefined;
  /** Checks that are no matter of strength: a misfit a person insists on, a question still open. */
  readonly besides: readonly LinkCheck[];
  /** Why a person changed the item or a spacing, when one did. */
  readonly overridden: readonly string[];
  /** Guidance that collides, shown and not decided. */
  readonly conflicts: readonly string[];
}
