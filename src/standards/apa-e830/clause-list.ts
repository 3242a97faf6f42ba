import type { AnyClause } from '../../trace/clause.ts';
import { plywoodOverMetalLateral, plywoodScrewUltimate } from './screw-tests.ts';

/** Every clause of this folder, for lists and sweeps. */
export const apaE830Clauses: readonly AnyClause[] = [plywoodOverMetalLateral, plywoodScrewUltimate];
