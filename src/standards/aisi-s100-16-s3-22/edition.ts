/** The screw provisions of AISI S100-16 w/S3-22 as one object that hands out available strengths. */

import type { ScrewEdition } from '../aisi-s100-common/screw-edition.ts';
import { andThen } from '../aisi-s100-common/screw-terms.ts';
import { effectiveTensileStrength, effectiveYieldStrength } from './a3.1-sheet-strength.ts';
import { minimumEdgeDistance, minimumEndDistance, minimumSpacing } from './j4.2-spacing.ts';
import { endTearOut } from './j4.3.1-end-tear-out.ts';
import { tiltingAndBearing } from './j4.3.1-tilting-and-bearing.ts';
import { screwShear } from './j4.3.2-screw-shear.ts';
import { pullOut } from './j4.4.1-pull-out.ts';
import { pullOver, pullOverDiameter } from './j4.4.2-pull-over.ts';
import { screwTension } from './j4.4.3-screw-tension.ts';
import { shearAndPullOut, shearAndPullOver, shearAndTension } from './j4.5-combined.ts';
import { document } from './j4-edition.ts';
import { available } from './j4-factors.ts';

export const aisiS10016S322: ScrewEdition = {
  name: document.name,
  cites: `${document.name}, chapter J4`,
  shear: (values, method, trace) =>
    andThen(tiltingAndBearing(values, trace), (Pn) => available('tilting and bearing', Pn, method, trace)),
  endTearOut: (values, method, trace) =>
    andThen(endTearOut(values, trace), (Pn) => available('end tear-out', Pn, method, trace)),
  pullOut: (values, method, trace) =>
    andThen(pullOut(values, trace), (Pn) => available('pull-out', Pn, method, trace)),
  pullOver: (values, method, trace) =>
    andThen(pullOver(values, trace), (Pn) => available('pull-over', Pn, method, trace)),
  screwShear: (values, method, trace) =>
    andThen(screwShear(values, trace), (Pn) => available('screw shear', Pn, method, trace)),
  screwTension: (values, method, trace) =>
    andThen(screwTension(values, trace), (Pn) => available('screw tension', Pn, method, trace)),
  shearAndPullOver: (values, method, trace) => shearAndPullOver({ ...values, method }, trace),
  shearAndPullOut: (values, method, trace) => shearAndPullOut({ ...values, method }, trace),
  shearAndTension: (values, method, trace) => shearAndTension({ ...values, method }, trace),
  pullOverDiameter,
  minimumSpacing,
  minimumEdgeDistance,
  minimumEndDistance,
  tensileStrengthForDesign: effectiveTensileStrength,
  yieldStrengthForDesign: effectiveYieldStrength,
};
