/** Coefficients that are the same in 7-16 and 7-22: walls, low slope, monoslope, buildings over 60 ft. */
import { curve } from './gcp-curve.ts';
import type { RoofFigure } from './roof-figure.ts';

/**
 * Fig. 30.3-1, walls, h up to 60 ft, without the 10 % reduction at low slopes. Published. The positive curve lies above
 * that of buildings over 60 ft (recalled) and serves there too; their wall suction is more severe and not held here.
 */
export const walls = {
  positive: curve('published', [10, 1.0], [500, 0.7]),
  negative5: curve('published', [10, -1.4], [500, -0.8]),
} as const;

const lowSlopeOverhang1 = curve('published', [10, -1.7], [100, -1.6], [500, -1.0]);

/** Fig. 30.3-2A: flat, gable and hip up to 7 degrees, monoslope up to 3. Published, with its equations. */
export const lowSlopeFigure = (cites: string): RoofFigure => ({
  cites,
  zones: ["1'", '1', '2', '3'],
  positive: curve('published', [10, 0.3], [100, 0.2]),
  negative: {
    "1'": curve('published', [100, -0.9], [1000, -0.4]),
    1: curve('published', [10, -1.7], [500, -1.0]),
    2: curve('published', [10, -2.3], [500, -1.4]),
    3: curve('published', [10, -3.2], [500, -1.4]),
  },
  overhang: {
    cites,
    negative: {
      "1'": lowSlopeOverhang1,
      1: lowSlopeOverhang1,
      2: curve('published', [10, -2.3], [500, -1.1]),
      3: curve('published', [10, -3.2], [500, -1.1]),
    },
  },
  parapet: { negativeAs: { 3: '2' }, wallPositiveIn: ['2', '3'] },
});

/** Fig. 30.3-5A: monoslope over 3 to 10 degrees. Published, with its equations. No overhang curves. */
export const monoslopeTo10Figure = (cites: string): RoofFigure => ({
  cites,
  zones: ['1', '2', "2'", '3', "3'"],
  positive: curve('published', [10, 0.3], [100, 0.2]),
  negative: {
    1: curve('published', [10, -1.1]),
    2: curve('published', [10, -1.3], [100, -1.2]),
    "2'": curve('published', [10, -1.6], [100, -1.5]),
    3: curve('published', [10, -1.8], [100, -1.2]),
    "3'": curve('published', [10, -2.6], [100, -1.6]),
  },
});

/** Fig. 30.3-5B: monoslope over 10 to 30 degrees. Published in a worked example of the 7-22 guide. */
export const monoslopeTo30Figure = (cites: string): RoofFigure => ({
  cites,
  zones: ['1', '2', '3'],
  positive: curve('published', [10, 0.4], [100, 0.3]),
  negative: {
    1: curve('published', [10, -1.3], [100, -1.1]),
    2: curve('published', [10, -1.6], [100, -1.2]),
    3: curve('published', [10, -2.9], [100, -2.0]),
  },
});

/** h over 60 ft, low slope: 7-16 Fig. 30.5-1, 7-22 Fig. 30.4-1. Published. It has no positive roof curve. */
export const highBuildingFigure = (cites: string): RoofFigure => ({
  cites,
  zones: ['1', '2', '3'],
  negative: {
    1: curve('published', [10, -1.4], [500, -0.9]),
    2: curve('published', [10, -2.3], [500, -1.6]),
    3: curve('published', [10, -3.2], [500, -2.3]),
  },
  parapet: { negativeAs: { 3: '2' }, wallPositiveIn: [] },
});
