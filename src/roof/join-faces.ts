/**
 * Two roofs of equal slope over overlapping rectangles become one: at every place the higher one shows.
 * All faces are planes, so the border of "higher" is a straight line and each pair is settled by one half-plane.
 */
import { type Face, heightAt } from './face.ts';
import {
  areaOf,
  cross,
  distance,
  dot,
  minus,
  type Point,
  type Region,
  type Ring,
  signedArea,
  unit,
} from './point.ts';
import { intersect, subtract, unite } from './region.ts';

/** Slivers below this are snapping dust of the clipping grid, in square inches. */
const DUST = 1;
/** Far enough to cover any roof, in inches. */
const FAR = 4e6;

export function joinFaces(main: readonly Face[], wing: readonly Face[]): Face[] {
  const pieces = [
    ...main.map((face) => ({ face, region: showing(face, wing, 'ties win') })),
    ...wing.map((face) => ({ face, region: showing(face, main, 'ties lose') })),
  ];
  return mergeCoplanar(pieces);
}

function showing(face: Face, others: readonly Face[], ties: 'ties win' | 'ties lose'): Region {
  return others.reduce<Region>(
    (left, other) => subtract(left, intersect([other.ring], whereHigher(other, face, ties === 'ties lose'))),
    [face.ring],
  );
}

/** The half-plane where `a` lies above `b`; where they coincide, everywhere or nowhere. */
function whereHigher(a: Face, b: Face, coincident: boolean): Region {
  const slope = minus(a.rise, b.rise);
  const base = a.base - b.base;
  const size = Math.hypot(slope.x, slope.y);
  if (size < 1e-9)
    return base > 1e-6 || (coincident && base > -1e-6) ? [square({ x: 0, y: 0 }, { x: 1, y: 0 })] : [];
  const direction = { x: slope.x / size, y: slope.y / size };
  const onLine = { x: (-base / size) * direction.x, y: (-base / size) * direction.y };
  return [square({ x: onLine.x + direction.x * FAR, y: onLine.y + direction.y * FAR }, direction)];
}

const square = (centre: Point, u: Point): Point[] =>
  [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([s = 0, t = 0]) => ({
    x: centre.x + FAR * (s * u.x - t * u.y),
    y: centre.y + FAR * (s * u.y + t * u.x),
  }));

function mergeCoplanar(pieces: readonly { readonly face: Face; readonly region: Region }[]): Face[] {
  const groups = new Map<string, { face: Face; regions: Region[] }>();
  for (const { face, region } of pieces) {
    if (areaOf(region) < DUST) continue;
    const key = [face.rise.x, face.rise.y, heightAt(face, { x: 0, y: 0 })]
      .map((n) => (Math.round(n * 1e4) || 0).toString())
      .join(' ');
    const group = groups.get(key);
    if (group) group.regions.push(region);
    else groups.set(key, { face, regions: [region] });
  }
  return [...groups.values()].flatMap(({ face, regions }) =>
    unite(regions)
      .filter((ring) => signedArea(ring) > DUST)
      .map((ring) => ({ ...face, ring: cleaned(ring) })),
  );
}

/** Corners nearer to each other than this are one corner, torn apart by the clipping grid, in inches. */
const NEAR = 0.05;

/**
 * Where faces only touch, clipping leaves hairline sides and spikes that run out and back. A hairline would be tagged
 * a rake and get wind zones of its own; a spike a hip and a valley that are not there.
 */
function cleaned(ring: Ring): Ring {
  const kept = ring.filter((here, i) => {
    const before = ring[(i + ring.length - 1) % ring.length] as Point;
    const after = ring[(i + 1) % ring.length] as Point;
    return distance(here, after) > NEAR && !isSpike(before, here, after);
  });
  return kept.length === ring.length ? kept : cleaned(kept);
}

function isSpike(before: Point, here: Point, after: Point): boolean {
  if (distance(before, here) <= NEAR || distance(here, after) <= NEAR) return false;
  const [out, back] = [unit(minus(here, before)), unit(minus(after, here))];
  return dot(out, back) < 0 && Math.abs(cross(out, back)) < 1e-3;
}
