/** The roof in plan: hatched zones with their names, borders, seams, openings, overall dimensions, fasteners. */

import type { FastenerSet } from '../../layout/fastener-set.ts';
import type { Point, Ring } from '../../roof/point.ts';
import { type LabelPlace, labelPlace } from '../drawing/label-point.ts';
import { bordersOf, planBox, seamLines, supportSegments } from '../drawing/plan-lines.ts';
import { zoneHatches } from '../hatch.ts';
import { zoneName } from '../words/terms.ts';
import { BLUE, FAINT, INK, PAPER, type Pen, type Spot } from './pen.ts';
import { halo, planDimensions } from './plan-dimensions.ts';
import type { Sheet } from './sheet.ts';

export interface PlanOptions {
  /** The drawing's place and greatest size. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Size of the names of zones. */
  readonly size: number;
  readonly sets: readonly FastenerSet[];
  readonly lines: boolean;
  /** What stands in a zone, in place of its name. */
  readonly textOf?: (zone: number) => readonly string[];
  readonly edges: boolean;
}

/** Grain of the hatches, in points. */
const GRAIN = 5.5;
/** Left and below for the dimensions. */
const MARGIN = 30;

export interface PlanPlace {
  readonly toPage: (p: Point) => Spot;
  readonly scale: number;
  readonly bottom: number;
}

export function roofPlan(sheet: Sheet, options: PlanOptions): PlanPlace {
  const { answer } = sheet.plan;
  const box = planBox(answer);
  const scale = Math.min(
    (options.width - MARGIN - 12) / (box.right - box.left),
    (options.height - MARGIN - 11) / (box.top - box.bottom),
  );
  const drawn = (box.right - box.left) * scale;
  const left = options.x + MARGIN + (options.width - MARGIN - 12 - drawn) / 2;
  const top = options.y + 11;
  const toPage = (p: Point): Spot => ({
    x: left + (p.x - box.left) * scale,
    y: top + (box.top - p.y) * scale,
  });
  const place: PlanPlace = { toPage, scale, bottom: top + (box.top - box.bottom) * scale + MARGIN };
  zones(sheet, place);
  if (options.lines) segments(sheet, place);
  openings(sheet, place);
  fasteners(sheet.pen, place, options.sets);
  borders(sheet, place, options);
  zoneNames(sheet, place, options);
  planDimensions(sheet, place.toPage);
  return place;
}

const onPage = (ring: Ring, { toPage }: PlanPlace): Spot[] => ring.map(toPage);

function zones({ pen, plan: { answer } }: Sheet, place: PlanPlace): void {
  const hatches = zoneHatches(answer.field.zones);
  for (const { index, region } of answer.field.pieces) {
    const rings = region.map((ring) => onPage(ring, place));
    pen.hatch(rings, hatches[index] ?? [], GRAIN, { width: 0.3 });
    for (const ring of rings) pen.path(ring, { width: 0.35 }, true);
  }
}

function segments({ pen, plan: { answer } }: Sheet, place: PlanPlace): void {
  for (const { from, to } of seamLines(answer))
    pen.path([place.toPage(from), place.toPage(to)], { color: BLUE, width: 0.2 });
  for (const { from, to } of supportSegments(answer))
    pen.path([place.toPage(from), place.toPage(to)], { color: BLUE, width: 0.3, dash: [3, 1.5] });
}

function openings({ pen, plan: { answer } }: Sheet, place: PlanPlace): void {
  for (const plane of answer.roof.planes)
    for (const { ring, name } of plane.openings) {
      const page = onPage(ring, place);
      pen.fill([page], PAPER);
      pen.path(page, { width: 0.7 }, true);
      const [a, , c] = page;
      if (!a || !c) continue;
      pen.path([a, c], { color: FAINT, width: 0.3 });
      const width = Math.abs(c.x - a.x);
      const text = pen.lines(name, { width: Math.max(40, width), size: 6, most: 1 })[0] ?? '';
      halo(pen, text, (a.x + c.x) / 2, (a.y + c.y) / 2 + 2, 6, false);
    }
}

function fasteners(pen: Pen, place: PlanPlace, sets: readonly FastenerSet[]): void {
  const half = 0.55;
  const { doc } = pen;
  for (const set of sets) {
    for (let i = 0; i < set.count; i++) {
      const p = place.toPage({ x: set.x[i] as number, y: set.y[i] as number });
      doc.rect(p.x - half, p.y - half, 2 * half, 2 * half);
    }
    if (set.count > 0) doc.fill(INK);
  }
}

function borders({ pen, plan: { answer, words } }: Sheet, place: PlanPlace, { edges }: PlanOptions): void {
  for (const { tag, from, to, length } of bordersOf(answer)) {
    const [a, b] = [place.toPage(from), place.toPage(to)];
    pen.path([a, b], { width: 1.1 });
    const name = words.edge[tag];
    if (!edges || length * place.scale < pen.width(name, { size: 7 }) * 2) continue;
    turnedText(pen, name, a, b, shared.has(tag));
  }
}

/** Edges with roof on both sides. */
const shared: ReadonlySet<string> = new Set(['ridge', 'hip', 'valley']);

/** Along a line, never upside down: on it where roof lies on both sides, outside the roof elsewhere. */
function turnedText(pen: Pen, text: string, a: Spot, b: Spot, inside: boolean): void {
  const size = 7;
  const t = inside ? 0.36 : 0.5;
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  // Outlines run counter-clockwise in plan: outside is to the right, which on the page is this way.
  const out = inside ? 0 : 6 / length;
  const middle = {
    x: a.x + (b.x - a.x) * t - (b.y - a.y) * out,
    y: a.y + (b.y - a.y) * t + (b.x - a.x) * out,
  };
  const turn = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  const upright = turn > 89.9 ? turn - 180 : turn <= -90.1 ? turn + 180 : turn;
  pen.doc.save().rotate(upright, { origin: [middle.x, middle.y] });
  halo(pen, text, middle.x, middle.y + size * 0.33, size, false);
  pen.doc.restore();
}

function zoneNames(
  { pen, plan: { answer, words } }: Sheet,
  place: PlanPlace,
  { size, textOf }: PlanOptions,
): void {
  for (const { index, region } of answer.field.pieces) {
    const spot = labelPlace(region);
    if (!spot) continue;
    const name = [zoneName(answer.field.zones[index], words)];
    const full = textOf?.(index) ?? name;
    // Where the whole does not fit, the name alone may.
    if (!drawName(pen, place, spot, full, size) && full !== name) drawName(pen, place, spot, name, size);
  }
}

function drawName(
  pen: Pen,
  place: PlanPlace,
  spot: LabelPlace,
  texts: readonly string[],
  size: number,
): boolean {
  const width = Math.max(...texts.map((text) => pen.width(text, { size, face: 'bold' }))) + 4;
  const height = texts.length * size * 1.05;
  const [free, high] = [spot.width * place.scale, spot.height * place.scale];
  const turned = free < width || (high > free * 3 && free < width * 2 && high > width);
  const [along, across] = turned ? [high, free] : [free, high];
  if (along < width || across < height * 0.9) return false;
  const at = place.toPage(spot.at);
  pen.doc.save();
  if (turned) pen.doc.rotate(-90, { origin: [at.x, at.y] });
  texts.forEach((text, i) => {
    halo(pen, text, at.x, at.y + size * 0.35 + (i - (texts.length - 1) / 2) * size * 1.05, size, true);
  });
  pen.doc.restore();
  return true;
}
