/**
 * A curve of (GCp) against effective wind area: straight between its break points when the area is drawn to a
 * logarithmic scale, flat outside them.
 */
import { type Ratio, ratio, type SqFt, sqft } from '../../quantities/quantity.ts';
import type { Unit } from '../../quantities/unit.ts';
import { type Equation, equation, type QuantitiesOf } from '../../trace/equation.ts';
import { figure as printed } from '../../trace/print.ts';
import { note, type Trace, taken } from '../../trace/step.ts';

/** How the numbers of a curve were seen: read off the standard or its reproduction, in one copy only, recalled. */
export type CurveOrigin = 'published' | 'one copy' | 'memory';

/** Area in square feet, coefficient. */
export type CurvePoint = readonly [area: number, coefficient: number];

export interface GcpCurve {
  readonly kind: 'curve';
  readonly origin: CurveOrigin;
  /** By growing area. One point alone: the same at every area. */
  readonly points: readonly CurvePoint[];
  /** Another reading of the same drawing: the more negative of the two holds above an area. */
  readonly secondReading?: { readonly above: number; readonly points: readonly CurvePoint[] };
  /** What is in doubt and how it is met, for the working. */
  readonly doubt?: string;
}

export const curve = (origin: CurveOrigin, ...points: readonly CurvePoint[]): GcpCurve => ({
  kind: 'curve',
  origin,
  points,
});

export const doubtful = (of: GcpCurve, doubt: string): GcpCurve => ({ ...of, doubt });

const clause = '(GCp) curve';
const slope = equation({
  clause,
  gives: 'm',
  unit: '1',
  from: { g1: '1', g2: '1', A1: 'ft²', A2: 'ft²' },
  is: '(g2 - g1) / log10(A2 / A1)',
});
// The logarithm of an area in square feet, as the commentary prints these lines: the unit is hidden in b.
const intercept = equation({
  clause,
  gives: 'b',
  unit: '1',
  from: { g1: '1', m: '1', A1: 'ft²' },
  is: 'g1 - m * log10(A1)',
  fitted: true,
});
const onLine = equation({
  clause,
  gives: 'GCp',
  unit: '1',
  from: { b: '1', m: '1', A: 'ft²' },
  is: 'b + m * log10(A)',
  fitted: true,
});

/** Runs an equation shared by many figures and records it under the figure it is used for. */
export function citedAs<F extends Readonly<Record<string, Unit>>, U extends Unit>(
  cites: string,
  shared: Equation<F, U>,
  inputs: QuantitiesOf<F>,
  trace?: Trace,
): ReturnType<Equation<F, U>> {
  const value = shared(inputs);
  const { gives, unit } = shared.text;
  trace?.push({
    kind: 'equation',
    clause: cites,
    symbol: gives,
    unit,
    value,
    formula: shared.formula(),
    inputs,
  });
  return value;
}

/** (GCp) at an effective wind area; `cites` is the figure the curve belongs to. */
export function gcpOn(of: GcpCurve, cites: string, A: SqFt, trace?: Trace): Ratio {
  if (trace) noteOrigin(of, cites, trace);
  const value = onPoints(of.points, cites, A, trace);
  if (of.secondReading === undefined || A <= of.secondReading.above) return value;
  const other = onPoints(of.secondReading.points, cites, A, trace);
  const because = `more negative of two readings of the figure above ${of.secondReading.above} ft²`;
  return taken(trace, { clause: cites, symbol: 'GCp', unit: '1', because }, ratio(Math.min(other, value)));
}

function onPoints(points: readonly CurvePoint[], cites: string, A: SqFt, trace?: Trace): Ratio {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) throw new Error(`${cites}: a curve without points`);
  if (A <= first[0] || A >= last[0]) return flat(points, A <= first[0] ? first : last, cites, A, trace);
  let next = 1;
  while (A > (points[next] as CurvePoint)[0]) next++;
  return between(points[next - 1] as CurvePoint, points[next] as CurvePoint, cites, A, trace);
}

function flat(points: readonly CurvePoint[], end: CurvePoint, cites: string, A: SqFt, trace?: Trace): Ratio {
  if (!trace) return ratio(end[1]);
  const side = end === points[0] ? 'up to' : 'from';
  const because =
    points.length > 1 ? `flat ${side} ${end[0]} ft², A = ${printed(A)} ft²` : 'the same at every area';
  return taken(trace, { clause: cites, symbol: 'GCp', unit: '1', because }, ratio(end[1]));
}

function between(from: CurvePoint, to: CurvePoint, cites: string, A: SqFt, trace?: Trace): Ratio {
  const [A1, g1, A2, g2] = [sqft(from[0]), ratio(from[1]), sqft(to[0]), ratio(to[1])];
  const m = citedAs(cites, slope, { g1, g2, A1, A2 }, trace);
  const b = citedAs(cites, intercept, { g1, m, A1 }, trace);
  return citedAs(cites, onLine, { b, m, A }, trace);
}

function noteOrigin(of: GcpCurve, cites: string, trace: Trace): void {
  if (of.origin === 'one copy') note(trace, cites, 'curve known from one copy of the figure');
  if (of.origin === 'memory') note(trace, cites, 'curve recalled, not seen on the page');
  if (of.doubt) note(trace, cites, of.doubt);
}
