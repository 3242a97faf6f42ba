/** The chain of a connection: one ring for each link, its stroke as thick as what it has to spare. */
import type { LinkCheck } from '../../links/verdict.ts';
import { printer } from '../print-units.ts';
import { GREY, INK, RED, type Spot } from './pen.ts';
import type { Sheet } from './sheet.ts';
import { MARK_WIDTH, threadMark } from './thread-mark.ts';

const RING = 7.5;

/** Thickness of a ring: from a hair at ratio 1 to a bold one far below. */
const thickness = (ratio: number): number => 0.5 + 3.4 * Math.max(0, 1 - ratio);

/** @returns the y below the chain */
export function drawChain(
  sheet: Sheet,
  checks: readonly LinkCheck[],
  x: number,
  top: number,
  width: number,
): number {
  let y = top;
  checks.forEach((check, i) => {
    if (i > 0) joint(sheet, x + RING + 2, y);
    y = drawLink(sheet, check, x, y, width);
  });
  return y;
}

/** Rings hang in each other: a short bar between them. */
function joint({ pen }: Sheet, x: number, y: number): void {
  pen.path(
    [
      { x, y: y - 5.5 },
      { x, y: y + 3 },
    ],
    { color: GREY, width: 0.6 },
  );
}

function drawLink(sheet: Sheet, check: LinkCheck, x: number, top: number, width: number): number {
  const { pen, plan } = sheet;
  const { words, answer } = plan;
  const { capacity, demand, ratio, verdict } = check;
  const red = verdict === 'falls short';
  const color = red ? RED : INK;
  ring(sheet, check, x + RING + 2, top + RING + 3);
  const left = x + 2 * RING + 12;
  const right = x + width;
  const print = printer(answer.job.print.units);
  const kind = capacity.unit === 'lbf' ? 'force' : 'pressure';
  const numbers = [demand, capacity.value].map((value) =>
    value === undefined ? '?' : print.number(kind, value),
  );
  pen.line(words.link[capacity.link], left, top + 9, { size: 9, face: red ? 'bold' : 'regular', color });
  pen.line(ratio === undefined ? '–' : ratio.toFixed(2), right - MARK_WIDTH - 6, top + 9, {
    size: 9,
    align: 'right',
    face: red ? 'bold' : 'regular',
    color,
  });
  threadMark(pen, verdict, right - MARK_WIDTH, top + 6);
  const detail =
    capacity.because !== undefined
      ? capacity.because
      : `${numbers[0]} ${words.submittal.of} ${numbers[1]} ${print.unit(kind)}; ${words.evidence[capacity.evidence]}: ${capacity.cites}`;
  const below = pen.block(detail, left, top + 12, { width: right - left, size: 7, color: GREY, most: 3 });
  return Math.max(below, top + 2 * RING + 8) + 4;
}

function ring({ pen }: Sheet, { ratio, verdict }: LinkCheck, x: number, y: number): void {
  const { doc } = pen;
  doc.save();
  if (verdict === 'unproven' || ratio === undefined)
    doc.lineWidth(1.3).dash(1.4, { space: 2 }).strokeColor(INK).circle(x, y, RING).stroke();
  else if (verdict === 'falls short') {
    pen.path(arc(x - 1.3, y, 108, 252), { color: RED, width: 0.9 });
    pen.path(arc(x + 1.3, y, -72, 72), { color: RED, width: 0.9 });
  } else {
    const width = thickness(ratio);
    doc
      .lineWidth(width)
      .strokeColor(INK)
      .circle(x, y, RING - width / 2)
      .stroke();
  }
  doc.restore();
}

/** Part of a ring as a line of short steps, degrees counter-clockwise from the right. */
function arc(x: number, y: number, from: number, to: number): Spot[] {
  return Array.from({ length: 13 }, (_, i) => {
    const turn = ((from + ((to - from) * i) / 12) * Math.PI) / 180;
    return { x: x + RING * Math.cos(turn), y: y - RING * Math.sin(turn) };
  });
}
