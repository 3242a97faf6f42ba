import type { AnyClause } from '../../trace/clause.ts';
import { velocityPressureOf716 } from './26.10-velocity-pressure.ts';
import { roofPressuresOf716 } from './roof-pressure.ts';
import { unchangedClausesOf716 } from './unchanged-clauses.ts';

const { kz, ke, fromFactors, atRoof } = velocityPressureOf716;

/** Every clause of this folder, for lists and sweeps. */
export const asce716Clauses: readonly AnyClause[] = [
  ...Object.values(unchangedClausesOf716),
  ke,
  kz.byTable,
  kz.byPowerLaw,
  fromFactors,
  atRoof,
  ...Object.values(roofPressuresOf716),
];
