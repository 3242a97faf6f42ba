/** Verdict marks: a short piece of thread, whole, broken and offset, or dotted. Never colour alone. */
import type { Verdict } from '../../links/verdict.ts';
import { INK, type Pen, RED, type Spot } from './pen.ts';

/** Width of a mark at the ordinary size, in points. */
export const MARK_WIDTH = 17;
const TEETH = 3;

/** @param x left end @param y middle line @param quiet the mark only explains, nothing falls short: no red */
export function threadMark(
  pen: Pen,
  verdict: Verdict,
  x: number,
  y: number,
  width = MARK_WIDTH,
  quiet = false,
): void {
  const points = zigzag(x, y, width);
  const stroke = { color: verdict === 'falls short' && !quiet ? RED : INK, width: width / 13 };
  if (verdict === 'holds') pen.path(points, stroke);
  else if (verdict === 'unproven') dotted(pen, points, width);
  else {
    const middle = points.length >> 1;
    const offset = width / 10;
    pen.path(
      points.slice(0, middle).map((p) => ({ x: p.x - width / 20, y: p.y - offset })),
      stroke,
    );
    pen.path(
      points.slice(middle + 1).map((p) => ({ x: p.x + width / 20, y: p.y + offset })),
      stroke,
    );
  }
}

function zigzag(x: number, y: number, width: number): Spot[] {
  const step = width / (TEETH * 2);
  const high = width / 8;
  return Array.from({ length: TEETH * 2 + 1 }, (_, i) => ({
    x: x + i * step,
    y: y + (i % 2 === 0 ? high : -high),
  }));
}

function dotted(pen: Pen, points: readonly Spot[], width: number): void {
  const size = width / 26;
  points.forEach((p, i) => {
    const next = points[i + 1];
    pen.doc.circle(p.x, p.y, size).fill(INK);
    if (next) pen.doc.circle((p.x + next.x) / 2, (p.y + next.y) / 2, size).fill(INK);
  });
}
