/** Sloped faces over a rectangle: the parts from which the short forms are put together. */
import type { WindShape } from '../job/roof-input.ts';
import { dot, type Point, type Ring } from './point.ts';

/** A sloped piece of roof. Its height over plan point p is base + rise · p, in inches. */
export interface Face {
  readonly ring: Ring;
  /** Gradient: points up the slope, its size is rise over run. */
  readonly rise: Point;
  readonly base: number;
  readonly shape: WindShape;
}

export const heightAt = (face: Pick<Face, 'rise' | 'base'>, p: Point): number =>
  face.base + dot(face.rise, p);

export interface Rectangle {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

type Direction = 'west' | 'east' | 'south' | 'north';

/** The plane rising from one side of a rectangle at the slope given. */
function risingFrom(side: Direction, r: Rectangle, slope: number): Pick<Face, 'rise' | 'base'> {
  if (side === 'south') return { rise: { x: 0, y: slope }, base: -slope * r.y0 };
  if (side === 'north') return { rise: { x: 0, y: -slope }, base: slope * r.y1 };
  if (side === 'west') return { rise: { x: slope, y: 0 }, base: -slope * r.x0 };
  return { rise: { x: -slope, y: 0 }, base: slope * r.x1 };
}

export function monoslopeFaces(r: Rectangle, slope: number): Face[] {
  return [{ ring: corners(r), ...risingFrom('south', r, slope), shape: 'monoslope' }];
}

const corners = (r: Rectangle): Ring => [
  { x: r.x0, y: r.y0 },
  { x: r.x1, y: r.y0 },
  { x: r.x1, y: r.y1 },
  { x: r.x0, y: r.y1 },
];

export interface Ends {
  readonly first: 'gable' | 'hip';
  readonly second: 'gable' | 'hip';
  /** Shape as wind sees it, where an end is hidden under another roof; else what the ends make it. */
  readonly shape?: WindShape;
}

/**
 * A ridged roof over a rectangle, equal slopes. The ridge runs along x or y; each end is a gable or a hip.
 * With hips at both ends of a square the ridge shrinks to a point.
 */
export function ridgedFaces(r: Rectangle, slope: number, ridge: 'x' | 'y', ends: Ends): Face[] {
  const alongX = ridge === 'x';
  const [u0, u1, v0, v1] = alongX ? [r.x0, r.x1, r.y0, r.y1] : [r.y0, r.y1, r.x0, r.x1];
  const half = (v1 - v0) / 2;
  const middle = v0 + half;
  const ridgeFrom = ends.first === 'hip' ? u0 + half : u0;
  const ridgeTo = ends.second === 'hip' ? u1 - half : u1;
  const at = (u: number, v: number): Point => (alongX ? { x: u, y: v } : { x: v, y: u });
  const sides: [Direction, Point[]][] = [
    [alongX ? 'south' : 'west', [at(u0, v0), at(u1, v0), at(ridgeTo, middle), at(ridgeFrom, middle)]],
    [alongX ? 'north' : 'east', [at(u1, v1), at(u0, v1), at(ridgeFrom, middle), at(ridgeTo, middle)]],
  ];
  if (ends.first === 'hip')
    sides.push([alongX ? 'west' : 'south', [at(u0, v1), at(u0, v0), at(ridgeFrom, middle)]]);
  if (ends.second === 'hip')
    sides.push([alongX ? 'east' : 'north', [at(u1, v0), at(u1, v1), at(ridgeTo, middle)]]);
  const shape = ends.shape ?? (ends.first === 'hip' || ends.second === 'hip' ? 'hip' : 'gable');
  return sides.map(([side, points]) => ({
    ring: counterClockwise(points),
    ...risingFrom(side, r, slope),
    shape,
  }));
}

function counterClockwise(points: readonly Point[]): Ring {
  const ring = points.filter((p, i) => {
    const before = points[(i + points.length - 1) % points.length] as Point;
    return Math.hypot(p.x - before.x, p.y - before.y) > 1e-9;
  });
  let twice = 0;
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length] as Point;
    twice += p.x * q.y - q.x * p.y;
  });
  return twice < 0 ? [...ring].reverse() : ring;
}
