/** The layout as a picture to scale: the view box is in inches, north up. */

import type { Answer } from '../../answer/answer.ts';
import type { Region, Ring } from '../../roof/point.ts';
import { cut } from '../clean-text.ts';
import { type Hatch, zoneHatches } from '../hatch.ts';
import { zoneName } from '../words/terms.ts';
import { type Words, wordsOf } from '../words/words.ts';
import { labelPlace } from './label-point.ts';
import { type Box, bordersOf, planBox, seamLines, supportSegments } from './plan-lines.ts';
import { dimensions, over } from './svg-dimensions.ts';
import { fastenerGroups } from './svg-fasteners.ts';
import { element, escaped, label, n } from './svg-text.ts';
import { svgTitleBlock } from './svg-title-block.ts';

const INK = '#1c2733';
const BLUE = '#1f4e79';
/** Gap of the hatch lines against the size of text. */
const GRAIN = 0.6;

/** What every part of the drawing needs to know. */
interface Ground {
  readonly answer: Answer;
  readonly words: Words;
  readonly box: Box;
  /** Height of ordinary text, in inches on the roof. */
  readonly size: number;
  readonly flip: (y: number) => number;
}

export function layoutSvg(answer: Answer): string {
  const box = planBox(answer);
  const size = Math.max(box.right - box.left, box.top - box.bottom, 120) / 80;
  const flip = (y: number): number => box.top - y + size * 6;
  const ground: Ground = { answer, words: wordsOf(answer.job.print.language), box, size, flip };
  const [width, drawn] = [box.right - box.left, box.top - box.bottom];
  const block = svgTitleBlock(answer, ground.words, { x: box.left, y: drawn + size * 17, width, size });
  const view = [box.left - size * 4, 0, width + size * 8, drawn + size * 19 + block.height];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>\n',
    element(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        viewBox: view.map(n).join(' '),
        'font-family': 'Source Sans 3, Source Sans Pro, Helvetica, Arial, sans-serif',
        'font-size': size,
        fill: INK,
      },
      element('title', {}, escaped(cut(block.title, 120))),
      element(
        'defs',
        {},
        ...patterns(ground),
        element('rect', { id: 'f', width: side(ground), height: side(ground) }),
      ),
      element('rect', { x: view[0] ?? 0, y: 0, width: view[2] ?? 0, height: view[3] ?? 0, fill: '#fff' }),
      ...zoneShapes(ground),
      ...lines(ground),
      ...fastenerGroups(answer, flip, side(ground)),
      ...zoneLabels(ground),
      ...borderLabels(ground),
      ...dimensions(box, flip, size, answer.job.print.units),
      block.text,
    ),
    '\n',
  ].join('');
}

const side = ({ size }: Ground): number => size / 6;

function pathOf(region: Region, flip: (y: number) => number): string {
  const ring = (one: Ring) => `M${one.map((p) => `${n(p.x)} ${n(flip(p.y))}`).join('L')}Z`;
  return region.map(ring).join('');
}

/** One tile for each family of lines; a zone is filled once for each of its families. */
function patterns({ answer, size }: Ground): string[] {
  return zoneHatches(answer.field.zones).flatMap((hatch, zone) =>
    hatch.map(({ angle, gap }, i) =>
      element(
        'pattern',
        {
          id: `z${zone}-${i}`,
          patternUnits: 'userSpaceOnUse',
          width: gap * size * GRAIN,
          height: gap * size * GRAIN,
          patternTransform: `rotate(${-angle})`,
        },
        element('path', {
          d: `M0 ${n((gap * size * GRAIN) / 2)}h${n(gap * size * GRAIN)}`,
          stroke: INK,
          'stroke-width': size / 24,
        }),
      ),
    ),
  );
}

function zoneShapes({ answer, flip, size }: Ground): string[] {
  const hatches = zoneHatches(answer.field.zones);
  return answer.field.pieces.flatMap(({ index, region }) => {
    const d = pathOf(region, flip);
    const outline = element('path', { d, fill: 'none', stroke: INK, 'stroke-width': size / 30 });
    const fills = (hatches[index] as Hatch).map((_, i) =>
      element('path', { d, fill: `url(#z${index}-${i})`, 'fill-rule': 'evenodd' }),
    );
    return [...fills, outline];
  });
}

function lines({ answer, flip, size }: Ground): string[] {
  const d = (list: readonly { from: { x: number; y: number }; to: { x: number; y: number } }[]) =>
    list.map(({ from, to }) => `M${n(from.x)} ${n(flip(from.y))}L${n(to.x)} ${n(flip(to.y))}`).join('');
  const path = (data: string, stroke: string, width: number, dash?: string) =>
    data === ''
      ? []
      : [
          element('path', {
            d: data,
            fill: 'none',
            stroke,
            'stroke-width': width,
            ...(dash ? { 'stroke-dasharray': dash } : {}),
          }),
        ];
  const holes = answer.roof.planes.flatMap((plane) => plane.openings.map(({ ring }) => ring));
  return [
    ...path(d(seamLines(answer)), BLUE, size / 30),
    ...path(d(supportSegments(answer)), BLUE, size / 24, `${n(size)} ${n(size / 2)}`),
    ...path(d(bordersOf(answer)), INK, size / 8),
    ...holes.map((ring) =>
      element('path', { d: pathOf([ring], flip), fill: '#fff', stroke: INK, 'stroke-width': size / 12 }),
    ),
  ];
}

function zoneLabels({ answer, flip, size, words }: Ground): string[] {
  const named = answer.field.pieces.flatMap(({ index, region }) => {
    const text = zoneName(answer.field.zones[index], words);
    const long = text.length * size * 0.65;
    const place = labelPlace(region);
    if (!place || Math.min(place.width, place.height) < size * 1.1) return [];
    if (Math.max(place.width, place.height) < long) return [];
    const [x, y] = [place.at.x, flip(place.at.y)];
    const turned = place.width < long ? { transform: `rotate(-90 ${n(x)} ${n(y)})` } : {};
    return [label({ x, y, dy: size * 0.35, 'font-weight': '600', ...turned, ...over(size) }, text)];
  });
  const holes = answer.roof.planes.flatMap((plane) =>
    plane.openings.map(({ name, ring }) => {
      const x = ring.reduce((sum, p) => sum + p.x, 0) / ring.length;
      const y = ring.reduce((sum, p) => sum + p.y, 0) / ring.length;
      return label({ x, y: flip(y), 'font-size': size * 0.8, ...over(size) }, cut(name, 40));
    }),
  );
  return [...named, ...holes];
}

function borderLabels({ answer, flip, size, words }: Ground): string[] {
  return bordersOf(answer)
    .filter((edge) => edge.length > size * 8)
    .map(({ tag, from, to, length }) => {
      // Outlines run counter-clockwise: outside is to the right. A shared edge keeps its name on it.
      const inside = tag === 'ridge' || tag === 'hip' || tag === 'valley';
      const t = inside ? 0.36 : 0.5;
      const out = inside ? 0 : (size * 0.8) / length;
      const x = from.x + (to.x - from.x) * t + (to.y - from.y) * out;
      const y = flip(from.y + (to.y - from.y) * t - (to.x - from.x) * out);
      const turned = (Math.atan2(flip(to.y) - flip(from.y), to.x - from.x) * 180) / Math.PI;
      const upright = turned > 90 || turned <= -90 ? turned + 180 : turned;
      return label(
        {
          x,
          y,
          dy: size * 0.3,
          transform: `rotate(${n(upright)} ${n(x)} ${n(y)})`,
          'font-size': size * 0.9,
          ...over(size),
        },
        words.edge[tag],
      );
    });
}
