/** Clauses that read the same in both editions, made for one of them. */
import { makeAsdPressure } from './02.04-asd-wind.ts';
import { makeEffectiveWindArea } from './26.02-effective-wind-area.ts';
import { makeMeanRoofHeight } from './26.02-mean-roof-height.ts';
import { makeTopographicFactor } from './26.08-topographic-factor.ts';
import { makeInternalPressure } from './26.13-internal-pressure.ts';
import { makeMinimumPressure } from './30.02.2-minimum-pressure.ts';
import { makeEdgeStripWidth } from './30.03-edge-strip-width.ts';
import type { Asce7 } from './edition.ts';

export function makeUnchangedClauses(of: Asce7, highFigure: string) {
  const { ofMember, ofFastener } = makeEffectiveWindArea(of);
  const { K1, K2, K3, Kzt } = makeTopographicFactor(of);
  return {
    meanRoofHeight: makeMeanRoofHeight(of),
    areaOfMember: ofMember,
    areaOfFastener: ofFastener,
    steepnessMultiplier: K1,
    distanceMultiplier: K2,
    heightMultiplier: K3,
    topographicFactor: Kzt,
    internalPressure: makeInternalPressure(of),
    minimumPressure: makeMinimumPressure(of),
    edgeStripWidth: makeEdgeStripWidth(of, highFigure),
    asdPressure: makeAsdPressure(of),
  };
}
