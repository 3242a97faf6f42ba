/** One connection: its section to scale, its chain, why this item and not another, guidance that collides, proof. */

import type { Solved } from '../../answer/solve-job.ts';
import type { Rejection } from '../../choose/rejection.ts';
import type { ConnectionChoice } from '../../choose/schedule.ts';
import { isPieceMeal } from '../../connections/connection.ts';
import type { Printed } from '../formula/set-step.ts';
import { drawChain } from '../pdf/chain.ts';
import { GREY } from '../pdf/pen.ts';
import { drawSection } from '../pdf/section.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { type Column, type Row, table, tableStart } from '../pdf/table.ts';
import { printer } from '../print-units.ts';
import { zoneName } from '../words/terms.ts';
import { connectionName } from '../words/words.ts';
import type { ChoiceGroup } from './groups.ts';
import { proof } from './proof.ts';

const SECTION = 175;
const MOST_REJECTED = 8;
/** Height of the line that says how many more there are. */
const MORE = 16;
/** A connection starts on a page that has room for its section, its chain and the reasons. */
const ROOM = 340;

export function connectionPage(sheet: Sheet, solved: Solved, group: ChoiceGroup, printed: Printed): void {
  const { words } = sheet.plan;
  const names = group.all.map((choice) => connectionName(choice.connection.id, words));
  const [name = '', ...others] = names;
  const start = sheet.y;
  sheet.room(ROOM);
  if (sheet.y === start) sheet.y += 8;
  sheet.outline(name);
  sheet.head(capital(name), others.length === 0 ? '' : `${words.submittal.alsoFor} ${others.join('; ')}`);
  itemLine(sheet, group.first);
  sectionAndChain(sheet, group);
  loadAndPractice(sheet, group.first);
  reasons(sheet, group.first);
  proof(sheet, solved, group, printed);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function itemLine(sheet: Sheet, { item, clip, connection }: ConnectionChoice): void {
  const { words } = sheet.plan;
  const named = item ? `${item.id}   ${item.designation}` : words.submittal.nothingFits;
  const parts = [
    named,
    ...(clip ? [`${clip.id}   ${clip.designation}`] : []),
    words.crew.each(connection.each),
  ];
  if (isPieceMeal(connection.placement)) parts.pop();
  sheet.y = sheet.pen.block(parts.join('; '), sheet.left, sheet.y, {
    width: sheet.width,
    size: 9.5,
    face: 'bold',
  });
  sheet.y += 4;
}

/** Side by side: the chain may be taller than the drawing. */
function sectionAndChain(sheet: Sheet, group: ChoiceGroup): void {
  const { words, answer } = sheet.plan;
  const { pen } = sheet;
  const top = sheet.y;
  const half = sheet.width * 0.5;
  const x = sheet.left + half + 18;
  const scale = drawSection(sheet, group.first, { x: sheet.left, y: top + 10, width: half, height: SECTION });
  pen.line(words.submittal.section, sheet.left, top + 10, { size: 9.5, face: 'bold', color: '#1f4e79' });
  const after = sheet.left + pen.width(words.submittal.section, { size: 9.5, face: 'bold' }) + 8;
  pen.line(scale, after, top + 10, { size: 7.5, color: GREY });
  const governing = group.governing;
  let bottom = top + SECTION + 14;
  if (governing) {
    const zone = zoneName(answer.field.zones[governing.line.zone], words);
    const print = printer(answer.job.print.units);
    const pieces = isPieceMeal(governing.choice.connection.placement);
    const spacing = pieces
      ? words.crew.each(governing.line.each)
      : print.short('spacing', governing.line.spacing_in);
    pen.line(words.submittal.chain, x, top + 10, { size: 9.5, face: 'bold', color: '#1f4e79' });
    const below = pen.block(words.submittal.chainNote(zone, spacing), x, top + 13, {
      width: sheet.right - x,
      size: 7.5,
      color: GREY,
      most: 2,
    });
    bottom = Math.max(bottom, drawChain(sheet, governing.line.checks, x, below + 4, sheet.right - x));
  }
  sheet.y = bottom + 4;
}

function loadAndPractice(sheet: Sheet, { connection, overridden, conflicts }: ConnectionChoice): void {
  const { words } = sheet.plan;
  const { practice } = connection;
  // In the unit its source is written in, whatever the units of the job: the two stand in one sentence.
  const inches = printer('US');
  labelled(sheet, words.submittal.loadRule, connection.loadRule);
  labelled(
    sheet,
    words.submittal.practice,
    `${inches.short('spacing', practice.spacing_in)}; ${words.terms.practice[practice.kind]}: ${practice.source}`,
  );
  if (overridden.length > 0) labelled(sheet, words.submittal.overridden, overridden.join('; '));
  if (conflicts.length > 0) {
    sheet.subhead(words.submittal.conflicts);
    for (const text of conflicts) sheet.paragraph(text, { indent: 10 });
  }
}

function labelled(sheet: Sheet, label: string, text: string): void {
  const block = { width: sheet.width - 92 };
  const height = sheet.pen.heightOf(text, block) + 3;
  sheet.room(height);
  sheet.pen.line(label, sheet.left, sheet.y + 8.2, { face: 'bold' });
  sheet.pen.block(text, sheet.left + 92, sheet.y, block);
  sheet.y += height;
}

function reasons(sheet: Sheet, choice: ConnectionChoice): void {
  const { words } = sheet.plan;
  labelled(sheet, words.submittal.whyThis, choice.because);
  const shown = bestRejected(choice.rejected);
  if (shown.length === 0) return;
  const more = choice.rejected.length - shown.length;
  const below = more > 0 ? MORE : 0;
  const columns: Column[] = [
    { head: words.submittal.item, width: 74, fixed: true },
    { head: '', width: 1, most: 3 },
  ];
  const rows = shown.map(({ item, because }): Row => ({ cells: [{ text: item, bold: true }, because] }));
  sheet.subhead(words.submittal.whyNot, tableStart(sheet, columns, rows) + below);
  table(sheet, columns, rows, below);
  if (more > 0) {
    sheet.y -= 4;
    sheet.paragraph(words.submittal.rejectedMore(more), { color: GREY, size: 7.5 });
  }
}

/** The runners-up first, then one example of every other reason: the list is in the engine's order. */
function bestRejected(rejected: readonly Rejection[]): Rejection[] {
  const runners = rejected.filter(({ rule }) => rule === 'cost' || rule === 'strength').slice(0, 4);
  const seen = new Set<string>();
  const others = rejected.filter(({ rule }) => {
    const fresh = rule !== 'cost' && rule !== 'strength' && !seen.has(rule);
    seen.add(rule);
    return fresh;
  });
  return [...runners, ...others].slice(0, MOST_REJECTED);
}
