/** Panel runs of a plane: the lines of their seams (or ribs) and the lines of the supports that cross them. */
import { slopeFactor } from '../job/slope.ts';
import { clipUpLine, type Stretch } from './clip-line.ts';
import { frameOf, toFrame } from './frame.ts';
import { sidesOf } from './point.ts';
import type { Plane } from './roof.ts';

/** One line up the slope, with the stretches of it that lie on the roof, in plan inches from the plane's low side. */
export interface UpLine {
  readonly u: number;
  readonly stretches: readonly Stretch[];
}

/** Keeps a seam that falls exactly on the left or right border off it: a border has its trim, not a seam. */
const BORDER = 0.25;

/**
 * Lines at a pitch, from the left border: the first at pitch less the offset (the width cut off the first run).
 * @param pitch run coverage, or rib spacing
 */
export function upLines(plane: Plane, pitch: number, offset: number): UpLine[] {
  const frame = frameOf(plane);
  const region = toFrame(frame, plane.region);
  const lines: UpLine[] = [];
  for (let u = pitch - (offset % pitch); u < frame.width - BORDER; u += pitch) {
    if (u < BORDER) continue;
    const stretches = clipUpLine(region, u);
    if (stretches.length > 0) lines.push({ u, stretches });
  }
  return lines;
}

/** A line along a side border of a plane, where the outer edge of the first or last run is held. */
export interface BorderLine {
  readonly u: number;
  /** Reach of the border, in plan inches from the low side of the plane. */
  readonly low: number;
  readonly high: number;
}

/** A drawn rake may lean by this much over its length and still be held by a straight line along it, in inches. */
const LEAN = 6;

/** Borders that run up the slope (rakes, sidewalls, sides of openings), each with a line a little inside the roof. */
export function borderLines(plane: Plane, inset: number): BorderLine[] {
  const frame = frameOf(plane);
  const sides = plane.edges
    .filter(({ tag }) => tag === 'rake' || tag === 'sidewall')
    .map(({ from, to }) => [from, to]);
  // An opening runs counter-clockwise too: turned about, its sides have the roof on their left as those of the plane.
  const holes = plane.openings.flatMap(({ ring }) => sidesOf(ring).map(([a, b]) => [b, a]));
  const lines = [...sides, ...holes].flatMap((side) => {
    const [[a, b] = []] = toFrame(frame, [side]);
    if (!a || !b || Math.abs(a.x - b.x) > LEAN || Math.abs(a.y - b.y) < Math.abs(a.x - b.x)) return [];
    const rises = b.y > a.y;
    const u = rises ? Math.min(a.x, b.x) - inset : Math.max(a.x, b.x) + inset;
    return [{ u, low: Math.min(a.y, b.y), high: Math.max(a.y, b.y) }];
  });
  return joined(lines);
}

/** A border drawn in several sides is one line: the rows of its parts would stand double where they meet. */
function joined(lines: readonly BorderLine[]): BorderLine[] {
  const list: { u: number; low: number; high: number }[] = [];
  for (const line of [...lines].sort((a, b) => a.u - b.u || a.low - b.low)) {
    const before = list.at(-1);
    if (before && line.u - before.u < 0.5 && line.low - before.high < 1)
      before.high = Math.max(before.high, line.high);
    else list.push({ ...line });
  }
  return list;
}

/** How many runs it takes to cover a plane, the last one ripped to width. */
export function runCount(plane: Plane, coverage: number, offset: number): number {
  const { width } = frameOf(plane);
  return Math.ceil((width + (offset % coverage)) / coverage - 1e-9);
}

/** Two purlins nearer than this are one: the last gap is then that much wider, and its tributary length says so. */
const NEAREST = 6;

export interface SupportLines {
  /** Plan distances from the plane's low side. */
  readonly at: Float64Array;
  /** Largest tributary length of one line, along the slope. */
  readonly tributary: number;
  /** How far a run may reach past its last line before that line's tributary length is more than the largest. */
  readonly overEnd: number;
}

/**
 * Lines of purlins or battens: first, last, and between them at the spacing given; the last gap is what is left.
 * Nothing when the lines do not fit the plane.
 */
export function supportLines(
  plane: Plane,
  spacing: number,
  firstOffset: number,
  lastOffset: number,
): SupportLines | undefined {
  const factor = slopeFactor(plane.slope);
  const depth = frameOf(plane).depth * factor;
  const last = depth - lastOffset;
  if (firstOffset > last) return undefined;
  const at: number[] = [];
  for (let d = firstOffset; d < last - NEAREST; d += spacing) at.push(d);
  at.push(last);
  const tributary = Math.max(
    ...at.map((d, i) => {
      const below = i === 0 ? d : (d - (at[i - 1] as number)) / 2;
      const above = i === at.length - 1 ? lastOffset : ((at[i + 1] as number) - d) / 2;
      return below + above;
    }),
  );
  return {
    at: Float64Array.from(at, (d) => d / factor),
    tributary,
    overEnd: Math.max(tributary - spacing / 2, firstOffset, lastOffset),
  };
}
