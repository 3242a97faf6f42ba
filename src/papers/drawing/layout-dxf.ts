/** The layout as a drawing file: real scale, in inches, one layer for each connection and zone. */
import type { Answer } from '../../answer/answer.ts';
import type { Ring } from '../../roof/point.ts';
import { clean } from '../clean-text.ts';
import { DxfNames, DxfWriter } from './dxf-writer.ts';
import { bordersOf, planBox, seamLines, supportSegments } from './plan-lines.ts';

const INK = 7;
const RED = 1;
const BLUE = 5;
const GREY = 8;

export function layoutDxf(answer: Answer): string {
  const dxf = new DxfWriter();
  const names = new DxfNames();
  const layer = (text: string, colour: number): string => {
    const name = names.of(text);
    dxf.layer(name, colour);
    return name;
  };
  zones(answer, dxf, layer);
  for (const { from, to } of seamLines(answer)) dxf.line(layer('SEAMS', GREY), from, to);
  for (const { from, to } of supportSegments(answer)) dxf.line(layer('SUPPORTS', GREY), from, to);
  for (const edge of bordersOf(answer)) dxf.line(layer(`EDGE ${edge.tag}`, INK), edge.from, edge.to);
  openings(answer, dxf, layer);
  fasteners(answer, dxf, layer);
  titles(answer, dxf, layer);
  const box = planBox(answer);
  return dxf.done({ x: box.left, y: box.bottom }, { x: box.right, y: box.top });
}

type Layer = (text: string, colour: number) => string;

function zones({ field }: Answer, dxf: DxfWriter, layer: Layer): void {
  for (const piece of field.pieces) {
    const name = layer(`ZONE ${field.zones[piece.index]?.label ?? ''}`, RED);
    for (const ring of piece.region) dxf.ring(name, ring);
  }
}

function openings({ roof }: Answer, dxf: DxfWriter, layer: Layer): void {
  for (const plane of roof.planes)
    for (const { name, ring } of plane.openings) {
      dxf.ring(layer('OPENINGS', RED), ring);
      const first = ring[0];
      if (first) dxf.text(layer('TEXT', INK), first, 6, clean(name));
    }
}

const square = (half: number): Ring => [
  { x: -half, y: -half },
  { x: half, y: -half },
  { x: half, y: half },
  { x: -half, y: half },
];
const diamond = (half: number): Ring => [
  { x: 0, y: -half },
  { x: half, y: 0 },
  { x: 0, y: half },
  { x: -half, y: 0 },
];

/** What stands at a place of each kind, in inches. */
const marks: Readonly<Record<'CLIP' | 'SCREW' | 'RIVET', readonly Ring[]>> = {
  CLIP: [square(1.5), square(0.5)],
  SCREW: [square(0.5)],
  RIVET: [diamond(0.5)],
};

function fasteners({ layout, choices }: Answer, dxf: DxfWriter, layer: Layer): void {
  for (const [name, rings] of Object.entries(marks)) dxf.block(name, rings);
  for (const set of layout) {
    const choice = choices.find((one) => one.connection.id === set.connection);
    const name = layer(`FASTENER ${set.connection}`, BLUE);
    const block = choice?.clip ? 'CLIP' : choice?.item?.kind === 'rivet' ? 'RIVET' : 'SCREW';
    for (let i = 0; i < set.count; i++) dxf.insert(name, block, set.x[i] as number, set.y[i] as number);
  }
}

function titles(answer: Answer, dxf: DxfWriter, layer: Layer): void {
  const { job, basis, shelf, count, field } = answer;
  const box = planBox(answer);
  const height = Math.max(4, (box.right - box.left) / 120);
  const lines = [
    `Deckbite  ${clean(job.name)}  ${clean(job.reference)}  revision ${job.revision}  ${job.date ?? ''}`,
    'Unit: inch. Plan view, real scale.',
    `${clean(field.cites)}, ${basis.method}; ${clean(shelf.name)}, edition ${shelf.edition}`,
    `${count.holds} hold, ${count.fallsShort} fall short, ${count.unproven} unproven`,
    'Local code, the building official and a licensed engineer decide. Not a fall-protection plan.',
  ];
  lines.forEach((text, i) => {
    dxf.text(layer('TEXT', INK), { x: box.left, y: box.bottom - height * 2 * (i + 2) }, height, text);
  });
}
