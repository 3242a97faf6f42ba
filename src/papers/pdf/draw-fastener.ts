/** A screw or rivet drawn from its own measures: head, washer, shank, thread at its real pitch, point. */
import type { Rivet, Screw } from '../../shelf/item.ts';
import { BLUE, INK, PAPER, type Pen, type Spot } from './pen.ts';

export interface FastenerPlace {
  /** Axis, and the height on the page of the surface the head bears on. */
  readonly x: number;
  readonly surface: number;
  /** Points for an inch. */
  readonly scale: number;
}

/** Rubber of a bonded washer as drawn, in inches, pressed together (common practice: about 1/16). */
const RUBBER = 0.06;

export function drawScrew(pen: Pen, screw: Screw, at: FastenerPlace): void {
  const { x, surface, scale } = at;
  const y = (inches: number): number => surface + inches * scale;
  const root = (screw.rootDiameter / 2) * scale;
  const thread = (screw.diameter / 2) * scale;
  const threadFrom = screw.length - screw.threadLength;
  const threadTo = screw.length - screw.point.length;
  const shape = (points: readonly Spot[]) => {
    pen.fill([points], PAPER);
    pen.path(points, { width: 0.7 }, true);
  };
  shape([
    { x: x - root, y: y(0) },
    { x: x + root, y: y(0) },
    { x: x + root, y: y(threadTo) },
    ...tip(screw, x, root, y),
    { x: x - root, y: y(threadTo) },
  ]);
  const pitch = 1 / screw.threadsPerInch;
  const slant = pitch * 0.35;
  for (let d = Math.max(threadFrom, pitch / 2); d < threadTo - pitch * 0.2; d += pitch)
    pen.path(
      [
        { x: x - thread, y: y(d + slant) },
        { x: x + thread, y: y(d - slant) },
      ],
      { width: Math.min(1.3, Math.max(0.45, pitch * scale * 0.28)) },
    );
  head(pen, screw, at);
}

function tip(screw: Screw, x: number, root: number, y: (inches: number) => number): Spot[] {
  const { form } = screw.point;
  const end = screw.length;
  if (form !== 'drill') return [{ x, y: y(end) }];
  const shoulder = end - screw.rootDiameter * 0.4;
  return [
    { x: x + root * 0.82, y: y(end - screw.point.length * 0.95) },
    { x: x + root * 0.82, y: y(shoulder) },
    { x, y: y(end) },
    { x: x - root * 0.82, y: y(shoulder) },
    { x: x - root * 0.82, y: y(end - screw.point.length * 0.95) },
  ];
}

function head(pen: Pen, { head: { form, bearingDiameter, height }, washer }: Screw, at: FastenerPlace): void {
  const { x, scale } = at;
  const half = (bearingDiameter / 2) * scale;
  let base = at.surface;
  if (washer) base = bondedWasher(pen, washer, at);
  const top = base - height * scale;
  const fill = (points: readonly Spot[]) => {
    pen.fill([points], BLUE);
    pen.path(points, { width: 0.6 }, true);
  };
  if (form === 'hex washer') {
    const flange = base - Math.max(1.2, height * scale * 0.28);
    const hex = half * 0.62;
    fill([
      { x: x - half, y: base },
      { x: x + half, y: base },
      { x: x + half, y: flange },
      { x: x - half, y: flange },
    ]);
    fill([
      { x: x - hex, y: flange },
      { x: x + hex, y: flange },
      { x: x + hex, y: top },
      { x: x - hex, y: top },
    ]);
    return;
  }
  if (form === 'flat') {
    fill([
      { x: x - half, y: base },
      { x: x + half, y: base },
      { x: x + half * 0.35, y: base + height * scale },
      { x: x - half * 0.35, y: base + height * scale },
    ]);
    return;
  }
  const flat = form === 'pancake' || form === 'low profile' ? 0.75 : 0.5;
  fill([
    { x: x - half, y: base },
    { x: x + half, y: base },
    { x: x + half * 0.96, y: base - height * scale * 0.45 },
    { x: x + half * flat, y: top },
    { x: x - half * flat, y: top },
    { x: x - half * 0.96, y: base - height * scale * 0.45 },
  ]);
}

function bondedWasher(
  pen: Pen,
  washer: NonNullable<Screw['washer']>,
  { x, surface, scale }: FastenerPlace,
): number {
  const half = (washer.metalDiameter / 2) * scale;
  const rubber = washer.rubber === 'none' ? 0 : RUBBER * scale;
  const metal = Math.max(0.9, washer.metalThickness * scale);
  if (rubber > 0) pen.doc.rect(x - half * 0.97, surface - rubber, half * 1.94, rubber).fill(INK);
  pen.doc.rect(x - half, surface - rubber - metal, half * 2, metal).fill(BLUE);
  return surface - rubber - metal;
}

/** @param grip thickness gripped, in inches */
export function drawRivet(pen: Pen, rivet: Rivet, grip: number, { x, surface, scale }: FastenerPlace): void {
  const half = (rivet.diameter / 2) * scale;
  const head = (rivet.headDiameter / 2) * scale;
  const { doc } = pen;
  const below = surface + grip * scale;
  doc
    .lineWidth(0.7)
    .strokeColor(INK)
    .rect(x - half, surface, half * 2, grip * scale)
    .fillAndStroke(BLUE, INK);
  doc
    .moveTo(x - head, surface)
    .bezierCurveTo(
      x - head * 0.8,
      surface - head * 0.75,
      x + head * 0.8,
      surface - head * 0.75,
      x + head,
      surface,
    )
    .closePath()
    .fillAndStroke(BLUE, INK);
  doc
    .moveTo(x - half * 1.6, below)
    .lineTo(x + half * 1.6, below)
    .bezierCurveTo(
      x + half * 1.7,
      below + half * 2.6,
      x - half * 1.7,
      below + half * 2.6,
      x - half * 1.6,
      below,
    )
    .fillAndStroke(BLUE, INK);
}
