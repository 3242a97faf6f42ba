/** Which zones an edge of a plane runs through, and for how long. */
import { clipSegment } from '../roof/clip-line.ts';
import { leftOf, minus, type Point, plus, unit } from '../roof/point.ts';
import type { Plane, RoofEdge } from '../roof/roof.ts';
import type { FieldPiece } from './pressure-field.ts';

export interface EdgeStretch {
  readonly zone: number;
  /** Along the edge as it lies on the roof, in inches from its start. */
  readonly from: number;
  readonly to: number;
}

/** Far enough inside to be clear of the border's own snapping, in inches. */
const INSIDE = 0.5;

/** @param inset of the line from the edge, in inches */
export function zonesAlong(
  edge: RoofEdge,
  plane: Plane,
  pieces: readonly FieldPiece[],
  inset = INSIDE,
): EdgeStretch[] {
  const [from, to] = shifted(edge.from, edge.to, inset);
  return pieces
    .filter((piece) => piece.plane === plane)
    .flatMap((piece) =>
      clipSegment(piece.region, from, to).map((part) => ({
        zone: piece.index,
        from: part.from * edge.length,
        to: part.to * edge.length,
      })),
    )
    .sort((a, b) => a.from - b.from);
}

/** A segment moved to its left, which is inward on a counter-clockwise outline. */
export function shifted(from: Point, to: Point, by: number): readonly [Point, Point] {
  const inward = leftOf(unit(minus(to, from)));
  return [plus(from, inward, by), plus(to, inward, by)];
}
