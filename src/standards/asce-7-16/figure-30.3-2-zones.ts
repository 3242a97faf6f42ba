/** ASCE/SEI 7-16: zone plans of the roof figures. Gable plans published in part, hip plans from one copy. */
import { citation, type FigureId } from '../asce-7-curves/edition.ts';
import {
  highBuildingPlan,
  lowSlopePlan,
  monoslopeTo10Plan,
  monoslopeTo30Plan,
} from '../asce-7-curves/zone-plans.ts';
import { atCorner, rest, within, type ZonePlan, type ZoneRule } from '../asce-7-curves/zone-rule.ts';
import { asce7of2016 } from './edition.ts';

/** Strips a wide: along the rakes 3e at the eave and 3r at the ridge, else 2n; inside them 2e and 2r. */
const gablePlan: ZonePlan = {
  rules: [
    { zone: '3e', where: [[within('rake', 1), within('eave', 1)]] },
    { zone: '3r', where: [[within('rake', 1), within('ridge', 1)]] },
    { zone: '2n', where: [[within('rake', 1)]] },
    { zone: '2e', where: [[within('eave', 1)]] },
    { zone: '2r', where: [[within('ridge', 1)]] },
    rest('1'),
  ],
};

const hipPlan: ZonePlan = {
  rules: [
    { zone: '3', where: [atCorner(1, 1, 'a')] },
    { zone: '2e', where: [[within('eave', 1)]] },
    { zone: '2r', where: [[within('hip or ridge', 1)]] },
    rest('1'),
  ],
  reading:
    'Hip figures of ASCE/SEI 7-16: zone 3 is a square of a by a at each eave corner, 2r a strip a wide on each side of hips and ridge; the plan rests on one copy.',
};

const plans: Readonly<Record<FigureId<'7-16'>, ZonePlan>> = {
  '30.3-2A': lowSlopePlan,
  '30.3-2B': gablePlan,
  '30.3-2C': gablePlan,
  '30.3-2D': gablePlan,
  '30.3-2E': hipPlan,
  '30.3-2G': hipPlan,
  '30.3-2H': hipPlan,
  '30.3-5A': monoslopeTo10Plan,
  '30.3-5B': monoslopeTo30Plan,
  '30.5-1': highBuildingPlan(citation(asce7of2016, 'Fig. 30.5-1')),
};

export const zonePlanOf716 = (figure: FigureId<'7-16'>): ZonePlan => plans[figure];

/** The zones of a figure as rules, in the order they are tried. */
export const zoneRules = (figure: FigureId<'7-16'>): readonly ZoneRule[] => plans[figure].rules;
