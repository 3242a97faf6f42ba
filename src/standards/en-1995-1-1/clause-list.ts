import type { AnyClause } from '../../trace/clause.ts';
import { designResistance, modificationFactor } from './3.1-modification.ts';
import { splitting } from './8.1.4-splitting.ts';
import { steelShear, timberShear } from './8.2-johansen.ts';
import { embedment, yieldMoment } from './8.3.1-dowel-strength.ts';
import { smoothNailAxial } from './8.3.2-nail-axial.ts';
import { combinedUse } from './8.3.3-combined.ts';
import { declaredScrewWithdrawal, screwPullThrough, screwWithdrawal } from './8.7.2-screw-axial.ts';

/** Every clause of this folder, for lists and sweeps. */
export const en1995Clauses: readonly AnyClause[] = [
  designResistance,
  modificationFactor,
  splitting,
  steelShear,
  timberShear,
  embedment,
  yieldMoment,
  smoothNailAxial,
  combinedUse,
  declaredScrewWithdrawal,
  screwPullThrough,
  screwWithdrawal,
];
