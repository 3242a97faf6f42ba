/** One plane from its outline, tags and slope: edge lengths on the slope, areas, openings cut out. */
import type { EdgeTag, WindShape } from '../job/roof-input.ts';
import { slopeFactor } from '../job/slope.ts';
import { areaOf, cross, dot, minus, type Point, type Ring, sidesOf } from './point.ts';
import { subtract } from './region.ts';
import type { Plane, RoofEdge } from './roof.ts';

export interface PlaneDescription {
  readonly id: string;
  readonly outline: Ring;
  readonly tags: readonly EdgeTag[];
  readonly slope: number;
  readonly upslope: Point;
  readonly shape: WindShape;
  readonly overhang: { readonly eave: number; readonly rake: number };
  readonly openings: readonly { readonly name: string; readonly ring: Ring }[];
}

const SQUARE_INCHES = 144;

export function buildPlane({ tags, overhang, openings, ...plane }: PlaneDescription): Plane {
  const region =
    openings.length === 0
      ? [plane.outline]
      : subtract(
          [plane.outline],
          openings.map(({ ring }) => ring),
        );
  const planArea = areaOf(region) / SQUARE_INCHES;
  const turns = plane.outline.map((_, i) => reentrantAt(plane.outline, i));
  const edges = sidesOf(plane.outline).map(([from, to], i): RoofEdge => {
    const tag = tags[i] as EdgeTag;
    return {
      tag,
      from,
      to,
      length: lengthOnSlope(from, to, plane.slope, plane.upslope),
      overhang: tag === 'eave' || tag === 'high edge' ? overhang.eave : tag === 'rake' ? overhang.rake : 0,
      reentrant: { from: turns[i] as boolean, to: turns[(i + 1) % turns.length] as boolean },
    };
  });
  return {
    ...plane,
    openings,
    region,
    edges,
    planArea_ft2: planArea,
    slopeArea_ft2: planArea * slopeFactor(plane.slope),
  };
}

/** Length of a plan segment as it lies on the slope. */
export function lengthOnSlope(from: Point, to: Point, slope: number, upslope: Point): number {
  const along = minus(to, from);
  const up = dot(along, upslope);
  return Math.sqrt(dot(along, along) + (up * slope) ** 2);
}

export function reentrantAt(ring: Ring, i: number): boolean {
  const before = ring[(i + ring.length - 1) % ring.length] as Point;
  const here = ring[i] as Point;
  const after = ring[(i + 1) % ring.length] as Point;
  return cross(minus(here, before), minus(after, here)) < -1e-9;
}
