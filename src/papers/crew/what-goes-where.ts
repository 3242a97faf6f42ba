/** The first page of the crew sheet: the zones with the numbers to chalk, and what goes where. */

import { RED } from '../pdf/pen.ts';
import { roofPlan } from '../pdf/roof-plan.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { threadMark } from '../pdf/thread-mark.ts';
import { tapeLength } from '../print-units.ts';
import { zoneName } from '../words/terms.ts';
import { BODY, both, bothHead, bothText, GAP, halfWidth } from './both.ts';
import { type CrewRow, crewRows } from './crew-rows.ts';
import { jointRows, jointRowsHeight } from './joint-rows.ts';

export function whatGoesWhere(sheet: Sheet): void {
  const { answer } = sheet.plan;
  const { pen } = sheet;
  const [english, spanish] = both('title');
  pen.line(`${english} · ${spanish}`, sheet.left, sheet.y + 18, { size: 20, face: 'bold' });
  sheet.y = pen.block(answer.job.name, sheet.left, sheet.y + 24, { width: sheet.width, size: 13, most: 2 });
  sheet.y += 2;
  warnings(sheet);
  const rows = crewRows(answer);
  chalkPlan(sheet, rows);
  bothHead(sheet, 'whatHead', 60);
  jointRows(sheet, rows);
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

/** What the joints leave of the page, so that plan and joints stand on one; within what can be read. */
const planHeight = (sheet: Sheet, rows: readonly CrewRow[]): number =>
  Math.max(130, Math.min(270, sheet.bottom - sheet.y - jointRowsHeight(sheet, rows) - 30));

/** The primary row's spacing in each zone, in the numbers to chalk. */
function chalkPlan(sheet: Sheet, rows: readonly CrewRow[]): void {
  const { answer, words } = sheet.plan;
  const primary = answer.choices.find((choice) => choice.connection.primary);
  bothHead(sheet, 'chalkHead', 180);
  bothText(sheet, 'zonesNote');
  const spacing = (zone: number): readonly string[] => {
    const line = primary?.lines.find((one) => one.zone === zone);
    const label = zoneName(answer.field.zones[zone], words);
    return line ? [`${label}:  ${tapeLength(line.spacing_in, answer.job.print.units)}`] : [label];
  };
  const place = roofPlan(sheet, {
    x: sheet.left,
    y: sheet.y,
    width: sheet.width,
    height: planHeight(sheet, rows),
    size: 9.5,
    sets: [],
    lines: false,
    edges: false,
    textOf: spacing,
  });
  sheet.y = place.bottom;
}
