/** Words that both editions of AISI S100 chapter J4 share: design methods, limit states, and how a document is named. */
import { oneOf } from '../../trace/clause.ts';
import { isRefusal, type Outcome } from '../../trace/refusal.ts';

/** ASD: allowable strength Rn/Ω against service loads. LRFD (US) and LSD (Canada): φRn against factored loads. */
export const methods = ['ASD', 'LRFD', 'LSD'] as const;
export type Method = (typeof methods)[number];

export const methodInput = oneOf(methods, 'design method: ASD, LRFD (United States), LSD (Canada)');

export const limitStates = [
  'tilting and bearing',
  'end tear-out',
  'pull-out',
  'pull-over',
  'screw shear',
  'screw tension',
] as const;
export type LimitState = (typeof limitStates)[number];

/** An edition, as its folder is named and as it is cited. */
export interface Document {
  readonly id: string;
  readonly name: string;
}

/** Goes on with a number, or hands the refusal on. */
export function andThen<T extends number, U extends number>(
  outcome: Outcome<T>,
  next: (value: T) => Outcome<U>,
): Outcome<U> {
  return isRefusal(outcome) ? outcome : next(outcome);
}

/**
 * J4 covers thread-forming and thread-cutting screws of 0.08 to 0.25 in. A #17 (0.290 in) or 5/16 in screw is
 * outside the section: its strength comes from tests only. Origin: published (handbook, textbook).
 */
export const screwDiameter = { min: 0.08, max: 0.25 } as const;
