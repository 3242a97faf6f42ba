/**
 * ASCE/SEI 7-16 Fig. 30.3-2E to 2I: (GCp) of hip roofs over 7 to 45 degrees. Overhang values hold top and bottom
 * together. One copy; small-area plateaus met by RAS 127-20. The break areas over 27 degrees are the least
 * certain numbers of this folder, see there.
 */
import { citation } from '../asce-7-curves/edition.ts';
import { type CurvePoint, curve, doubtful, type GcpCurve } from '../asce-7-curves/gcp-curve.ts';
import type { BetweenCurves, CurveBySlope, LineInSlope } from '../asce-7-curves/gcp-rule.ts';
import type { RoofFigure } from '../asce-7-curves/roof-figure.ts';
import { asce7of2016 } from './edition.ts';

const cited = (figure: string): string => citation(asce7of2016, `Fig. ${figure}`);
const seen = (...points: readonly CurvePoint[]): GcpCurve => curve('one copy', ...points);

const zones = ['1', '2r', '2e', '3'];
const positiveTo27 = seen([10, 0.7], [100, 0.3]);

/** Straight in h/B between 0.5 and 0.8, B the least horizontal dimension. */
const byHeight = (atLow: GcpCurve, atHigh: GcpCurve): BetweenCurves => ({
  kind: 'between',
  by: 'hOverB',
  low: 0.5,
  atLow,
  high: 0.8,
  atHigh,
});

const e2e = byHeight(seen([10, -1.8], [200, -1.1]), seen([10, -2.6], [200, -1.4]));

/** Fig. 30.3-2E and, for overhangs, 2F. */
export const hip7to20: RoofFigure = {
  cites: cited('30.3-2E'),
  zones,
  positive: positiveTo27,
  negative: {
    1: byHeight(seen([20, -1.3], [100, -1.0]), seen([20, -1.8], [100, -1.0])),
    '2r': seen([10, -2.4], [200, -1.3]),
    '2e': e2e,
    3: e2e,
  },
  overhang: {
    cites: cited('30.3-2F'),
    negative: {
      // At h/B 0.5 zone 1 grows with the area, as drawn.
      1: byHeight(seen([10, -1.8], [100, -2.0]), seen([20, -2.3], [100, -2.0])),
      '2r': seen([10, -2.9], [200, -2.3]),
      '2e': byHeight(seen([10, -2.3], [200, -2.1]), seen([10, -3.1], [200, -2.4])),
      3: byHeight(seen([10, -2.9], [200, -1.6]), seen([10, -3.7], [200, -1.9])),
    },
  },
};

const g2 = seen([10, -2.0], [200, -1.0]);
const overhang20 = (start: number, end: number): GcpCurve =>
  doubtful(
    seen([7, start], [200, end]),
    'overhang: the plateau ends at about 7 ft², 5 fits the drawing as well; 7 is taken',
  );
const g2Overhang = overhang20(-2.5, -2.0);

/** Fig. 30.3-2G. */
export const hip20to27: RoofFigure = {
  cites: cited('30.3-2G'),
  zones,
  positive: positiveTo27,
  negative: { 1: seen([10, -1.4], [100, -0.8]), '2r': g2, '2e': g2, 3: g2 },
  overhang: {
    cites: cited('30.3-2G'),
    negative: { 1: overhang20(-1.9, -1.8), '2r': g2Overhang, '2e': g2Overhang, 3: overhang20(-3.1, -1.5) },
  },
};

/**
 * Over 27 degrees the curves go by equations in the slope. Where the plateau ends is read as 3, 5 or 7 ft²; it is
 * held to 10 ft² and the line drawn from there, which is never milder. The large-area end is read as 50 or as
 * 280 − 5 θ without saying for which curve: the larger is taken; 100 or 200 for zone 2r: 200.
 */
const doubt =
  'hip roof over 27 degrees: break areas are uncertain; the small-area value is held to 10 ft² and the farther of two end areas is taken, both conservative';
const bySlope = (small: LineInSlope, large: LineInSlope, end: LineInSlope): CurveBySlope => ({
  kind: 'by slope',
  origin: 'one copy',
  from: { area: 10, coefficient: small },
  to: { area: end, coefficient: large },
  slopes: [27, 45],
  doubt,
});
const END_200: LineInSlope = [200, 0];
const END_BY_SLOPE: LineInSlope = [280, -5];

/** Fig. 30.3-2H and, for overhangs, 2I. */
export const hip27to45: RoofFigure = {
  cites: cited('30.3-2H'),
  zones,
  positive: doubtful(
    seen([10, 0.9], [100, 0.3]),
    'positive: the plateau is read as ending at 3 ft²; it is held to 10 ft²',
  ),
  negative: {
    1: bySlope([-0.6175, -0.02], [-0.095, -0.0135], END_200),
    '2r': bySlope([1.0, -0.082], [-1.0, 0], END_200),
    '2e': bySlope([0.2, -0.067], [-0.8, 0], END_BY_SLOPE),
    3: bySlope([1.25, -0.108], [-1.0, 0], END_BY_SLOPE),
  },
  overhang: {
    cites: cited('30.3-2I'),
    negative: {
      1: bySlope([-1.4175, -0.02], [-0.895, -0.0135], END_200),
      '2r': bySlope([0.2, -0.082], [-1.8, 0], END_200),
      '2e': bySlope([-0.6, -0.067], [-1.6, 0], END_BY_SLOPE),
      3: bySlope([0.45, -0.108], [-1.8, 0], END_BY_SLOPE),
    },
  },
};
