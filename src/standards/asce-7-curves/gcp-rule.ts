/** How a figure gives its curve: as drawn, between two drawn curves, or by equations in the roof slope. */
import { type Degree, type Ratio, ratio, type SqFt, sqft } from '../../quantities/quantity.ts';
import { equation } from '../../trace/equation.ts';
import { type Outcome, refuse } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { type CurveOrigin, citedAs, type GcpCurve, gcpOn } from './gcp-curve.ts';

/** Two curves and a straight line between them at the same area; the nearer curve itself outside the two values. */
export interface BetweenCurves {
  readonly kind: 'between';
  readonly by: 'hOverB' | 'theta';
  readonly low: number;
  readonly atLow: GcpCurve;
  /** Figure of the low curve when it is not the figure's own. */
  readonly lowCites?: string;
  readonly high: number;
  readonly atHigh: GcpCurve;
}

/** c + k θ, θ in degrees. */
export type LineInSlope = readonly [c: number, k: number];

export interface CurveBySlope {
  readonly kind: 'by slope';
  readonly origin: CurveOrigin;
  readonly from: { readonly area: number; readonly coefficient: LineInSlope };
  readonly to: { readonly area: LineInSlope; readonly coefficient: LineInSlope };
  readonly slopes: readonly [over: number, to: number];
  readonly doubt?: string;
}

export type GcpRule = GcpCurve | BetweenCurves | CurveBySlope;

export interface CurvePlace {
  readonly A: SqFt;
  readonly theta?: Degree | undefined;
  readonly hOverB?: Ratio | undefined;
}

const clause = '(GCp) rule';
const interpolated = equation({
  clause,
  gives: 'GCp',
  unit: '1',
  from: { GClow: '1', GChigh: '1', x: '1', xlow: '1', xhigh: '1' },
  is: 'GClow + (GChigh - GClow) * (x - xlow) / (xhigh - xlow)',
});
const bySlope = { c: '1', k: '1', θ: 'deg' } as const;
const small = equation({ clause, gives: 'GCsmall', unit: '1', from: bySlope, is: 'c + k * θ' });
const large = equation({ clause, gives: 'GClarge', unit: '1', from: bySlope, is: 'c + k * θ' });
// A limit in square feet for an angle in degrees: the units are hidden in c and k.
const largeArea = equation({
  clause,
  gives: 'A2',
  unit: 'ft²',
  from: bySlope,
  is: 'c + k * θ',
  fitted: true,
});

export function gcpByRule(rule: GcpRule, cites: string, place: CurvePlace, trace?: Trace): Outcome<Ratio> {
  if (rule.kind === 'curve') return gcpOn(rule, cites, place.A, trace);
  return rule.kind === 'between'
    ? betweenTwo(rule, cites, place, trace)
    : fromSlope(rule, cites, place, trace);
}

function betweenTwo(rule: BetweenCurves, cites: string, place: CurvePlace, trace?: Trace): Outcome<Ratio> {
  const x = place[rule.by];
  const allowed = rule.by === 'hOverB' ? 'h over the least horizontal dimension' : 'roof slope in degrees';
  if (x === undefined) return refuse(cites, rule.by, undefined, allowed, 'missing-input');
  const lowCites = rule.lowCites ?? cites;
  if (x <= rule.low) return gcpOn(rule.atLow, lowCites, place.A, trace);
  if (x >= rule.high) return gcpOn(rule.atHigh, cites, place.A, trace);
  const GClow = gcpOn(rule.atLow, lowCites, place.A, trace);
  const GChigh = gcpOn(rule.atHigh, cites, place.A, trace);
  const inputs = { GClow, GChigh, x: ratio(x), xlow: ratio(rule.low), xhigh: ratio(rule.high) };
  return citedAs(cites, interpolated, inputs, trace);
}

function fromSlope(rule: CurveBySlope, cites: string, place: CurvePlace, trace?: Trace): Outcome<Ratio> {
  const [over, to] = rule.slopes;
  const allowed = `over ${over} to ${to} deg`;
  const θ = place.theta;
  if (θ === undefined) return refuse(cites, 'theta', undefined, allowed, 'missing-input');
  if (!(θ > over && θ <= to)) return refuse(cites, 'theta', θ, allowed);
  const line = ([c, k]: LineInSlope) => ({ c: ratio(c), k: ratio(k), θ });
  const start = citedAs(cites, small, line(rule.from.coefficient), trace);
  const end = citedAs(cites, large, line(rule.to.coefficient), trace);
  const area = citedAs(cites, largeArea, line(rule.to.area), trace);
  const points = [
    [rule.from.area, start],
    [sqft(area), end],
  ] as const;
  const of: GcpCurve = { kind: 'curve', origin: rule.origin, points };
  return gcpOn(rule.doubt === undefined ? of : { ...of, doubt: rule.doubt }, cites, place.A, trace);
}
