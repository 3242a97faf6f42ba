/** Where a straight line lies inside a region. */
import { cross, minus, type Point, type Region, type Ring } from './point.ts';

/** Stretches shorter than this are dust, in inches. */
const SHORTEST = 1e-3;

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The stretches of the line u = constant inside a region given in the same axes, lowest first. */
export function clipUpLine(region: Region, u: number): Stretch[] {
  const crossings: number[] = [];
  for (const ring of region) {
    for (let i = 0; i < ring.length; i++) {
      const a = ring[i] as Point;
      const b = ring[i + 1 === ring.length ? 0 : i + 1] as Point;
      // Half-open rule: a corner exactly on the line counts once.
      if (a.x <= u === b.x <= u) continue;
      crossings.push(a.y + ((u - a.x) / (b.x - a.x)) * (b.y - a.y));
    }
  }
  return pairUp(crossings);
}

/** The stretches of a segment inside a region, as fractions of its length. */
export function clipSegment(region: Region, from: Point, to: Point): Stretch[] {
  const along = minus(to, from);
  const length = Math.hypot(along.x, along.y);
  // Turned so that the segment is an up-line: x is the distance off it, y the distance along it.
  const turn = (ring: Ring): Ring =>
    ring.map((p) => {
      const d = minus(p, from);
      return { x: -cross(along, d) / length, y: (d.x * along.x + d.y * along.y) / length };
    });
  return clipUpLine(region.map(turn), 0)
    .map(({ from: a, to: b }) => ({ from: Math.max(0, a) / length, to: Math.min(length, b) / length }))
    .filter(({ from: a, to: b }) => (b - a) * length > SHORTEST);
}

function pairUp(crossings: number[]): Stretch[] {
  crossings.sort((a, b) => a - b);
  const out: Stretch[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const [from, to] = [crossings[i] as number, crossings[i + 1] as number];
    if (to - from > SHORTEST) out.push({ from, to });
  }
  return out;
}
