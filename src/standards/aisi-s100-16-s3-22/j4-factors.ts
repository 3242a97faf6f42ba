/**
 * AISI S100-16 w/S3-22 J4: safety and resistance factors, each limit state its own, and available strength.
 * Seen in a public reproduction of chapter J, not in the supplement. The 2.90 of pull-over goes with the 0.90 of this
 * edition's equation, never with 1.5.
 */
import type { Lbf } from '../../quantities/quantity.ts';
import type { Outcome } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { type FactorTable, makeAvailable, makeFactor } from '../aisi-s100-common/factors.ts';
import type { LimitState, Method } from '../aisi-s100-common/screw-terms.ts';
import { document, type Nominal } from './j4-edition.ts';

const sheet = { ASD: 2.8, LRFD: 0.55, LSD: 0.45 } as const;
const screw = { ASD: 3, LRFD: 0.5, LSD: 0.4 } as const;
const seen = 'seen in a public reproduction of chapter J, not in the supplement';

const table: FactorTable = {
  'tilting and bearing': { ...sheet, source: seen },
  'end tear-out': { ...screw, source: 'recalled as unchanged; LSD as for the screw, on the safe side' },
  'pull-out': { ...sheet, source: seen },
  'pull-over': { ASD: 2.9, LRFD: 0.55, LSD: 0.4, source: `${seen}; belongs to the coefficient 0.90` },
  'screw shear': { ...screw, source: seen },
  'screw tension': { ...screw, source: 'recalled' },
};

export const factor = makeFactor(document, table);

/** Available strength of a nominal strength of this edition: Rn/Ω, or φRn. Takes no other edition's strength. */
export const available: <L extends LimitState>(
  limitState: L,
  nominal: Nominal<NoInfer<L>>,
  method: Method,
  trace?: Trace,
) => Outcome<Lbf> = makeAvailable(document, factor);
