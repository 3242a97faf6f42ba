/** Rows across trim joints and end laps: one place each, with a set number of fasteners. */
import type { PieceMeal } from '../connections/connection.ts';
import { slopeFactor } from '../job/slope.ts';
import { clipUpLine } from '../roof/clip-line.ts';
import { fromFrame } from '../roof/frame.ts';
import type { Point } from '../roof/point.ts';
import type { Plane, RoofEdge } from '../roof/roof.ts';
import { zonesAlong } from '../site/edge-zones.ts';
import type { FieldPiece } from '../site/pressure-field.ts';
import { FastenerColumns, type FastenerSet } from './fastener-set.ts';
import type { PlaneZones } from './line-stretches.ts';

type TrimJoints = Extract<PieceMeal, { by: 'trim joints' }>;
type EndLaps = Extract<PieceMeal, { by: 'end laps' }>;

/** Pieces of trim lap by this much, in inches. */
const LAP = 4;

/** Joints along each trimmed edge: each piece covers its length less one lap; the last is what is left. */
export function layTrimJoints(
  connection: string,
  placement: TrimJoints,
  plane: Plane,
  pieces: readonly FieldPiece[],
): FastenerSet {
  const columns = new FastenerColumns();
  const edges = plane.edges.filter((edge) => placement.tags.includes(edge.tag));
  for (const [line, edge] of edges.entries()) {
    const zones = zonesAlong(edge, plane, pieces);
    const covered = placement.every_in - LAP;
    for (let at = covered; at < edge.length - LAP - 1e-6; at += covered) {
      const zone = zones.find(({ from, to }) => at >= from && at <= to)?.zone ?? zones[0]?.zone ?? 0;
      const p = onEdge(edge, at / edge.length);
      columns.add(p.x, p.y, zone, placement.perPiece, line);
    }
  }
  return columns.done(connection, plane.id);
}

const onEdge = ({ from, to }: RoofEdge, t: number): Point => ({
  x: from.x + (to.x - from.x) * t,
  y: from.y + (to.y - from.y) * t,
});

/** The middle of every run at every lap that lies on the roof. */
export function layEndLaps(
  connection: string,
  placement: EndLaps,
  plane: Plane,
  zones: PlaneZones,
  startOffset: number,
): FastenerSet {
  const columns = new FastenerColumns();
  const factor = slopeFactor(plane.slope);
  const first = placement.pitch_in - (startOffset % placement.pitch_in);
  const middles = [first / 2];
  for (let u = first + placement.pitch_in / 2; u < zones.frame.width; u += placement.pitch_in)
    middles.push(u);
  for (const [line, u] of middles.entries())
    for (const piece of zones.pieces) {
      if (u < piece.low || u > piece.high) continue;
      for (const { from, to } of clipUpLine(piece.region, u))
        for (
          let at = Math.ceil((from * factor) / placement.every_in) * placement.every_in;
          at < to * factor;
          at += placement.every_in
        ) {
          if (at === 0) continue;
          const p = fromFrame(zones.frame, u, at / factor);
          columns.add(p.x, p.y, piece.zone, placement.perPiece, line);
        }
    }
  return columns.done(connection, plane.id);
}
