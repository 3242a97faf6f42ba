/**
 * ASCE/SEI 7-22 Fig. 30.3-2B to 2D: (GCp) of gable roofs over 7 to 45 degrees, three zones. Published, identical to
 * the equations of commentary Tables C30.3. Overhangs by 30.7: roof plus wall.
 * The commentary prints −1.5 for the large-area end of zone 3 in 2C; the figure's −1.4 stands here.
 */
import { citation } from '../asce-7-curves/edition.ts';
import { curve } from '../asce-7-curves/gcp-curve.ts';
import type { RoofFigure } from '../asce-7-curves/roof-figure.ts';
import { asce7of2022 } from './edition.ts';

const zones = ['1', '2', '3'];
const positiveTo27 = curve('published', [10, 0.6], [200, 0.3]);

export const gable7to20: RoofFigure = {
  cites: citation(asce7of2022, 'Fig. 30.3-2B'),
  zones,
  positive: positiveTo27,
  negative: {
    1: curve('published', [10, -2.0], [300, -0.5]),
    2: curve('published', [10, -2.7], [200, -1.0]),
    3: curve('published', [10, -3.6], [100, -1.8]),
  },
};

export const gable20to27: RoofFigure = {
  cites: citation(asce7of2022, 'Fig. 30.3-2C'),
  zones,
  positive: positiveTo27,
  negative: {
    1: curve('published', [10, -1.5], [200, -0.8]),
    2: curve('published', [10, -2.5], [100, -1.2]),
    3: curve('published', [10, -3.0], [100, -1.4]),
  },
};

export const gable27to45: RoofFigure = {
  cites: citation(asce7of2022, 'Fig. 30.3-2D'),
  zones,
  positive: curve('published', [10, 0.9], [200, 0.5]),
  negative: {
    1: curve('published', [10, -1.8], [100, -0.8]),
    2: curve('published', [10, -2.0], [200, -1.0]),
    3: curve('published', [10, -2.5], [200, -1.0]),
  },
};
