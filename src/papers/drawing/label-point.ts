/** Where in a region a label has the most room. */
import { clipSegment } from '../../roof/clip-line.ts';
import { areaOf, type Point, type Region } from '../../roof/point.ts';

export interface LabelPlace {
  readonly at: Point;
  /** Free width and height of the region through the point. */
  readonly width: number;
  readonly height: number;
}

/** Scan lines tried each way: labels need no more. */
const LINES = 16;

/** The point of a grid that keeps farthest from the border, and among such the one midmost the longer way. */
export function labelPlace(region: Region): LabelPlace | undefined {
  if (region.length === 0 || areaOf(region) <= 0) return undefined;
  const points = region.flat();
  const [left, right] = [Math.min(...points.map((p) => p.x)), Math.max(...points.map((p) => p.x))];
  const [bottom, top] = [Math.min(...points.map((p) => p.y)), Math.max(...points.map((p) => p.y))];
  const box = { left, right, bottom, top };
  let best: (LabelPlace & { readonly score: number }) | undefined;
  for (let i = 1; i < LINES; i++) {
    const y = bottom + ((top - bottom) * i) / LINES;
    const x = left + ((right - left) * i) / LINES;
    const level = middles(region, { x: left, y }, { x: right, y });
    const upright = middles(region, { x, y: bottom }, { x, y: top });
    for (const at of [...level, ...upright]) {
      const place = placeAt(region, at, box);
      if (place && place.score > (best?.score ?? 0) * (1 + 1e-9)) best = place;
    }
  }
  return best;
}

function middles(region: Region, from: Point, to: Point): Point[] {
  return clipSegment(region, from, to).map((part) => {
    const t = (part.from + part.to) / 2;
    return { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
  });
}

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

function placeAt(region: Region, at: Point, { left, right, bottom, top }: Extent) {
  const level = around(region, { x: left, y: at.y }, { x: right, y: at.y }, at.x - left);
  const upright = around(region, { x: at.x, y: bottom }, { x: at.x, y: top }, at.y - bottom);
  if (!level || !upright) return undefined;
  const sides = [level.near, upright.near].sort((a, b) => a - b) as [number, number];
  return { at, width: level.length, height: upright.length, score: sides[0] + sides[1] / 100 };
}

/** The stretch of a scan line a point lies on, and how near the point is to an end of it. */
function around(region: Region, from: Point, to: Point, distance: number) {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const own = clipSegment(region, from, to).find(
    (part) => part.from * length <= distance && distance <= part.to * length,
  );
  if (!own) return undefined;
  const near = Math.min(distance - own.from * length, own.to * length - distance);
  return { length: (own.to - own.from) * length, near };
}
