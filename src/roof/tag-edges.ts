/** Finds what each side of each face is: eave, high edge, rake, ridge, hip or valley, from the faces alone. */
import type { EdgeTag } from '../job/roof-input.ts';
import { type Face, heightAt } from './face.ts';
import { cross, distance, dot, leftOf, minus, type Point, plus, type Ring, sidesOf, unit } from './point.ts';

/** How far beyond a side a neighbour is looked for, and how near a corner counts as on a side, in inches. */
const BESIDE = 0.5;
const ON_LINE = 0.02;
/** A side that climbs less than this from end to end is level; corners sit on a grid of 1/10000 in. */
const LEVEL = 0.004;

/** Each side broken where a corner of another face lies on it, so that one side has one neighbour. */
export function breakSides(ring: Ring, others: readonly Ring[]): Ring {
  const corners = others.flat();
  return sidesOf(ring).flatMap(([a, b]) => {
    const direction = unit(minus(b, a));
    const length = distance(a, b);
    const on = corners
      .map((p) => ({ p, along: dot(minus(p, a), direction), off: Math.abs(cross(direction, minus(p, a))) }))
      .filter(({ along, off }) => off < ON_LINE && along > ON_LINE && along < length - ON_LINE)
      .sort((p, q) => p.along - q.along);
    const points = [a];
    for (const { p } of on) if (distance(p, points.at(-1) as Point) > ON_LINE) points.push(p);
    return points;
  });
}

export function tagSide(face: Face, a: Point, b: Point, faces: readonly Face[]): EdgeTag {
  const direction = unit(minus(b, a));
  const inward = leftOf(direction);
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const beyond = plus(middle, inward, -BESIDE);
  const neighbour = faces.find((other) => other !== face && inside(other.ring, beyond));
  const level = Math.abs(dot(face.rise, minus(b, a))) < LEVEL;
  const risesInward = dot(face.rise, inward) > 0;
  if (!neighbour) return level ? (risesInward ? 'eave' : 'high edge') : 'rake';
  const falls = heightAt(neighbour, beyond) < heightAt(face, beyond) + 1e-9;
  if (!falls) return 'valley';
  return level && !risesInward ? 'ridge' : 'hip';
}

/** Even-odd test; a point on a side may fall either way. */
export function inside(ring: Ring, p: Point): boolean {
  let odd = false;
  for (const [a, b] of sidesOf(ring)) {
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) odd = !odd;
  }
  return odd;
}
