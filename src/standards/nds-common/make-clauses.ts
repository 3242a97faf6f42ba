/** Every clause the 2018 and 2024 editions share, made for one of them. */

import { makeGeometry, makeGroupAction } from './11.3.6-group-action.ts';
import { makeNailLateral, makeScrewLateral } from './11.3-adjusted-lateral.ts';
import { makeHeadPullThrough, makeNailedSheathing } from './11.3-adjusted-pull-through.ts';
import { makeLagWithdrawal, makeNailWithdrawal, makeScrewWithdrawal } from './11.3-adjusted-withdrawal.ts';
import {
  makeLoadDuration,
  makeMethodFactor,
  makeTemperature,
  makeWetService,
} from './11.3-service-factors.ts';
import {
  makeBearingLength,
  makeLagThread,
  makePenetrationFactor,
  makeScrewThread,
  makeThreadInMember,
} from './12.1-lengths.ts';
import { makeHeadPullThroughReference } from './12.2.5-head-pull-through.ts';
import { makeLagReference, makeNailReference, makeScrewReference } from './12.2-reference-withdrawal.ts';
import { makeBendingYield, makeReductionTerm } from './12.3.1-yield-limits.ts';
import { makeLateralReference } from './12.3.1-yield-modes.ts';
import { makePanelBearing, makeSteelBearing, makeWoodBearing } from './12.3.3-dowel-bearing.ts';
import { makeCombined } from './12.4-combined.ts';
import { makeDiaphragm, makeEndGrain, makeToeNail } from './12.5-position-factors.ts';
import type { NdsEdition } from './edition.ts';

export function makeClauses(edition: NdsEdition) {
  return {
    lagReference: makeLagReference(edition),
    screwReference: makeScrewReference(edition),
    nailReference: makeNailReference(edition),
    headPullThroughReference: makeHeadPullThroughReference(edition),
    woodBearing: makeWoodBearing(edition),
    panelBearing: makePanelBearing(edition),
    steelBearing: makeSteelBearing(edition),
    reductionTerm: makeReductionTerm(edition),
    bendingYield: makeBendingYield(edition),
    ...makeLateralReference(edition),
    penetrationFactor: makePenetrationFactor(edition),
    bearingLength: makeBearingLength(edition),
    screwThread: makeScrewThread(edition),
    lagThread: makeLagThread(edition),
    threadInMember: makeThreadInMember(edition),
    loadDuration: makeLoadDuration(edition),
    methodFactor: makeMethodFactor(edition),
    wetService: makeWetService(edition),
    temperatureFactor: makeTemperature(edition),
    groupAction: makeGroupAction(edition),
    geometry: makeGeometry(edition),
    endGrain: makeEndGrain(edition),
    diaphragm: makeDiaphragm(edition),
    toeNail: makeToeNail(edition),
    combined: makeCombined(edition),
    screwWithdrawal: makeScrewWithdrawal(edition),
    lagWithdrawal: makeLagWithdrawal(edition),
    nailWithdrawal: makeNailWithdrawal(edition),
    headPullThrough: makeHeadPullThrough(edition),
    nailedSheathing: makeNailedSheathing(edition),
    screwLateral: makeScrewLateral(edition),
    nailLateral: makeNailLateral(edition),
  };
}
