/** (GCp) of a place on a roof for one direction: roof, overhang, parapet. */
import { type Ratio, ratio } from '../../quantities/quantity.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal, type Outcome, refuse } from '../../trace/refusal.ts';
import { note, type Trace, taken } from '../../trace/step.ts';
import { citedAs, gcpOn } from './gcp-curve.ts';
import { type CurvePlace, gcpByRule } from './gcp-rule.ts';
import type { RoofFigure } from './roof-figure.ts';
import { walls } from './roof-figures.ts';

export const surfaces = ['roof', 'overhang'] as const;
export const parapets = ['none', 'at least 3 ft all round'] as const;

export interface RoofPlace extends CurvePlace {
  readonly zone: string;
  readonly surface: (typeof surfaces)[number];
  readonly parapet: (typeof parapets)[number];
}

/** Citations that differ by edition. */
export interface CoefficientCites {
  readonly walls: string;
  readonly overhang: string;
  /** What is done where the figure has no overhang curves, and on whose word. */
  readonly overhangRule: string;
}

const withWall = equation({
  clause: 'roof overhang',
  gives: 'GCp',
  unit: '1',
  from: { GCroof: '1', GCwall: '1' },
  is: 'GCroof - GCwall',
});

/** Upward coefficient: the negative curve of the zone, on an overhang with the pressure from below. */
export function upwardCoefficient(
  figure: RoofFigure,
  cites: CoefficientCites,
  place: RoofPlace,
  trace?: Trace,
): Outcome<Ratio> {
  if (figure.negative[place.zone] === undefined)
    return refuse(figure.cites, 'zone', place.zone, figure.zones.join(', '), 'outside-scope');
  if (trace) note(trace, figure.cites, `zone ${place.zone}, ${place.surface}, upward`);
  if (place.surface === 'roof') return roofNegative(figure, place, trace);
  const drawn = figure.overhang?.negative[place.zone];
  if (figure.overhang && drawn) return gcpByRule(drawn, figure.overhang.cites, place, trace);
  note(trace, cites.overhang, cites.overhangRule);
  // No relief by a parapet here: the figures speak of it for the roof over the building.
  const GCroof = roofNegative(figure, { ...place, parapet: 'none' }, trace);
  if (isRefusal(GCroof)) return GCroof;
  const GCwall = gcpOn(walls.positive, cites.walls, place.A, trace);
  return citedAs(cites.overhang, withWall, { GCroof, GCwall }, trace);
}

/**
 * Downward coefficient: the positive curve. Below an overhang without own curves the wall sucks: zone 5 is taken,
 * the more severe, since the wall zone under a piece of roof is not known here.
 */
export function downwardCoefficient(
  figure: RoofFigure,
  cites: CoefficientCites,
  place: RoofPlace,
  trace?: Trace,
): Outcome<Ratio> {
  if (figure.negative[place.zone] === undefined)
    return refuse(figure.cites, 'zone', place.zone, figure.zones.join(', '), 'outside-scope');
  if (trace) note(trace, figure.cites, `zone ${place.zone}, ${place.surface}, downward`);
  const GCroof = roofPositive(figure, cites, place, trace);
  if (place.surface === 'roof' || figure.overhang) return GCroof;
  note(trace, cites.overhang, `${cites.overhangRule}; the wall zone is not known here, 5 is the more severe`);
  const GCwall = gcpOn(walls.negative5, cites.walls, place.A, trace);
  return citedAs(cites.overhang, withWall, { GCroof, GCwall }, trace);
}

function roofNegative(figure: RoofFigure, place: RoofPlace, trace?: Trace): Outcome<Ratio> {
  const milder = place.parapet === 'none' ? undefined : figure.parapet?.negativeAs[place.zone];
  if (milder)
    note(
      trace,
      figure.cites,
      `parapet of 3 ft or more all round: zone ${place.zone} is taken as zone ${milder}`,
    );
  const rule = figure.negative[milder ?? place.zone];
  if (rule === undefined) throw new Error(`${figure.cites}: zone ${milder} has no curve`);
  return gcpByRule(rule, figure.cites, place, trace);
}

function roofPositive(figure: RoofFigure, cites: CoefficientCites, place: RoofPlace, trace?: Trace): Ratio {
  const asWall = place.parapet !== 'none' && figure.parapet?.wallPositiveIn.includes(place.zone);
  if (asWall) {
    note(
      trace,
      figure.cites,
      `parapet of 3 ft or more all round: positive coefficient of zone ${place.zone} is that of the wall`,
    );
    return gcpOn(walls.positive, cites.walls, place.A, trace);
  }
  if (figure.positive) return gcpOn(figure.positive, figure.cites, place.A, trace);
  const because = 'the figure has no positive roof curve; suction inside and the minimum remain';
  return taken(trace, { clause: figure.cites, symbol: 'GCp', unit: '1', because }, ratio(0));
}
