/** The three looks of a bonded washer: too loose, right, too tight. */
import { BLUE, corners, INK, type Pen, RED, type Spot } from '../pdf/pen.ts';

export type Look = 'under' | 'right' | 'over';

/** @param x middle @param panel height of the panel's upper face on the page */
export function washerLook(pen: Pen, look: Look, x: number, panel: number): void {
  const half = 30;
  const lift = look === 'under' ? 7 : 0;
  sheetLine(pen, look, x, panel);
  const rubber = look === 'over' ? 3 : look === 'right' ? 6 : 8;
  const base = panel - lift + (look === 'over' ? 3 : 0);
  const bulge = look === 'over' ? 9 : look === 'right' ? 2 : -2;
  pen.fill([rubberShape(x, base, half, rubber, bulge)], INK);
  const under = base - rubber;
  const dish = look === 'over' ? 5 : 0;
  pen.fill(
    [
      [
        { x: x - half, y: under - dish },
        { x: x - 12, y: under },
        { x: x + 12, y: under },
        { x: x + half, y: under - dish },
        { x: x + half, y: under - dish - 3 },
        { x: x + 12, y: under - 3 },
        { x: x - 12, y: under - 3 },
        { x: x - half, y: under - dish - 3 },
      ],
    ],
    BLUE,
  );
  const head = corners(x - 13, under - 17, 26, 14);
  pen.fill([head], '#ffffff');
  pen.path(head, { width: 1 }, true);
  pen.rule(x - 17, under - 3, 34, { width: 2.4 });
  shank(pen, x, panel);
  if (look !== 'right') cross(pen, x + half + 12, panel - 22);
  else tick(pen, x + half + 12, panel - 22);
}

/** The sheet, dimpled where the screw was driven too far. */
function sheetLine(pen: Pen, look: Look, x: number, panel: number): void {
  const dip = look === 'over' ? 4 : 0;
  pen.path(
    [
      { x: x - 58, y: panel + 1.2 },
      { x: x - 36, y: panel + 1.2 },
      { x: x - 14, y: panel + 1.2 + dip },
      { x: x + 14, y: panel + 1.2 + dip },
      { x: x + 36, y: panel + 1.2 },
      { x: x + 58, y: panel + 1.2 },
    ],
    { color: BLUE, width: 2.4 },
  );
}

function rubberShape(x: number, base: number, half: number, height: number, bulge: number): Spot[] {
  return [
    { x: x - half + 2, y: base },
    { x: x - half - bulge, y: base - height * 0.4 },
    { x: x - half, y: base - height },
    { x: x + half, y: base - height },
    { x: x + half + bulge, y: base - height * 0.4 },
    { x: x + half - 2, y: base },
  ];
}

function shank(pen: Pen, x: number, panel: number): void {
  pen.fill([corners(x - 5, panel + 2, 10, 20)], '#ffffff');
  pen.path(corners(x - 5, panel + 2, 10, 20), { width: 0.8 }, true);
  for (let y = panel + 6; y < panel + 22; y += 5)
    pen.path(
      [
        { x: x - 8, y: y + 1.5 },
        { x: x + 8, y: y - 1.5 },
      ],
      { width: 1.1 },
    );
}

function cross(pen: Pen, x: number, y: number): void {
  for (const turn of [1, -1])
    pen.path(
      [
        { x: x - 6, y: y - 6 * turn },
        { x: x + 6, y: y + 6 * turn },
      ],
      { color: RED, width: 2 },
    );
}

function tick(pen: Pen, x: number, y: number): void {
  pen.path(
    [
      { x: x - 6, y },
      { x: x - 2, y: y + 5 },
      { x: x + 7, y: y - 7 },
    ],
    { width: 2 },
  );
}
