import type { AnyClause } from '../../trace/clause.ts';
import { clausesOfNds2024 } from './clauses.ts';

/** Every clause of this folder, for lists and sweeps. */
export const nds2024Clauses: readonly AnyClause[] = Object.values(clausesOfNds2024);
