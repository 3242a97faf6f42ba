/** Clauses of NDS 2024. Eq. 12.2-1 to 12.2-6 and the cells of Tables 12.2B and 12.2F seen are those of 2018. */
import { makeClauses } from '../nds-common/make-clauses.ts';

export const clausesOfNds2024 = makeClauses({ id: 'nds-2024', name: 'NDS 2024' });
