/** Fasteners of trims: rows along the edges of a plane, inside the border by a fixed distance. */
import type { Point } from '../roof/point.ts';
import type { Plane, RoofEdge } from '../roof/roof.ts';
import { shifted, zonesAlong } from '../site/edge-zones.ts';
import type { FieldPiece } from '../site/pressure-field.ts';
import { FastenerColumns, type FastenerSet } from './fastener-set.ts';
import { placeRow } from './place-row.ts';
import type { ZoneStretch } from './row-stretches.ts';

/** Between rows, in inches (common practice). */
const ROW_GAP = 3;
/** Rows of two edges meet at a corner; heads nearer than this would stand on each other, in inches. */
const HEADS_APART = 1;
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
  /** Of the first row from the edge, in inches. */
  readonly inset: number;
}

export function layEdges(order: EdgeOrder): FastenerSet {
  const columns = new FastenerColumns();
  for (const [line, edge] of order.edges.entries())
    for (let row = 0; row < order.rows; row++)
      layRow(order, edge, line, order.inset + row * ROW_GAP, columns);
  return columns.done(order.connection, order.plane.id);
}

/** One row at its own distance from the edge: where it leaves the roof or meets an opening, it ends and begins anew. */
function layRow(
  order: EdgeOrder,
  edge: RoofEdge,
  line: number,
  inset: number,
  columns: FastenerColumns,
): void {
  const [from, to] = shifted(edge.from, edge.to, inset);
  const zones = zonesAlong(edge, order.plane, order.pieces, inset).map((part) => ({
    ...part,
    spacing: order.spacingOf(part.zone),
  }));
  for (const stretches of uninterrupted(zones)) {
    const length = (stretches.at(-1) as ZoneStretch).to - (stretches[0] as ZoneStretch).from;
    const end = Math.min(END, length / 4);
    placeRow(stretches, { first: end, last: end }, (at, zone) => {
      const p = between(from, to, at / edge.length);
      if (columns.isNear(p.x, p.y, HEADS_APART)) return;
      columns.add(p.x, p.y, zone, order.each, line);
    });
  }
}

const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** Snapping leaves hairline gaps between zones; a wider one is an opening or the end of the plane. */
const HAIRLINE = 0.05;

function uninterrupted(stretches: readonly ZoneStretch[]): ZoneStretch[][] {
  const rows: ZoneStretch[][] = [];
  for (const stretch of stretches) {
    const row = rows.at(-1);
    const before = row?.at(-1);
    if (row && before && stretch.from - before.to <= HAIRLINE) row.push({ ...stretch, from: before.to });
    else rows.push([{ ...stretch }]);
  }
  return rows;
}
