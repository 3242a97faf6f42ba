/** The roof's outer border as wind sees it: sides of the joined outline, without those that meet a wall. */

import { reentrantAt } from './build-plane.ts';
import { cross, distance, dot, minus, type Point, type Ring, sidesOf, signedArea, unit } from './point.ts';
import { unite } from './region.ts';
import type { OutsideEdge, Plane } from './roof.ts';

export function outsideEdges(planes: readonly Plane[]): OutsideEdge[] {
  const walls = planes.flatMap((plane) =>
    plane.edges.filter((edge) => edge.tag === 'headwall' || edge.tag === 'sidewall'),
  );
  const out: OutsideEdge[] = [];
  for (const ring of unite(planes.map((plane) => [plane.outline]))
    .filter((r) => signedArea(r) > 0)
    .map(withoutStraightCorners)) {
    const sides = sidesOf(ring);
    const open = sides.map(([a, b]) => !walls.some((wall) => onSegment(middle(a, b), wall.from, wall.to)));
    const first = out.length;
    const indices: number[] = [];
    sides.forEach((_, i) => {
      indices.push(open[i] ? first + indices.filter((n) => n >= 0).length : -1);
    });
    sides.forEach(([from, to], i) => {
      if (!open[i]) return;
      const next = indices[(i + 1) % sides.length] as number;
      out.push({
        from,
        to,
        reentrant: { from: reentrantAt(ring, i), to: reentrantAt(ring, (i + 1) % ring.length) },
        next: next >= 0 ? next : undefined,
      });
    });
  }
  return out;
}

/** Joined outlines keep corners that lie on a straight side; wind sees one edge there. */
function withoutStraightCorners(ring: Ring): Ring {
  return ring.filter((here, i) => {
    const before = ring[(i + ring.length - 1) % ring.length] as Point;
    const after = ring[(i + 1) % ring.length] as Point;
    return Math.abs(cross(unit(minus(here, before)), unit(minus(after, here)))) > 1e-4;
  });
}

const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

function onSegment(p: Point, a: Point, b: Point): boolean {
  const direction = unit(minus(b, a));
  const along = dot(minus(p, a), direction);
  return Math.abs(cross(direction, minus(p, a))) < 0.05 && along > -0.05 && along < distance(a, b) + 0.05;
}
