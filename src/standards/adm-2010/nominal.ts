/** Aluminum Design Manual 2010, section J.5 (screws): the type of its nominal strengths. Recalled, not seen. */
import type { Quantity } from '../../quantities/quantity.ts';
import type { Document, LimitState } from '../adm-2015/factors.ts';

declare const nominalOf: unique symbol;

/** A nominal strength by ADM 2010, in pounds, of one limit state, before any factor. */
export type Nominal<L extends LimitState> = Quantity<'lbf'> & { readonly [nominalOf]: L };

export const document: Document = { id: 'adm-2010', name: 'ADM 2010' };
