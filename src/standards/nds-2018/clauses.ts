/** Clauses of NDS 2018: the equations it shares with 2024, cited from 2018. First edition with head pull-through. */
import { makeClauses } from '../nds-common/make-clauses.ts';

export const clausesOfNds2018 = makeClauses({ id: 'nds-2018', name: 'NDS 2018' });
