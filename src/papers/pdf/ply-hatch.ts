/** Each ply of a section with its own look: sheet metal solid blue, lumber grained, plywood in veneers, strands, foam. */
import type { Ply } from '../../connections/ply.ts';
import { BLUE, corners, GREY, INK, type Pen, type Spot } from './pen.ts';

export interface PlyBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function drawPly(pen: Pen, ply: Ply, box: PlyBox, known: boolean): void {
  const { doc } = pen;
  const ring = corners(box.x, box.y, box.width, box.height);
  if (ply.kind === 'sheet') {
    pen.fill([ring], ply.role === 'purlin' ? INK : BLUE);
    return;
  }
  doc.save();
  doc.rect(box.x, box.y, box.width, box.height).clip();
  if (ply.kind === 'soft') soft(pen, ply.role, box);
  else if (ply.product === 'plywood') veneers(pen, box);
  else if (ply.product === 'OSB') strands(pen, box);
  else grain(pen, box);
  doc.restore();
  pen.path(ring, known ? { width: 0.7 } : { width: 0.7, dash: [3, 2] }, true);
}

function soft(pen: Pen, role: 'underlayment' | 'insulation', box: PlyBox): void {
  if (role === 'underlayment') {
    pen.fill([corners(box.x, box.y, box.width, box.height)], GREY);
    return;
  }
  const step = Math.max(6, Math.min(12, box.height));
  for (let x = box.x - box.height; x < box.x + box.width + box.height; x += step) {
    const line = (from: Spot, to: Spot) => pen.path([from, to], { color: GREY, width: 0.3 });
    line({ x, y: box.y + box.height }, { x: x + box.height, y: box.y });
    line({ x, y: box.y }, { x: x + box.height, y: box.y + box.height });
  }
}

/** Five veneers, those across the cut dotted. */
function veneers(pen: Pen, { x, y, width, height }: PlyBox): void {
  const each = height / 5;
  for (let i = 1; i < 5; i++) pen.rule(x, y + i * each, width, { width: 0.4 });
  for (const i of [1, 3])
    for (let at = x + 3; at < x + width; at += 7)
      pen.path(
        [
          { x: at, y: y + i * each + each * 0.35 },
          { x: at + 2, y: y + i * each + each * 0.65 },
        ],
        { color: GREY, width: 0.35 },
      );
  for (const i of [0, 2, 4]) pen.rule(x, y + i * each + each / 2, width, { color: GREY, width: 0.25 });
}

/** Short strands in a fixed pattern that only looks like chance. */
function strands(pen: Pen, { x, y, width, height }: PlyBox): void {
  const step = 8;
  for (let row = 0; row * 4 < height; row++)
    for (let i = 0; i * step < width; i++) {
      const turn = (((row * 7 + i * 5) % 9) - 4) / 6;
      const at = { x: x + i * step + ((row * 3) % 5), y: y + row * 4 + 2 };
      pen.path(
        [
          { x: at.x, y: at.y - turn * 2 },
          { x: at.x + 5.5, y: at.y + turn * 2 },
        ],
        { color: GREY, width: 0.35 },
      );
    }
}

function grain(pen: Pen, { x, y, width, height }: PlyBox): void {
  const rows = Math.max(3, Math.round(height / 7));
  for (let row = 0; row < rows; row++) {
    const at = y + ((row + 0.5) * height) / rows;
    const wave = Array.from({ length: 13 }, (_, i) => ({
      x: x + (i * width) / 12,
      y: at + Math.sin(i * 0.9 + row * 1.7) * Math.min(1.4, height / rows / 3),
    }));
    pen.path(wave, { color: GREY, width: 0.35 });
  }
}
