/**
 * Chapter J4 of AISI S100-16 with supplement S3-22: nominal strengths of this edition carry its name in their type,
 * and only this edition's factors accept them. Seen only in a public reproduction of chapter J, not in the supplement.
 */
import type { Quantity } from '../../quantities/quantity.ts';
import type { Document, LimitState } from '../aisi-s100-common/screw-terms.ts';

declare const nominalOf: unique symbol;

/** A nominal strength by S100-16 w/S3-22, in pounds, of one limit state, before any factor. */
export type Nominal<L extends LimitState> = Quantity<'lbf'> & { readonly [nominalOf]: L };

export const document: Document = { id: 'aisi-s100-16-s3-22', name: 'AISI S100-16 w/S3-22' };
