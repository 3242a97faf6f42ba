/** Every clause of every edition here. A test finds clauses in the files that this list lacks. */

import type { AnyClause } from '../trace/clause.ts';
import { adm2010Clauses } from './adm-2010/clause-list.ts';
import { adm2015Clauses } from './adm-2015/clause-list.ts';
import { aisiS10016Clauses } from './aisi-s100-16/clause-list.ts';
import { aisiS10016S322Clauses } from './aisi-s100-16-s3-22/clause-list.ts';
import { apaE830Clauses } from './apa-e830/clause-list.ts';
import { asce716Clauses } from './asce-7-16/clause-list.ts';
import { asce722Clauses } from './asce-7-22/clause-list.ts';
import { en199313Clauses } from './en-1993-1-3/clause-list.ts';
import { en1995Clauses } from './en-1995-1-1/clause-list.ts';
import { en199914Clauses } from './en-1999-1-4/clause-list.ts';
import { nds2018Clauses } from './nds-2018/clause-list.ts';
import { nds2024Clauses } from './nds-2024/clause-list.ts';
import { woodHandbookClauses } from './wood-handbook/clause-list.ts';

export const allClauses: readonly AnyClause[] = [
  ...adm2010Clauses,
  ...adm2015Clauses,
  ...aisiS10016S322Clauses,
  ...aisiS10016Clauses,
  ...apaE830Clauses,
  ...asce716Clauses,
  ...asce722Clauses,
  ...en199313Clauses,
  ...en1995Clauses,
  ...en199914Clauses,
  ...nds2018Clauses,
  ...nds2024Clauses,
  ...woodHandbookClauses,
];
