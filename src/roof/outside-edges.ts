/** The roof's outer border as wind sees it: sides of the joined outline, without those that meet a wall. */

import { reentrantAt } from './build-plane.ts';
import { cross, distance, dot, minus, type Point, type Ring, sidesOf, signedArea, unit } from './point.ts';
import { unite } from './region.ts';
import type { OutsideEdge, Plane } from './roof.ts';
import { breakSides } from './tag-edges.ts';

interface Wall {
  readonly from: Point;
  readonly to: Point;
}

export function outsideEdges(planes: readonly Plane[]): OutsideEdge[] {
  const walls = planes.flatMap((plane) =>
    plane.edges.filter((edge) => edge.tag === 'headwall' || edge.tag === 'sidewall'),
  );
  const rings = unite(planes.map((plane) => [plane.outline])).filter((ring) => signedArea(ring) > 0);
  const out: OutsideEdge[] = [];
  for (const ring of rings) appendRing(ring, walls, out);
  return out;
}

/** Sides are broken where a wall begins or ends, sorted into open and walled, and only then straightened. */
function appendRing(ring: Ring, walls: readonly Wall[], out: OutsideEdge[]): void {
  const broken = breakSides(
    ring,
    walls.map(({ from, to }) => [from, to]),
  );
  const isOpen = (from: Point, to: Point) =>
    !walls.some((wall) => onSegment(middle(from, to), wall.from, wall.to));
  const openAt = sidesOf(broken).map(([from, to]) => isOpen(from, to));
  const kept = broken.filter(
    (_, i) => !isStraight(broken, i) || openAt[i] !== openAt[(i + broken.length - 1) % broken.length],
  );
  const sides = sidesOf(kept).map(([from, to], i) => ({
    from,
    to,
    open: isOpen(from, to),
    turns: reentrantAt(kept, i),
  }));
  const places = new Map<number, number>();
  for (const [i, side] of sides.entries()) if (side.open) places.set(i, out.length + places.size);
  for (const [i, { from, to, open, turns }] of sides.entries()) {
    if (!open) continue;
    const after = (i + 1) % sides.length;
    out.push({
      from,
      to,
      reentrant: { from: turns, to: sides[after]?.turns ?? false },
      next: places.get(after),
    });
  }
}

/** A corner on a straight side, as joined outlines keep them. */
function isStraight(ring: Ring, i: number): boolean {
  const here = ring[i] as Point;
  const before = ring[(i + ring.length - 1) % ring.length] as Point;
  const after = ring[(i + 1) % ring.length] as Point;
  return Math.abs(cross(unit(minus(here, before)), unit(minus(after, here)))) < 1e-4;
}

const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

function onSegment(p: Point, a: Point, b: Point): boolean {
  const direction = unit(minus(b, a));
  const along = dot(minus(p, a), direction);
  return Math.abs(cross(direction, minus(p, a))) < 0.05 && along > -0.05 && along < distance(a, b) + 0.05;
}
