/** The first page: what the answer is, what falls short, what is unproven and why, what to ask. */

import type { ConnectionChoice, ScheduleLine } from '../../choose/schedule.ts';
import type { Verdict } from '../../links/verdict.ts';
import { GREY, INK, RED } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { threadMark } from '../pdf/thread-mark.ts';
import { printer } from '../print-units.ts';
import { zoneName } from '../words/terms.ts';
import { connectionName } from '../words/words.ts';
import { whatWeKnow } from './what-we-know.ts';

export function verdictPage(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const { pen } = sheet;
  pen.line(words.submittal.title, sheet.left, sheet.y + 18, { size: 21, face: 'bold' });
  sheet.y += 25;
  sheet.y = pen.block(answer.job.name, sheet.left, sheet.y, { width: sheet.width, size: 12.5, most: 2 });
  if (answer.job.note !== '')
    sheet.y = pen.block(answer.job.note, sheet.left, sheet.y + 2, {
      width: sheet.width,
      color: GREY,
      most: 3,
    });
  sheet.outline(words.submittal.verdicts);
  sheet.head(words.submittal.verdicts);
  countRow(sheet);
  if (answer.count.fallsShort === 0 && answer.count.unproven === 0) sheet.paragraph(words.submittal.allHold);
  shortfalls(sheet);
  unproven(sheet);
  asked(sheet);
  sheet.outline(words.submittal.whatWeKnow);
  whatWeKnow(sheet);
}

function countRow(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const { holds, fallsShort, unproven } = answer.count;
  const parts: readonly (readonly [Verdict, number])[] = [
    ['holds', holds],
    ['falls short', fallsShort],
    ['unproven', unproven],
  ];
  parts.forEach(([verdict, count], i) => {
    const x = sheet.left + (i * sheet.width) / 3;
    const red = verdict === 'falls short' && count > 0;
    const color = red ? RED : INK;
    sheet.pen.line(String(count), x, sheet.y + 20, { size: 22, face: 'bold', color });
    const after = x + sheet.pen.width(String(count), { size: 22, face: 'bold' }) + 8;
    sheet.pen.line(words.verdict[verdict], after, sheet.y + 12, {
      size: 10,
      face: red ? 'bold' : 'regular',
      color,
    });
    threadMark(sheet.pen, verdict, after, sheet.y + 20.5, 24, count === 0);
  });
  sheet.y += 34;
}

function placeOf(sheet: Sheet, choice: ConnectionChoice, line: ScheduleLine): string {
  const { answer, words } = sheet.plan;
  return `${connectionName(choice.connection.id, words)}, ${words.submittal.zone} ${zoneName(answer.field.zones[line.zone], words)}`;
}

function shortfalls(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const print = printer(answer.job.print.units);
  const found = answer.choices.flatMap((choice) =>
    choice.lines.filter((line) => line.verdict === 'falls short').map((line) => ({ choice, line })),
  );
  if (found.length === 0) return;
  sheet.subhead(words.submittal.fallsShort);
  for (const { choice, line } of found) {
    const check = line.checks[line.governing];
    if (!check) continue;
    const { link, unit, value } = check.capacity;
    const kind = unit === 'lbf' ? 'force' : 'pressure';
    const carries = words.submittal.carries(
      words.link[link],
      print.text(kind, value ?? 0),
      print.text(kind, check.demand ?? 0),
    );
    const cure =
      line.holdsAt_in === undefined
        ? ''
        : `; ${words.submittal.wouldHold(print.short('spacing', line.holdsAt_in))}`;
    sheet.paragraph(`${placeOf(sheet, choice, line)}: ${carries}${cure}`, { indent: 10, color: RED });
  }
}

/** One paragraph a reason, naming the places it stands for. */
function unproven(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const reasons = new Map<string, Map<string, string[]>>();
  for (const choice of answer.choices)
    for (const line of choice.lines)
      for (const check of line.checks) {
        if (check.verdict !== 'unproven') continue;
        const { link, because } = check.capacity;
        const reason = `${words.link[link]}: ${because ?? line.noLoad ?? ''}`;
        const places = reasons.get(reason) ?? new Map<string, string[]>();
        const name = connectionName(choice.connection.id, words);
        const zones = places.get(name) ?? [];
        zones.push(zoneName(answer.field.zones[line.zone], words));
        places.set(name, zones);
        reasons.set(reason, places);
      }
  if (reasons.size === 0) return;
  sheet.subhead(words.submittal.unproven);
  for (const [reason, places] of reasons) {
    const where = [...places].map(
      ([name, zones]) =>
        `${name}, ${words.submittal[zones.length > 1 ? 'zones' : 'zone']} ${zones.join(', ')}`,
    );
    sheet.paragraph(`${reason} (${where.join('; ')})`, { indent: 10 });
  }
}

function asked(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const open = answer.inputs.filter((input) => input.standing === 'asked');
  if (open.length === 0) return;
  sheet.subhead(words.submittal.askNext);
  open.forEach((input, i) => {
    sheet.paragraph(`${i + 1}. ${input.because ?? ''}`, { indent: 10, color: RED });
  });
}
