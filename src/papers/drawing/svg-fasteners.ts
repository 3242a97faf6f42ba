/** Fasteners of a layout in SVG: single squares while they are few, one path for each connection when they are many. */
import type { Answer } from '../../answer/answer.ts';
import { element, n } from './svg-text.ts';

/** Above this a browser has more trouble with the elements than with the drawing. */
export const MOST_SINGLE = 20_000;
/** Above this, coordinates are rounded to the inch, so that the file stays below about 8 MB. */
const MOST_FINE = 500_000;

/** @param flip plan y to drawing y @param side of a square, in inches */
export function fastenerGroups(answer: Answer, flip: (y: number) => number, side: number): string[] {
  const total = answer.layout.reduce((sum, set) => sum + set.count, 0);
  const single = total <= MOST_SINGLE;
  const grain = total > MOST_FINE ? 1 : 10;
  return answer.choices.flatMap(({ connection }) => {
    const sets = answer.layout.filter((set) => set.connection === connection.id);
    const count = sets.reduce((sum, set) => sum + set.count, 0);
    if (count === 0) return [];
    const marks = single ? squares(sets, flip, side) : onePath(sets, flip, side, grain);
    return [
      element(
        'g',
        { class: 'fasteners', 'data-connection': connection.id, 'data-count': String(count) },
        ...marks,
      ),
    ];
  });
}

type Sets = Answer['layout'];

function squares(sets: Sets, flip: (y: number) => number, side: number): string[] {
  const list: string[] = [];
  for (const set of sets)
    for (let i = 0; i < set.count; i++)
      list.push(
        `<use href="#f" x="${n((set.x[i] as number) - side / 2)}" y="${n(flip(set.y[i] as number) - side / 2)}"/>`,
      );
  return list;
}

/** Strokes of no length with square ends, each given by its step from the one before: 8 to 12 bytes a fastener. */
function onePath(sets: Sets, flip: (y: number) => number, side: number, grain: number): string[] {
  let [x, y] = [0, 0];
  const steps: string[] = [];
  for (const set of sets)
    for (let i = 0; i < set.count; i++) {
      const nextX = Math.round((set.x[i] as number) * grain);
      const nextY = Math.round(flip(set.y[i] as number) * grain);
      steps.push(`m${(nextX - x) / grain} ${(nextY - y) / grain}h0`);
      [x, y] = [nextX, nextY];
    }
  return [
    `<path fill="none" stroke="#1c2733" stroke-width="${n(side)}" stroke-linecap="square" d="${steps.join('')}"/>`,
  ];
}
