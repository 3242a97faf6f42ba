/**
 * AISI S100-16 J4: safety and resistance factors of screw connections, and available strength. Every limit state has
 * Ω 3.00 and φ 0.50; LSD 0.40. Never use these with the equations of the 2022 supplement: its set differs.
 */
import type { Lbf } from '../../quantities/quantity.ts';
import type { Outcome } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { type FactorTable, makeAvailable, makeFactor } from '../aisi-s100-common/factors.ts';
import type { LimitState, Method } from '../aisi-s100-common/screw-terms.ts';
import { document, type Nominal } from './j4-edition.ts';

const usual = { ASD: 3, LRFD: 0.5, LSD: 0.4 } as const;
const seen = '3.00 and 0.50 seen in several reproductions, LSD 0.40 recalled';

const table: FactorTable = {
  'tilting and bearing': { ...usual, source: seen },
  // J6 is recalled with LSD 0.75 beside Ω 3.00; unseen and out of line, so the value of the other states stands.
  'end tear-out': { ...usual, source: 'recalled; LSD taken as for the other limit states, on the safe side' },
  'pull-out': { ...usual, source: seen },
  'pull-over': { ...usual, source: seen },
  'screw shear': { ...usual, source: seen },
  'screw tension': { ...usual, source: 'recalled' },
};

export const factor = makeFactor(document, table);

/** Available strength of a nominal strength of this edition: Rn/Ω, or φRn. Takes no other edition's strength. */
export const available: <L extends LimitState>(
  limitState: L,
  nominal: Nominal<NoInfer<L>>,
  method: Method,
  trace?: Trace,
) => Outcome<Lbf> = makeAvailable(document, factor);
