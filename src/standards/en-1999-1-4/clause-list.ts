/** Every clause of EN 1999-1-4 that is written as a function. */
import type { AnyClause } from '../../trace/clause.ts';
import { screwBearing } from './8.3.2.1-screw-bearing.ts';
import { screwShear } from './8.3.2-screw-shear.ts';
import { screwPullOut, screwPullThrough } from './8.3.3-screw-tension.ts';

export const en199914Clauses: readonly AnyClause[] = [
  screwBearing,
  screwShear,
  screwPullThrough,
  screwPullOut,
];
