/** ADM 2015 J.5: available strength of a screw in aluminium. */
import type { Lbf } from '../../quantities/quantity.ts';
import type { Outcome } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { type LimitState, type Method, makeAvailable, makeFactor } from './factors.ts';
import { document, type Nominal } from './nominal.ts';

export const factor = makeFactor(document);

/** Rn/Ω, or φRn. Takes no other edition's strength. */
export const available: (nominal: Nominal<LimitState>, method: Method, trace?: Trace) => Outcome<Lbf> =
  makeAvailable(document, factor);
