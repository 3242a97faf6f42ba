/** Lines of the plan that are not stored: seams, supports, borders. All from the engine's own geometry. */
import type { Answer } from '../../answer/answer.ts';
import { clipSegment } from '../../roof/clip-line.ts';
import { frameOf, fromFrame } from '../../roof/frame.ts';
import { type Point, plus } from '../../roof/point.ts';
import type { Plane, RoofEdge } from '../../roof/roof.ts';
import { supportLines, upLines } from '../../roof/runs.ts';

export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

export function seamLines({ roof, job: { panel } }: Answer): Segment[] {
  return roof.planes.flatMap((plane) => {
    const frame = frameOf(plane);
    return upLines(plane, panel.coverage, panel.startOffset).flatMap(({ u, stretches }) =>
      stretches.map(({ from, to }) => ({ from: fromFrame(frame, u, from), to: fromFrame(frame, u, to) })),
    );
  });
}

/** Purlins, battens and the like; a deck has none. */
export function supportSegments({ roof, job: { support } }: Answer): Segment[] {
  if (!('spacing' in support)) return [];
  return roof.planes.flatMap((plane) => {
    const lines = supportLines(plane, support.spacing, support.firstOffset, support.lastOffset);
    return lines ? [...lines.at].flatMap((v) => acrossPlane(plane, v)) : [];
  });
}

function acrossPlane(plane: Plane, v: number): Segment[] {
  const frame = frameOf(plane);
  const from = fromFrame(frame, -1, v);
  const to = fromFrame(frame, frame.width + 1, v);
  const along = { x: to.x - from.x, y: to.y - from.y };
  return clipSegment(plane.region, from, to).map((part) => ({
    from: plus(from, along, part.from),
    to: plus(from, along, part.to),
  }));
}

/** Every border once: a ridge, hip or valley is an edge of both its planes. */
export function bordersOf({ roof }: Answer): RoofEdge[] {
  const seen = new Set<string>();
  return roof.planes.flatMap((plane) =>
    plane.edges.filter((edge) => {
      const ends = [edge.from, edge.to].map((p) => `${Math.round(p.x)},${Math.round(p.y)}`).sort();
      const key = `${edge.tag} ${ends.join(' ')}`;
      return !seen.has(key) && seen.add(key);
    }),
  );
}

export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

export function planBox({ roof }: Answer): Box {
  const points = roof.planes.flatMap((plane) => plane.outline);
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}
