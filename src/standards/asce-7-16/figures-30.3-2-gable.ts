/**
 * ASCE/SEI 7-16 Fig. 30.3-2B to 2D: (GCp) of gable roofs over 7 to 45 degrees, six zones. Overhang values hold top and
 * bottom together. 2B and 2D published, with plateaus met by RAS 127-20; 2C from one copy, plateaus published.
 */
import { citation } from '../asce-7-curves/edition.ts';
import { curve, doubtful, type GcpCurve } from '../asce-7-curves/gcp-curve.ts';
import type { RoofFigure } from '../asce-7-curves/roof-figure.ts';
import { asce7of2016 } from './edition.ts';

const cited = (figure: string): string => citation(asce7of2016, `Fig. ${figure}`);

const positiveTo27 = curve('published', [2, 0.7], [100, 0.3]);
const zonesTo27 = ['1', '2e', '2n', '2r', '3e', '3r'];

// Zones 2B: 1 and 2e alike; 2n, 2r and 3e alike.
const b1 = curve('published', [20, -2.0], [100, -0.5]);
const b2 = curve('published', [10, -3.0], [250, -1.0]);
const b1Overhang = curve('published', [20, -2.5], [100, -1.5]);
const b2Overhang = curve('published', [10, -3.5], [250, -2.0]);
const b3Doubt =
  'overhang zones 3e and 3r: two readings of the figure, at most 0.12 apart up to 100 ft²; above it the more negative holds';
const b3Overhang = (
  points: readonly [number, number],
  other: readonly [number, number],
  start: number,
): GcpCurve => ({
  ...doubtful(curve('one copy', [10, start], points), b3Doubt),
  secondReading: { above: 100, points: [[10, start], other] },
});

export const gable7to20: RoofFigure = {
  cites: cited('30.3-2B'),
  zones: zonesTo27,
  positive: positiveTo27,
  negative: {
    1: b1,
    '2e': b1,
    '2n': b2,
    '2r': b2,
    '3e': b2,
    '3r': curve('published', [10, -3.6], [100, -1.8]),
  },
  overhang: {
    cites: cited('30.3-2B'),
    negative: {
      1: b1Overhang,
      '2e': b1Overhang,
      '2n': b2Overhang,
      '2r': b2Overhang,
      '3e': b3Overhang([250, -1.5], [100, -2.3], -4.1),
      '3r': b3Overhang([100, -2.3], [250, -1.5], -4.7),
    },
  },
};

const c1 = curve('one copy', [20, -1.5], [300, -0.8]);
const c2 = curve('one copy', [10, -2.5], [150, -1.2]);
const c1Overhang = doubtful(
  curve('one copy', [20, -2.0], [350, -1.8]),
  'end area read as 300 or 350 ft²; 350 is taken, the more negative between',
);
const c2Overhang = curve('one copy', [10, -3.0], [150, -2.2]);
// Held against the 7-22 figure, which starts at 10 ft²: its zone 3 is −3.0 there, this curve gives −2.95.
const c3rDoubt = 'zone 3r: the area at which the plateau ends (4 ft²) has low confidence';

export const gable20to27: RoofFigure = {
  cites: cited('30.3-2C'),
  zones: zonesTo27,
  positive: curve('one copy', [2, 0.7], [100, 0.3]),
  negative: {
    1: c1,
    '2e': c1,
    '2n': c2,
    '2r': c2,
    '3e': c2,
    '3r': doubtful(curve('one copy', [4, -3.6], [50, -1.8]), c3rDoubt),
  },
  overhang: {
    cites: cited('30.3-2C'),
    negative: {
      1: c1Overhang,
      '2e': c1Overhang,
      '2n': c2Overhang,
      '2r': c2Overhang,
      '3e': curve('one copy', [10, -3.6], [150, -1.7]),
      '3r': doubtful(
        curve('one copy', [4, -4.7], [50, -2.4]),
        `${c3rDoubt}; large-area end read as −2.4 or −2.3, −2.4 is taken`,
      ),
    },
  },
};

const d1 = curve('published', [10, -1.8], [100, -0.8]);
const d2 = curve('published', [10, -2.0], [200, -1.0]);
const d1Overhang = curve('published', [10, -2.6], [100, -1.6]);
const d2Overhang = curve('published', [10, -2.8], [200, -1.8]);

export const gable27to45: RoofFigure = {
  cites: cited('30.3-2D'),
  zones: ['1', '2e', '2r', '2n', '3r', '3e'],
  positive: curve('published', [10, 0.9], [100, 0.5]),
  negative: {
    1: d1,
    '2e': d1,
    '2r': d1,
    '2n': d2,
    '3r': d2,
    '3e': curve('published', [2, -3.2], [300, -1.0]),
  },
  overhang: {
    cites: cited('30.3-2D'),
    negative: {
      1: d1Overhang,
      '2e': d1Overhang,
      '2r': d1Overhang,
      '2n': d2Overhang,
      '3r': d2Overhang,
      '3e': curve('published', [2, -4.0], [300, -1.8]),
    },
  },
};
