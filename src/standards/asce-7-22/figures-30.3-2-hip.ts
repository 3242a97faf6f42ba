/**
 * ASCE/SEI 7-22 Fig. 30.3-2E to 2G: (GCp) of hip roofs over 7 to 45 degrees, three zones. Published, identical to the
 * equations of commentary Tables C30.3. Overhangs by 30.7: roof plus wall.
 * Between 27 and 45 degrees note 6 of 2G draws a straight line in the slope from 2F to 2G.
 */
import { citation } from '../asce-7-curves/edition.ts';
import { curve, type GcpCurve } from '../asce-7-curves/gcp-curve.ts';
import type { BetweenCurves } from '../asce-7-curves/gcp-rule.ts';
import type { RoofFigure } from '../asce-7-curves/roof-figure.ts';
import { asce7of2022 } from './edition.ts';

const zones = ['1', '2', '3'];
const positive = curve('published', [10, 0.7], [100, 0.3]);
const cites2F = citation(asce7of2022, 'Fig. 30.3-2F');

export const hip7to20: RoofFigure = {
  cites: citation(asce7of2022, 'Fig. 30.3-2E'),
  zones,
  positive,
  negative: {
    1: curve('published', [10, -1.8], [200, -0.8]),
    2: curve('published', [10, -2.4], [200, -1.3]),
    3: curve('published', [10, -2.6], [200, -1.4]),
  },
};

const f1 = curve('published', [10, -1.4], [100, -0.8]);
/** Zones 2 and 3 alike. */
const f2 = curve('published', [10, -2.0], [100, -1.0]);

export const hip20to27: RoofFigure = { cites: cites2F, zones, positive, negative: { 1: f1, 2: f2, 3: f2 } };

const bySlope = (atLow: GcpCurve, atHigh: GcpCurve): BetweenCurves => ({
  kind: 'between',
  by: 'theta',
  low: 27,
  atLow,
  lowCites: cites2F,
  high: 45,
  atHigh,
});

export const hip27to45: RoofFigure = {
  cites: citation(asce7of2022, 'Fig. 30.3-2G'),
  zones,
  positive,
  negative: {
    1: bySlope(f1, curve('published', [10, -1.5], [100, -0.7])),
    2: bySlope(f2, curve('published', [10, -1.8], [100, -0.8])),
    3: bySlope(f2, curve('published', [10, -2.4], [100, -1.0])),
  },
};
