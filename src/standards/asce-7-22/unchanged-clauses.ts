/** Clauses of 7-22 unchanged since 7-16: h, A, Kzt, GCpi, the minimum, a, 0.6 W. */
import { makeUnchangedClauses } from '../asce-7-curves/unchanged-clauses.ts';
import { asce7of2022 } from './edition.ts';

export const unchangedClausesOf722 = makeUnchangedClauses(asce7of2022, '30.4-1');
