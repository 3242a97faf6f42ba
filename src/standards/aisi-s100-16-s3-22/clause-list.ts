/** Every clause of AISI S100-16 w/S3-22 that is written as a function. */
import type { AnyClause } from '../../trace/clause.ts';
import { effectiveTensileStrength, effectiveYieldStrength } from './a3.1-sheet-strength.ts';
import { minimumEdgeDistance, minimumEndDistance, minimumSpacing } from './j4.2-spacing.ts';
import { endTearOut } from './j4.3.1-end-tear-out.ts';
import { tiltingAndBearing } from './j4.3.1-tilting-and-bearing.ts';
import { screwShear, screwTestFactor } from './j4.3.2-screw-shear.ts';
import { pullOut } from './j4.4.1-pull-out.ts';
import { pullOver, pullOverDiameter } from './j4.4.2-pull-over.ts';
import { screwTension } from './j4.4.3-screw-tension.ts';
import { shearAndPullOut, shearAndPullOver, shearAndTension } from './j4.5-combined.ts';
import { factor } from './j4-factors.ts';

export const aisiS10016S322Clauses: readonly AnyClause[] = [
  effectiveTensileStrength,
  effectiveYieldStrength,
  factor,
  minimumSpacing,
  minimumEdgeDistance,
  minimumEndDistance,
  tiltingAndBearing,
  endTearOut,
  screwShear,
  screwTestFactor,
  pullOut,
  pullOverDiameter,
  pullOver,
  screwTension,
  shearAndPullOver,
  shearAndPullOut,
  shearAndTension,
];
