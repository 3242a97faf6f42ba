/** Every clause of EN 1993-1-3 that is written as a function. */
import type { AnyClause } from '../../trace/clause.ts';
import { rivetBearing } from './t8.1-rivet-bearing.ts';
import { netSection, screwBearing } from './t8.2-screw-bearing.ts';
import { screwCombined } from './t8.2-screw-combined.ts';
import { finnishScrewShear, leastScrewShear, leastScrewTension } from './t8.2-screw-own-strength.ts';
import { screwPullOut } from './t8.2-screw-pull-out.ts';
import { pinPullThrough, screwPullThrough } from './t8.2-screw-pull-through.ts';
import { pinBearing } from './t8.3-pin-bearing.ts';
import { leastDistance } from './t8-spacing.ts';

export const en199313Clauses: readonly AnyClause[] = [
  leastDistance,
  rivetBearing,
  screwBearing,
  netSection,
  screwPullThrough,
  screwPullOut,
  leastScrewShear,
  leastScrewTension,
  finnishScrewShear,
  screwCombined,
  pinBearing,
  pinPullThrough,
];
