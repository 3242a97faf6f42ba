/** The section of a connection, to scale from its plies: what the head bears on, what the thread holds in. */
import type { ConnectionChoice } from '../../choose/schedule.ts';
import { stackAbove } from '../../connections/ply.ts';
import { seatedThread } from '../../links/seating.ts';
import { printer } from '../print-units.ts';
import { plyName } from '../words/terms.ts';
import { drawRivet, drawScrew } from './draw-fastener.ts';
import { BLUE, GREY, type Pen, RED } from './pen.ts';
import { drawPly } from './ply-hatch.ts';
import { headHeight, headWidth, type Layer, layersOf, tipOf } from './section-layers.ts';
import type { Sheet } from './sheet.ts';

export interface SectionPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Scales of the drawing, largest first; points for an inch. */
const scales = [8, 6, 5, 4, 3, 2.5, 2, 1.5, 1, 0.75, 0.5, 0.25].map((ratio) => ({
  ratio,
  points: ratio * 72,
}));
/** Sheets thinner than this on the page would not show, in points. */
const THINNEST = 1.1;
const LABELS = 112;

/** Draws the section and gives back the words for its scale. */
export function drawSection(sheet: Sheet, choice: ConnectionChoice, place: SectionPlace): string {
  const { pen, plan } = sheet;
  const layers = layersOf(choice);
  const head = headHeight(choice);
  const tip = tipOf(choice);
  const depth = Math.max(tip, layers.at(-1)?.to ?? 0);
  const wide = (headWidth(choice) * 1.6 + 0.3) as number;
  const room = { width: place.width - LABELS, height: place.height - 20 };
  const fits = scales.find(
    ({ points }) => (head + depth) * points <= room.height && wide * points <= room.width,
  );
  const { ratio, points: scale } = fits ?? { ratio: 0, points: room.height / (head + depth) };
  const surface = place.y + 14 + head * scale + Math.max(0, (room.height - (head + depth) * scale) / 3);
  const axis = place.x + room.width * 0.5;
  const width = room.width - 14;
  for (const layer of layers) {
    const y = surface + layer.from * scale;
    const height = Math.max(THINNEST, (layer.to - layer.from) * scale);
    drawPly(pen, layer.ply, { x: axis - width / 2, y, width, height }, layer.known);
    if (layer.broken) breakLine(pen, axis - width / 2, y + height, width);
  }
  if (choice.clip) upstand(pen, axis, surface, width);
  if (choice.item?.kind === 'screw') drawScrew(pen, choice.item, { x: axis, surface, scale });
  else if (choice.item) drawRivet(pen, choice.item, layers.at(-1)?.to ?? 0, { x: axis, surface, scale });
  labels(sheet, layers, { x: axis + width / 2, surface, scale, right: place.x + place.width });
  if (choice.item?.kind === 'screw')
    threadDimension(sheet, choice, { x: axis - width / 2, axis, surface, scale });
  return plan.words.submittal.drawn(
    ratio >= 1 ? `${ratio} : 1` : ratio > 0 ? `1 : ${Math.round(10 / ratio) / 10}` : '',
  );
}

/** Where lumber or foam goes on below the drawing. */
function breakLine(pen: Pen, x: number, y: number, width: number): void {
  pen.doc.rect(x - 1, y - 0.8, width + 2, 4).fill('#ffffff');
  const points = [0, 0.44, 0.47, 0.53, 0.56, 1].map((t, i) => ({
    x: x + t * width,
    y: y + (i === 2 ? -3 : i === 3 ? 3 : 0),
  }));
  pen.path(points, { width: 0.5 });
}

/** The leg of a clip that goes up into the seam, drawn beside the screw: its height is not to scale. */
function upstand(pen: Pen, axis: number, surface: number, width: number): void {
  const x = axis + width * 0.36;
  const top = surface - 26;
  pen.path(
    [
      { x, y: surface },
      { x, y: top },
    ],
    { color: BLUE, width: 2 },
  );
  pen.path(
    [
      { x: x - 4, y: top + 7 },
      { x: x - 4, y: top },
      { x: x + 4, y: top },
      { x: x + 4, y: surface - 1 },
    ],
    { width: 0.8 },
  );
}

interface LabelPlace {
  readonly x: number;
  readonly surface: number;
  readonly scale: number;
  readonly right: number;
}

/** Names of the plies at the right, pushed apart where plies are thin, each tied to its ply by a leader. */
function labels(
  { pen, plan }: Sheet,
  layers: readonly Layer[],
  { x, surface, scale, right }: LabelPlace,
): void {
  const print = printer(plan.answer.job.print.units);
  const block = { width: right - x - 16, size: 7.5, color: GREY, most: 2 };
  let lowest = Number.NEGATIVE_INFINITY;
  for (const { ply, from, to, known } of layers) {
    const middle = surface + ((from + to) / 2) * scale;
    const size = known ? print.short('thickness', ply.thickness_in ?? 0) : plan.words.submittal.notKnown;
    const text = `${plyName(ply.name, plan.words)}, ${size}`;
    const height = pen.heightOf(text, block);
    const top = Math.max(middle - height / 2, lowest);
    pen.block(text, x + 16, top, block);
    pen.path(
      [
        { x: x + 1, y: middle },
        { x: x + 8, y: top + height / 2 },
        { x: x + 14, y: top + height / 2 },
      ],
      { color: GREY, width: 0.4 },
    );
    lowest = top + height + 1.5;
  }
}

interface DimensionPlace {
  readonly x: number;
  readonly axis: number;
  readonly surface: number;
  readonly scale: number;
}

/** The length of thread that holds, in red: the engine's own reading of it. */
function threadDimension(
  { pen, plan }: Sheet,
  { item, connection }: ConnectionChoice,
  place: DimensionPlace,
): void {
  const { buildUp } = connection;
  const ply = buildUp.plies[buildUp.holding];
  const stack = stackAbove(buildUp);
  if (item?.kind !== 'screw' || stack === undefined || ply?.thickness_in === undefined) return;
  const held = seatedThread(item, stack, ply.thickness_in);
  if (held <= 0) return;
  const top = place.surface + Math.max(stack, item.length - item.threadLength) * place.scale;
  const bottom = top + held * place.scale;
  const half = (item.diameter / 2) * place.scale;
  const x = place.axis - half - 9;
  const stroke = { color: RED, width: 0.7 };
  pen.path(
    [
      { x, y: top },
      { x, y: bottom },
    ],
    stroke,
  );
  for (const y of [top, bottom]) pen.rule(x - 3, y, 6 + (place.axis - half - 2 - x - 3), stroke);
  const text = plan.words.submittal.threadHolds(
    // In a sheet with the decimals of its thickness, so that the two can be compared.
    printer(plan.answer.job.print.units).short(ply.kind === 'sheet' ? 'thickness' : 'size', held),
  );
  const width = pen.width(text, { size: 7.5, face: 'bold' });
  const left = Math.max(place.x + 2, x - 4 - width);
  // Beside a thick ply, below a thin sheet: never over what it measures.
  const baseline = held * place.scale < 12 ? bottom + 11 : (top + bottom) / 2 + 2.6;
  pen.doc.rect(left - 2, baseline - 7, width + 4, 9.4).fill('#ffffff');
  pen.line(text, left, baseline, { size: 7.5, face: 'bold', color: RED });
}
