/** Dimension lines of the plan, and text that can be read over hatching. */
import type { Point } from '../../roof/point.ts';
import { planBox } from '../drawing/plan-lines.ts';
import { planLength } from '../print-units.ts';
import { PAPER, type Pen, type Spot } from './pen.ts';
import type { Sheet } from './sheet.ts';

/** Centred text on a patch of paper, so that hatching does not run through it. */
export function halo(pen: Pen, text: string, x: number, baseline: number, size: number, bold: boolean): void {
  const type = { size, face: bold ? 'bold' : 'regular', align: 'center' } as const;
  const width = pen.width(text, type);
  pen.doc.rect(x - width / 2 - 1.2, baseline - size * 0.76, width + 2.4, size).fill(PAPER);
  pen.line(text, x, baseline, type);
}

/** Overall dimensions, left of the plan and below it. */
export function planDimensions({ pen, plan: { answer } }: Sheet, toPage: (p: Point) => Spot): void {
  const box = planBox(answer);
  const { units } = answer.job.print;
  const low = toPage({ x: box.left, y: box.bottom });
  const high = toPage({ x: box.right, y: box.top });
  const y = low.y + 19;
  const x = low.x - 19;
  const tick = (a: number, b: number) =>
    pen.path([
      { x: a - 2.5, y: b + 2.5 },
      { x: a + 2.5, y: b - 2.5 },
    ]);
  pen.path([
    { x: low.x, y },
    { x: high.x, y },
  ]);
  pen.path([
    { x, y: low.y },
    { x, y: high.y },
  ]);
  for (const [a, b] of [
    [low.x, y],
    [high.x, y],
    [x, low.y],
    [x, high.y],
  ] as const)
    tick(a, b);
  halo(pen, ` ${planLength(box.right - box.left, units)} `, (low.x + high.x) / 2, y + 2.8, 8, false);
  const middle = (low.y + high.y) / 2;
  pen.doc.save().rotate(-90, { origin: [x, middle] });
  halo(pen, ` ${planLength(box.top - box.bottom, units)} `, x, middle + 2.8, 8, false);
  pen.doc.restore();
}
