/** A plane's own axes in plan: u along the eave, v up the slope, from its lowest left corner. */
import { dot, type Point, type Region } from './point.ts';
import type { Plane } from './roof.ts';

export interface Frame {
  readonly along: Point;
  readonly up: Point;
  readonly u0: number;
  readonly v0: number;
  /** Extent of the plane in its own axes, plan inches. */
  readonly width: number;
  readonly depth: number;
}

export function frameOf(plane: Pick<Plane, 'outline' | 'upslope'>): Frame {
  const up = plane.upslope;
  const along = { x: up.y, y: -up.x };
  const us = plane.outline.map((p) => dot(p, along));
  const vs = plane.outline.map((p) => dot(p, up));
  const [u0, v0] = [Math.min(...us), Math.min(...vs)];
  return { along, up, u0, v0, width: Math.max(...us) - u0, depth: Math.max(...vs) - v0 };
}

/** Plan region to the plane's axes. */
export function toFrame(frame: Frame, region: Region): Region {
  return region.map((ring) =>
    ring.map((p) => ({ x: dot(p, frame.along) - frame.u0, y: dot(p, frame.up) - frame.v0 })),
  );
}

/** A point in the plane's axes back to plan. */
export function fromFrame(frame: Frame, u: number, v: number): Point {
  const [a, b] = [u + frame.u0, v + frame.v0];
  return { x: a * frame.along.x + b * frame.up.x, y: a * frame.along.y + b * frame.up.y };
}
