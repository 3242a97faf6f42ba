import type { AnyClause } from '../../trace/clause.ts';
import { clausesOfNds2018 } from './clauses.ts';

/** Every clause of this folder, for lists and sweeps. */
export const nds2018Clauses: readonly AnyClause[] = Object.values(clausesOfNds2018);
