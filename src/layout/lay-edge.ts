/** Fasteners of trims: rows along the edges of a plane, inside the border by a fixed distance. */
import type { Point } from '../roof/point.ts';
import type { Plane, RoofEdge } from '../roof/roof.ts';
import { shifted, zonesAlong } from '../site/edge-zones.ts';
import type { FieldPiece } from '../site/pressure-field.ts';
import { FastenerColumns, type FastenerSet } from './fastener-set.ts';
import { placeRow } from './place-row.ts';
import type { ZoneStretch } from './row-stretches.ts';

/** Of the first row from the edge and between rows, in inches (common practice). */
const FIRST_ROW = 1.5;
const ROW_GAP = 3;
/** Of the first and last fastener from the ends of the edge, in inches. */
const END = 1.5;

export interface EdgeOrder {
  readonly connection: string;
  readonly plane: Plane;
  readonly pieces: readonly FieldPiece[];
  readonly edges: readonly RoofEdge[];
  readonly rows: number;
  readonly spacingOf: (zone: number) => number;
  readonly each: number;
}

export function layEdges(order: EdgeOrder): FastenerSet {
  const columns = new FastenerColumns();
  for (const [line, edge] of order.edges.entries()) {
    const stretches = touching(
      zonesAlong(edge, order.plane, order.pieces).map((part) => ({
        ...part,
        spacing: order.spacingOf(part.zone),
      })),
    );
    if (stretches.length === 0) continue;
    const end = Math.min(END, edge.length / 4);
    for (let row = 0; row < order.rows; row++) {
      const [from, to] = shifted(edge.from, edge.to, FIRST_ROW + row * ROW_GAP);
      placeRow(stretches, { first: end, last: end }, (at, zone) => {
        const p = between(from, to, at / edge.length);
        columns.add(p.x, p.y, zone, order.each, line);
      });
    }
  }
  return columns.done(order.connection, order.plane.id);
}

const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** Snapping leaves hairline gaps between zones along an edge; a row does not stop at them. */
function touching(stretches: readonly ZoneStretch[]): ZoneStretch[] {
  return stretches.map((stretch, i) => {
    const before = stretches[i - 1];
    return before ? { ...stretch, from: before.to } : { ...stretch };
  });
}
