/**
 * Aluminum Design Manual 2015, section J.5 (screws): the type of its nominal strengths. Only the factors of this
 * edition accept them. All of J.5 is recalled, not seen; the branches were checked for continuity, and 27 values of a
 * trade table reproduce the pull-over form.
 */
import type { Quantity } from '../../quantities/quantity.ts';
import type { Document, LimitState } from './factors.ts';

declare const nominalOf: unique symbol;

/** A nominal strength by ADM 2015, in pounds, of one limit state, before any factor. */
export type Nominal<L extends LimitState> = Quantity<'lbf'> & { readonly [nominalOf]: L };

export const document: Document = { id: 'adm-2015', name: 'ADM 2015' };
