import type { AnyClause } from '../../trace/clause.ts';
import { proportionalLimitLateral } from './8-lateral.ts';
import {
  driftBoltUltimate,
  lagScrewUltimate,
  smoothNailUltimate,
  threadedNailUltimate,
  woodScrewUltimate,
} from './8-withdrawal.ts';

/** Every clause of this folder, for lists and sweeps. */
export const woodHandbookClauses: readonly AnyClause[] = [
  smoothNailUltimate,
  threadedNailUltimate,
  driftBoltUltimate,
  woodScrewUltimate,
  lagScrewUltimate,
  proportionalLimitLateral,
];
