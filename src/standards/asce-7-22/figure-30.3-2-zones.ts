/** ASCE/SEI 7-22: zone plans of the roof figures. Published. The hot corner of a gable moves from ridge to eave at 27 degrees. */
import { citation, type FigureId } from '../asce-7-curves/edition.ts';
import {
  highBuildingPlan,
  lowSlopePlan,
  monoslopeTo10Plan,
  monoslopeTo30Plan,
} from '../asce-7-curves/zone-plans.ts';
import { rest, within, type ZonePlan, type ZoneRule } from '../asce-7-curves/zone-rule.ts';
import { asce7of2022 } from './edition.ts';

/** 2B, 2C: the eave strip is zone 1, the rake strip zone 2 down to the eave. */
const gableTo27Plan: ZonePlan = {
  rules: [
    { zone: '3', where: [[within('rake', 1), within('ridge', 1)]] },
    { zone: '2', where: [[within('rake', 1)], [within('ridge', 1)]] },
    rest('1'),
  ],
};

/** 2D: neither eave nor ridge strip. */
const gableTo45Plan: ZonePlan = {
  rules: [
    { zone: '3', where: [[within('rake', 1), within('eave', 1)]] },
    { zone: '2', where: [[within('rake', 1)]] },
    rest('1'),
  ],
};

const hipPlan: ZonePlan = {
  rules: [
    { zone: '3', where: [[within('eave', 1)]] },
    { zone: '2', where: [[within('hip or ridge', 1)]] },
    rest('1'),
  ],
};

const plans: Readonly<Record<FigureId<'7-22'>, ZonePlan>> = {
  '30.3-2A': lowSlopePlan,
  '30.3-2B': gableTo27Plan,
  '30.3-2C': gableTo27Plan,
  '30.3-2D': gableTo45Plan,
  '30.3-2E': hipPlan,
  '30.3-2F': hipPlan,
  '30.3-2G': hipPlan,
  '30.3-5A': monoslopeTo10Plan,
  '30.3-5B': monoslopeTo30Plan,
  '30.4-1': highBuildingPlan(citation(asce7of2022, 'Fig. 30.4-1')),
};

export const zonePlanOf722 = (figure: FigureId<'7-22'>): ZonePlan => plans[figure];

/** The zones of a figure as rules, in the order they are tried. */
export const zoneRules = (figure: FigureId<'7-22'>): readonly ZoneRule[] => plans[figure].rules;
