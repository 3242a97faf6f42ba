/** Legend and title block under the plan: zones with their hatch, what is drawn, job, revision, editions, verdicts. */

import type { Answer } from '../../answer/answer.ts';
import { cut } from '../clean-text.ts';
import { zoneHatches } from '../hatch.ts';
import { breakLines } from '../pdf/break-lines.ts';
import { grouped, printer } from '../print-units.ts';
import { zoneName } from '../words/terms.ts';
import { connectionName, type Words } from '../words/words.ts';
import { element, label, n } from './svg-text.ts';

const INK = '#1c2733';

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

export function svgTitleBlock(
  answer: Answer,
  words: Words,
  at: Place,
): { readonly text: string; readonly height: number; readonly title: string } {
  const { job } = answer;
  const line = at.size * 1.6;
  const zones = zoneRows(answer, words, at, line);
  const third = at.width / 3;
  const drawn = fastenerRows(answer, words).map((text, i) =>
    label({ x: at.x + third * 1.1, y: at.y + line * (i + 1) }, text),
  );
  // Signs of ordinary text that the frame holds beside its margins.
  const signs = Math.max(20, Math.floor((third * 0.9 - at.size * 2) / (at.size * 0.52)));
  const titles = titleRows(answer, words, signs).map((text, i) =>
    label(
      {
        x: at.x + third * 2.1 + at.size,
        y: at.y + line * (i + 1),
        ...(i === 0 ? { 'font-weight': '600' } : {}),
      },
      text,
    ),
  );
  const rows = Math.max(zones.length, drawn.length, titles.length) + 1;
  const height = rows * line;
  const frame = element('path', {
    d: `M${n(at.x + third * 2.1)} ${n(at.y)}H${n(at.x + at.width)}V${n(at.y + height)}H${n(at.x + third * 2.1)}Z`,
    fill: 'none',
    stroke: INK,
    'stroke-width': at.size / 12,
  });
  return {
    text: element('g', { class: 'title-block' }, ...zones, ...drawn, frame, ...titles),
    height,
    title: `${job.name}, ${words.sheet.revision} ${job.revision}`,
  };
}

function zoneRows({ field, job }: Answer, words: Words, at: Place, line: number): string[] {
  const print = printer(job.print.units);
  const hatches = zoneHatches(field.zones);
  return field.zones.map((zone, index) => {
    const y = at.y + line * (index + 1);
    const box = { x: at.x, y: y - at.size, width: at.size * 3, height: at.size * 1.2 };
    const fills = (hatches[index] ?? []).map((_, i) =>
      element('rect', { ...box, fill: `url(#z${index}-${i})` }),
    );
    return element(
      'g',
      {},
      ...fills,
      element('rect', { ...box, fill: 'none', stroke: INK, 'stroke-width': at.size / 24 }),
      label(
        { x: at.x + at.size * 4, y },
        `${words.submittal.zone} ${zoneName(zone, words)}, ${print.text('area', zone.slopeArea_ft2)} ${words.submittal.slopeArea}`,
      ),
    );
  });
}

function fastenerRows({ choices, layout }: Answer, words: Words): string[] {
  return choices.flatMap(({ connection, item }) => {
    const count = layout
      .filter((set) => set.connection === connection.id)
      .reduce((sum, set) => sum + set.count, 0);
    if (count === 0) return [];
    return [
      cut(
        `■ ${connectionName(connection.id, words)}: ${grouped(count)} ${words.submittal.places}, ${item?.id ?? words.submittal.nothingFits}`,
        54,
      ),
    ];
  });
}

function titleRows({ job, shelf, field, basis, count }: Answer, words: Words, signs: number): string[] {
  const { sheet } = words;
  return [
    'Deckbite',
    cut(job.name, signs),
    cut(`${sheet.reference}: ${job.reference}`, signs),
    `${sheet.revision} ${job.revision}${job.date ? `, ${job.date}` : ''}`,
    cut(`${sheet.shelf}: ${shelf.name}`, signs),
    `${sheet.edition} ${shelf.edition}, ${shelf.date}`,
    ...breakLines(`${sheet.basis}: ${field.cites}, ${basis.method}`, signs, (text) => text.length, 3),
    words.sheet.shortCounts(count.holds, count.fallsShort, count.unproven),
    words.crew.notPlan,
  ];
}
