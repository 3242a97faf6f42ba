/** Dimension lines and scale bar of the picture to scale. */
import { planLength } from '../print-units.ts';
import type { Box } from './plan-lines.ts';
import { element, label, n } from './svg-text.ts';

const INK = '#1c2733';

/** Text with a halo of paper, so that it can be read over hatching. */
export const over = (size: number) => ({
  'text-anchor': 'middle',
  stroke: '#fff',
  'stroke-width': size / 3,
  'paint-order': 'stroke',
});

/** Overall dimensions of the plan, and a scale bar. */
export function dimensions(
  box: Box,
  flip: (y: number) => number,
  size: number,
  units: 'US' | 'SI',
): string[] {
  const below = flip(box.bottom) + size * 3;
  const beside = box.left - size * 2.4;
  const stroke = { stroke: INK, 'stroke-width': size / 20, fill: 'none' };
  const middle = (flip(box.top) + flip(box.bottom)) / 2;
  return [
    element('path', { d: `M${n(box.left)} ${n(below)}H${n(box.right)}`, ...stroke }),
    element('path', { d: `M${n(beside)} ${n(flip(box.top))}V${n(flip(box.bottom))}`, ...stroke }),
    ...[
      [box.left, below],
      [box.right, below],
      [beside, flip(box.top)],
      [beside, flip(box.bottom)],
    ].map(([x = 0, y = 0]) =>
      element('path', {
        d: `M${n(x - size / 2)} ${n(y + size / 2)}L${n(x + size / 2)} ${n(y - size / 2)}`,
        ...stroke,
      }),
    ),
    label(
      { x: (box.left + box.right) / 2, y: below, dy: size * 0.35, ...over(size) },
      planLength(box.right - box.left, units),
    ),
    label(
      {
        x: beside,
        y: middle,
        dy: size * 0.35,
        transform: `rotate(-90 ${n(beside)} ${n(middle)})`,
        ...over(size),
      },
      planLength(box.top - box.bottom, units),
    ),
    ...scaleBar(box.left, below + size * 3, size, units),
  ];
}

/** A bar of ten feet or of three metres, for whoever prints it at another scale. */
function scaleBar(x: number, y: number, size: number, units: 'US' | 'SI'): string[] {
  const unit = units === 'US' ? 12 : 1000 / 25.4;
  const parts = units === 'US' ? 10 : 3;
  const bars = Array.from({ length: parts }, (_, i) =>
    element('rect', {
      x: x + i * unit,
      y,
      width: unit,
      height: size / 2,
      fill: i % 2 === 0 ? INK : '#fff',
      stroke: INK,
      'stroke-width': size / 24,
    }),
  );
  return [...bars, label({ x: x + parts * unit + size, y: y + size / 2 }, units === 'US' ? '10 ft' : '3 m')];
}
