/** A strip along an edge: all points of the plan within a distance of it, on its inner side. */
import { distance, leftOf, minus, type Point, plus, type Region, unit } from './point.ts';

export interface Strip {
  readonly from: Point;
  readonly to: Point;
  readonly reentrant: { readonly from: boolean; readonly to: boolean };
}

/**
 * The strip of one edge. Where the outline turns back at an end, the strip runs on by its own width, so that
 * the corner is covered by a square rather than by an arc: the conservative reading.
 */
export function stripOf(edge: Strip, width: number): Region {
  if (!(width > 0) || distance(edge.from, edge.to) < 1e-9) return [];
  const direction = unit(minus(edge.to, edge.from));
  const inward = leftOf(direction);
  const from = plus(edge.from, direction, edge.reentrant.from ? -width : 0);
  const to = plus(edge.to, direction, edge.reentrant.to ? width : 0);
  return [[from, to, plus(to, inward, width), plus(from, inward, width)]];
}
