/** The second page of the crew sheet: washer look, driver, inspection, do and do not, safety, whom to ring. */
import type { Solved } from '../../answer/solve-job.ts';
import type { Screw } from '../../shelf/item.ts';
import { GREY } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { printer } from '../print-units.ts';
import { BODY, both, bothHead, bothLine, bothList, bothText, GAP, halfWidth } from './both.ts';
import { speedBand } from './driver-practice.ts';
import { washerLook } from './washer-looks.ts';

export function howToDrive(sheet: Sheet, solved: Solved): void {
  sheet.newPage();
  const screws = screwsOf(solved);
  if (screws.some((screw) => screw.washer)) washers(sheet);
  if (screws.some((screw) => !screw.washer)) bothLine(sheet, joined('panHead', 'panNote'));
  driver(sheet, screws);
  bothHead(sheet, 'inspectHead', 40);
  bothList(sheet, 'inspect', true);
  bothHead(sheet, 'doHead', 30);
  bothList(sheet, 'dos');
  bothList(sheet, 'donts');
  bothHead(sheet, 'safetyHead', 30);
  bothList(sheet, 'safety');
  bothText(sheet, 'notPlan', true);
  ring(sheet);
}

function joined(head: 'panHead', note: 'panNote'): readonly [string, string] {
  const [a, b] = both(head);
  const [c, d] = both(note);
  return [`${a}: ${c}`, `${b}: ${d}`];
}

function screwsOf({ answer }: Solved): Screw[] {
  const found = new Map<string, Screw>();
  for (const { item } of answer.choices) if (item?.kind === 'screw') found.set(item.id, item);
  return [...found.values()];
}

const looks = [
  ['under', 'under', 'underNote'],
  ['right', 'right', 'rightNote'],
  ['over', 'over', 'overNote'],
] as const;

function washers(sheet: Sheet): void {
  bothHead(sheet, 'washerHead', 110);
  const third = sheet.width / 3;
  const { pen } = sheet;
  const top = sheet.y;
  let bottom = top;
  looks.forEach(([look, name, note], i) => {
    const x = sheet.left + third * i;
    washerLook(pen, look, x + third / 2, top + 34);
    const block = { width: third - 10, size: 9.5, align: 'center', leading: 1.18 } as const;
    pen.line(both(name).join(' · '), x + third / 2, top + 70, { size: 11, face: 'bold', align: 'center' });
    let y = top + 74;
    for (const text of both(note)) y = pen.block(text, x + 5, y, block);
    bottom = Math.max(bottom, y);
  });
  sheet.y = bottom + 4;
}

function driver(sheet: Sheet, screws: readonly Screw[]): void {
  bothHead(sheet, 'driverHead', 60);
  for (const key of ['driver1', 'driver2', 'driver3'] as const) bothText(sheet, key);
  const torque = both('torque').join(' / ');
  const print = printer(sheet.plan.answer.job.print.units);
  const width = halfWidth(sheet);
  for (let i = 0; i < screws.length; i += 2) {
    sheet.room(13);
    screws.slice(i, i + 2).forEach((screw, at) => {
      const { from, to } = speedBand(screw);
      const breaks = screw.torsion ? ` · ${torque} ${print.text('torque', screw.torsion.value)}*` : '';
      sheet.pen.block(`${screw.id}: ${from}–${to} rpm*${breaks}`, sheet.left + at * (width + GAP), sheet.y, {
        width,
        size: 9.3,
        face: 'bold',
        most: 1,
      });
    });
    sheet.y += 13.5;
  }
  const [english, spanish] = both('practiceValue');
  sheet.pen.line(`* ${english}`, sheet.left, sheet.y + 9, { size: 9, color: GREY });
  sheet.pen.line(`* ${spanish}`, sheet.left + halfWidth(sheet) + GAP, sheet.y + 9, { size: 9, color: GREY });
  sheet.y += 14;
}

function ring(sheet: Sheet): void {
  bothHead(sheet, 'ring', 34);
  bothText(sheet, 'stop', true);
  sheet.y += 18;
  both('ringLine').forEach((text, i) => {
    const x = sheet.left + i * (halfWidth(sheet) + GAP);
    sheet.pen.rule(x, sheet.y, halfWidth(sheet), { width: 0.8 });
    sheet.pen.line(text, x, sheet.y + 10, { size: BODY - 2, color: GREY });
  });
  sheet.y += 14;
}
