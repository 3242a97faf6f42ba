/**
 * Chapter J4 of AISI S100-16 (with S1-18 or S2-20): nominal strengths of this edition carry its name in their
 * type, and only this edition's factors accept them. One edition's equation with another's factors does not compile.
 */
import type { Quantity } from '../../quantities/quantity.ts';
import type { Document, LimitState } from '../aisi-s100-common/screw-terms.ts';

declare const nominalOf: unique symbol;

/** A nominal strength by S100-16, in pounds, of one limit state, before any factor. */
export type Nominal<L extends LimitState> = Quantity<'lbf'> & { readonly [nominalOf]: L };

export const document: Document = { id: 'aisi-s100-16', name: 'AISI S100-16' };
