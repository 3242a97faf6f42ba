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
const LINES = 15;

/**
 * The middle of the longest free stretch of scan lines, level and upright, weighed by the room across it. A region
 * of several parts gets its label in the roomiest.
 */
export function labelPlace(region: Region): LabelPlace | undefined {
  if (region.length === 0 || areaOf(region) <= 0) return undefined;
  const points = region.flat();
  const [left, right] = [Math.min(...points.map((p) => p.x)), Math.max(...points.map((p) => p.x))];
  const [bottom, top] = [Math.min(...points.map((p) => p.y)), Math.max(...points.map((p) => p.y))];
  let best: LabelPlace | undefined;
  const consider = (at: Point): void => {
    const width = through(region, at, 'x', left, right);
    const height = through(region, at, 'y', bottom, top);
    if (width === undefined || height === undefined) return;
    if (!best || score(width, height) > score(best.width, best.height) * 1.001) best = { at, width, height };
  };
  for (let i = 1; i < LINES; i++) {
    const y = bottom + ((top - bottom) * i) / LINES;
    const x = left + ((right - left) * i) / LINES;
    for (const at of middles(region, { x: left, y }, { x: right, y })) consider(at);
    for (const at of middles(region, { x, y: bottom }, { x, y: top })) consider(at);
  }
  return best;
}

/** The narrow way counts most: a label has a height first, and then a length. */
const score = (width: number, height: number): number =>
  Math.min(width, height) * Math.min(width, height) * Math.max(width, height);

function middles(region: Region, from: Point, to: Point): Point[] {
  return clipSegment(region, from, to).map((part) => {
    const t = (part.from + part.to) / 2;
    return { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
  });
}

function through(region: Region, at: Point, way: 'x' | 'y', low: number, high: number): number | undefined {
  const [from, to] = [
    { ...at, [way]: low },
    { ...at, [way]: high },
  ];
  const length = high - low;
  const own = clipSegment(region, from, to).find(
    (part) => part.from * length + low <= at[way] && at[way] <= part.to * length + low,
  );
  return own ? (own.to - own.from) * length : undefined;
}
