import type { AnyClause } from '../../trace/clause.ts';
import { velocityPressureOf722 } from './26.10-velocity-pressure.ts';
import { roofPressuresOf722 } from './roof-pressure.ts';
import { unchangedClausesOf722 } from './unchanged-clauses.ts';

const { kz, ke, fromFactors, atRoof } = velocityPressureOf722;

/** Every clause of this folder, for lists and sweeps. */
export const asce722Clauses: readonly AnyClause[] = [
  ...Object.values(unchangedClausesOf722),
  ke,
  kz.byTable,
  kz.byPowerLaw,
  fromFactors,
  atRoof,
  ...Object.values(roofPressuresOf722),
];
