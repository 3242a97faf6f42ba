/** The roof as the rest of the engine sees it: planes with tagged edges, and the measures wind needs. */
import type { EdgeTag, WindShape } from '../job/roof-input.ts';
import type { Point, Region, Ring } from './point.ts';

export interface RoofEdge {
  readonly tag: EdgeTag;
  readonly from: Point;
  readonly to: Point;
  /** Along the edge as it lies on the roof, in inches. */
  readonly length: number;
  /** Depth of the overhang at this edge, in plan inches; 0 where there is none. */
  readonly overhang: number;
  /** Whether the plane turns back at the start or the end of the edge (interior angle above 180°). */
  readonly reentrant: { readonly from: boolean; readonly to: boolean };
}

export interface Plane {
  readonly id: string;
  readonly outline: Ring;
  readonly openings: readonly { readonly name: string; readonly ring: Ring }[];
  /** Outline less openings, in plan. */
  readonly region: Region;
  readonly edges: readonly RoofEdge[];
  /** Rise over run. */
  readonly slope: number;
  /** Unit vector up the slope, in plan. */
  readonly upslope: Point;
  readonly shape: WindShape;
  readonly planArea_ft2: number;
  readonly slopeArea_ft2: number;
}

/** A stretch of the roof's outer border that wind sees as an edge, and whether the next one turns outward there. */
export interface OutsideEdge {
  readonly from: Point;
  readonly to: Point;
  readonly reentrant: { readonly from: boolean; readonly to: boolean };
  /** Index of the edge that starts where this one ends, or nothing when a wall is in between. */
  readonly next: number | undefined;
}

export interface Roof {
  readonly planes: readonly Plane[];
  readonly outside: readonly OutsideEdge[];
  /** Least horizontal dimension of the building without overhangs, in feet, and how it was taken. */
  readonly leastDimension_ft: number;
  /** Narrowest part of the building in feet: for height over least dimension, where the narrower is the severer. */
  readonly narrowest_ft: number;
  readonly eaveHeight_ft: number | undefined;
  readonly highestPoint_ft: number | undefined;
  /** Readings taken that a reader must know. */
  readonly readings: readonly string[];
}
