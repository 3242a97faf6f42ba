/** Rows across trim joints and end laps: one place each, with a set number of fasteners. */
import type { PieceMeal } from '../connections/connection.ts';
import { slopeFactor } from '../job/slope.ts';
import { fromFrame } from '../roof/frame.ts';
import type { Point } from '../roof/point.ts';
import type { Plane, RoofEdge } from '../roof/roof.ts';
import type { SupportLines } from '../roof/runs.ts';
import { zonesAlong } from '../site/edge-zones.ts';
import type { FieldPiece } from '../site/pressure-field.ts';
import { FastenerColumns, type FastenerSet } from './fastener-set.ts';
import { type PlaneZones, stretchesAt } from './line-stretches.ts';
import type { ZoneStretch } from './row-stretches.ts';

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

/** Sheets lap by this much at their ends (common practice at 3:12 and steeper; flatter roofs take more), in inches. */
const END_LAP = 6;

/** The middle of every run at every lap: as far up as the longest sheet reaches, and over a support where there are any. */
export function layEndLaps(
  connection: string,
  placement: EndLaps,
  plane: Plane,
  zones: PlaneZones,
  startOffset: number,
  supports: SupportLines | undefined,
): FastenerSet {
  const columns = new FastenerColumns();
  const factor = slopeFactor(plane.slope);
  const first = placement.pitch_in - (startOffset % placement.pitch_in);
  const middles = [first / 2];
  for (let u = first + placement.pitch_in / 2; u < zones.frame.width; u += placement.pitch_in)
    middles.push(u);
  const lines = supports === undefined ? [] : Array.from(supports.at, (v) => v * factor);
  for (const [line, u] of middles.entries())
    for (const run of stretchesAt(zones, u, factor, () => 1))
      for (const { at, zone } of lapsOf(run, placement.every_in, lines)) {
        const p = fromFrame(zones.frame, u, at / factor);
        columns.add(p.x, p.y, zone, placement.perPiece, line);
      }
  return columns.done(connection, plane.id);
}

/** From the low end up: each sheet as long as it may be, its upper lap moved down to the next support. */
function lapsOf(
  run: readonly ZoneStretch[],
  longest: number,
  supports: readonly number[],
): { at: number; zone: number }[] {
  const [start, end] = [(run[0] as ZoneStretch).from, (run.at(-1) as ZoneStretch).to];
  const laps: { at: number; zone: number }[] = [];
  let low = start;
  while (end - low > longest) {
    const reach = low + longest - END_LAP;
    const at = supports.findLast((line) => line <= reach && line > low + END_LAP) ?? reach;
    laps.push({ at, zone: run.find((part) => at <= part.to)?.zone ?? 0 });
    low = at;
  }
  return laps;
}
