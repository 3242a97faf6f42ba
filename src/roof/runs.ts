/** Panel runs of a plane: the lines of their seams (or ribs) and the lines of the supports that cross them. */
import { slopeFactor } from '../job/slope.ts';
import { clipUpLine, type Stretch } from './clip-line.ts';
import { frameOf, toFrame } from './frame.ts';
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

/** Borders that run up the slope (rakes, sidewalls), each with a line a little inside it. */
export function borderLines(plane: Plane, inset: number): BorderLine[] {
  const frame = frameOf(plane);
  return plane.edges
    .filter(({ tag }) => tag === 'rake' || tag === 'sidewall')
    .flatMap(({ from, to }) => {
      const [[a, b] = []] = toFrame(frame, [[from, to]]);
      if (!a || !b || Math.abs(a.x - b.x) > 0.05) return [];
      // Counter-clockwise, a border that runs up the slope has the roof on its left.
      const inward = b.y > a.y ? -1 : 1;
      return [{ u: a.x + inward * inset, low: Math.min(a.y, b.y), high: Math.max(a.y, b.y) }];
    });
}

/** How many runs it takes to cover a plane, the last one ripped to width. */
export function runCount(plane: Plane, coverage: number, offset: number): number {
  const { width } = frameOf(plane);
  return Math.ceil((width + (offset % coverage)) / coverage - 1e-9);
}

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
  for (let d = firstOffset; d < last - 0.5; d += spacing) at.push(d);
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
