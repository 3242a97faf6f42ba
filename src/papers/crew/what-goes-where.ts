/** The first page of the crew sheet: the zones with the numbers to chalk, and what goes where. */
import { FAINT, GREY, INK, RED } from '../pdf/pen.ts';
import { roofPlan } from '../pdf/roof-plan.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { threadMark } from '../pdf/thread-mark.ts';
import { tapeLength } from '../print-units.ts';
import { type Words, wordsOf } from '../words/words.ts';
import { BODY, both, bothHead, bothText, GAP, halfWidth } from './both.ts';
import { type CrewRow, crewRows } from './crew-rows.ts';

const en = wordsOf('en');
const es = wordsOf('es');

export function whatGoesWhere(sheet: Sheet): void {
  const { answer } = sheet.plan;
  const { pen } = sheet;
  const [english, spanish] = both('title');
  pen.line(`${english} · ${spanish}`, sheet.left, sheet.y + 18, { size: 20, face: 'bold' });
  sheet.y = pen.block(answer.job.name, sheet.left, sheet.y + 24, { width: sheet.width, size: 13, most: 2 });
  sheet.y += 2;
  warnings(sheet);
  chalkPlan(sheet);
  const rows = crewRows(answer);
  bothHead(sheet, 'whatHead', 60);
  for (const row of rows) crewRow(sheet, row);
}

/** What is not proven must not be built as if it were. */
function warnings(sheet: Sheet): void {
  const { count } = sheet.plan.answer;
  const keys = [
    ...(count.fallsShort > 0 ? (['fallsShort'] as const) : []),
    ...(count.unproven > 0 ? (['unproven'] as const) : []),
  ];
  for (const key of keys) {
    const verdict = key === 'fallsShort' ? 'falls short' : 'unproven';
    const texts = both(key);
    const block = { width: halfWidth(sheet) - 40, size: BODY, face: 'bold', color: RED, most: 2 } as const;
    const height = Math.max(...texts.map((text) => sheet.pen.heightOf(text, block))) + 8;
    sheet.pen.box(sheet.left, sheet.y, sheet.width, height, { color: RED, width: 1.2 });
    texts.forEach((text, i) => {
      const x = sheet.left + 8 + i * (halfWidth(sheet) + GAP);
      threadMark(sheet.pen, verdict, x, sheet.y + height / 2, 22);
      sheet.pen.block(text, x + 30, sheet.y + 3.5, block);
    });
    sheet.y += height + 4;
  }
}

/** The primary row's spacing in each zone, in the numbers to chalk. */
function chalkPlan(sheet: Sheet): void {
  const { answer } = sheet.plan;
  const primary = answer.choices.find((choice) => choice.connection.primary);
  bothHead(sheet, 'chalkHead', 180);
  bothText(sheet, 'zonesNote');
  const spacing = (zone: number): readonly string[] => {
    const line = primary?.lines.find((one) => one.zone === zone);
    const label = answer.field.zones[zone]?.label ?? '';
    return line ? [`${label}:  ${tapeLength(line.spacing_in, answer.job.print.units)}`] : [label];
  };
  const place = roofPlan(sheet, {
    x: sheet.left,
    y: sheet.y,
    width: sheet.width,
    height: 236,
    size: 9.5,
    sets: [],
    lines: false,
    edges: false,
    textOf: spacing,
  });
  sheet.y = place.bottom;
  const names: readonly [Words, string][] = [
    [en, `${en.crew.zone}:`],
    [es, `${es.crew.zone}:`],
  ];
  const listed = answer.field.zones.map((_, zone) => spacing(zone).join(' '));
  names.forEach(([, name], i) => {
    const x = sheet.left + i * (halfWidth(sheet) + GAP);
    sheet.pen.block(`${name} ${listed.join(' · ')}`, x, sheet.y, {
      width: halfWidth(sheet),
      size: 9.5,
      face: 'bold',
      most: 3,
    });
  });
  sheet.y += 9.5 * 1.3 * (listed.join(' · ').length > 46 ? 2 : 1) + (listed.length > 6 ? 12 : 0);
}

const SIZE = 10;

/** Name and spacing in both languages at the sides of the row, the item between heads of its own. */
function crewRow(sheet: Sheet, row: CrewRow): void {
  const { pen } = sheet;
  const half = halfWidth(sheet);
  const columns = [en, es].map((words) => linesOf(sheet, row, words));
  const block = { width: half - 4, size: SIZE, leading: 1.2, most: 3 };
  const item = `${row.item}${row.bit === '' ? '' : `   ${en.crew.bit} / ${es.crew.bit}: ${row.bit}`}`;
  const heights = columns.map((lines) => lines.reduce((sum, text) => sum + pen.heightOf(text, block), 0));
  const height = 14 + 13 + Math.max(...heights) + 5;
  sheet.room(height);
  columns.forEach((lines, i) => {
    const x = sheet.left + i * (half + GAP);
    const words = i === 0 ? en : es;
    const name =
      pen.lines(row.names(words), { width: half - 30, size: 11.5, face: 'bold', most: 1 })[0] ?? '';
    pen.line(name, x, sheet.y + 11, {
      size: 11.5,
      face: 'bold',
      color: row.verdict === 'falls short' ? RED : INK,
    });
    if (row.verdict !== 'holds') threadMark(pen, row.verdict, x + half - 26, sheet.y + 7, 22);
    let y = sheet.y + 14 + 13;
    for (const text of lines) y = pen.block(text, x, y, block);
  });
  pen.line(item, sheet.left, sheet.y + 24, { size: SIZE, face: 'bold' });
  const after = sheet.left + pen.width(item, { size: SIZE, face: 'bold' }) + 8;
  const note = pen.lines(row.designation, { width: sheet.right - after, size: 9, most: 1 })[0] ?? '';
  pen.line(note, after, sheet.y + 24, { size: 9, color: GREY });
  sheet.y += height;
  pen.rule(sheet.left, sheet.y - 2, sheet.width, { color: FAINT });
}

function linesOf(sheet: Sheet, row: CrewRow, words: Words): string[] {
  const { job } = sheet.plan.answer;
  const { placement } = row.choice.connection;
  if (row.spacings.length === 0) return [words.crew.perPiece(row.each, row.names(words))];
  const spaced = row.spacings.map(({ zones, text }) => `${text} (${words.crew.zone} ${zones})`).join(';  ');
  const supported = placement.by === 'field' && placement.along === 'supports';
  const ends =
    placement.by !== 'field'
      ? ''
      : supported
        ? `, ${words.crew.onSupports}`
        : `;  ${words.crew.first} ${tapeLength(job.endOffset, job.print.units)}`;
  return [`${spaced}${supported ? ends : ''}`, `${words.crew.each(row.each)}${supported ? '' : ends}`];
}
