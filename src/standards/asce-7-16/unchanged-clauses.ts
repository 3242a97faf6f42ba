/** Clauses of 7-16 that 7-22 kept: h, A, Kzt, GCpi, the minimum, a, 0.6 W. */
import { makeUnchangedClauses } from '../asce-7-curves/unchanged-clauses.ts';
import { asce7of2016 } from './edition.ts';

export const unchangedClausesOf716 = makeUnchangedClauses(asce7of2016, '30.5-1');
