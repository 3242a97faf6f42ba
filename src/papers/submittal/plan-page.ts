/** The roof plan and the legend of its zones with areas and pressures. */

import { sqft } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { zoneHatches } from '../hatch.ts';
import { corners, GREY } from '../pdf/pen.ts';
import { roofPlan } from '../pdf/roof-plan.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { type Column, type Row, table } from '../pdf/table.ts';
import { grouped, type Printer, printer } from '../print-units.ts';
import { zoneName } from '../words/terms.ts';
import { connectionName, type Words } from '../words/words.ts';

/** Above this, squares would run together at the scale of a page. */
const MOST_DRAWN = 9000;
/** The area the standard's own tables start from. */
const TABLE_AREA = 10;

export function planPage(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  sheet.newPage();
  sheet.outline(words.submittal.roofPlan);
  sheet.head(words.submittal.roofPlan, words.submittal.planNote);
  const primary = answer.choices.find((choice) => choice.connection.primary);
  const sets = answer.layout.filter((set) => set.connection === primary?.connection.id);
  const count = sets.reduce((sum, set) => sum + set.count, 0);
  const legend = 60 + answer.field.zones.length * 16;
  const place = roofPlan(sheet, {
    x: sheet.left,
    y: sheet.y,
    width: sheet.width,
    height: Math.max(240, Math.min(430, sheet.bottom - sheet.y - legend)),
    size: 8.5,
    sets: count <= MOST_DRAWN ? sets : [],
    lines: count <= MOST_DRAWN,
    edges: true,
  });
  sheet.y = place.bottom + 4;
  if (primary) {
    const say = count <= MOST_DRAWN ? words.submittal.fastenersDrawn : words.submittal.fastenersNotDrawn;
    sheet.paragraph(say(connectionName(primary.connection.id, words), grouped(count)), {
      color: GREY,
      size: 8,
    });
  }
  zoneTable(sheet);
}

export function zoneColumns({ submittal: w }: Words, print: Printer): Column[] {
  return [
    { head: '', width: 34, fixed: true },
    { head: w.zone, width: 2 },
    { head: `${w.planArea}, ${print.unit('area')}`, width: 1.4, align: 'right' },
    { head: `${w.slopeArea}, ${print.unit('area')}`, width: 1.4, align: 'right' },
    {
      head: `${w.upliftAt(print.short('area', TABLE_AREA))}, ${print.unit('pressure')}`,
      width: 1.8,
      align: 'right',
    },
    { head: `${w.upliftPlace}, ${print.unit('pressure')}`, width: 2, align: 'right' },
    { head: `${w.ofArea}, ${print.unit('smallArea')}`, width: 1.2, align: 'right' },
  ];
}

function zoneTable(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const print = printer(answer.job.print.units);
  const w = words.submittal;
  const hatches = zoneHatches(answer.field.zones);
  const primary = answer.choices.find((choice) => choice.connection.primary);
  const columns = zoneColumns(words, print);
  const rows = answer.field.zones.map((zone, index): Row => {
    const uplift = answer.field.uplift(index, sqft(TABLE_AREA));
    const line = primary?.lines.find((one) => one.zone === index);
    return {
      cells: [
        {
          text: '',
          draw: (x, y) => {
            sheet.pen.hatch([corners(x, y, 30, 9)], hatches[index] ?? [], 5.5, { width: 0.3 });
            sheet.pen.box(x, y, 30, 9, { width: 0.4 });
          },
        },
        { text: zoneName(zone, words), bold: true },
        print.number('area', zone.planArea_ft2),
        print.number('area', zone.slopeArea_ft2),
        isRefusal(uplift) ? w.noPressure : print.number('pressure', uplift),
        line?.fastenerPressure_psf === undefined ? '' : print.number('pressure', line.fastenerPressure_psf),
        line ? print.number('smallArea', line.fastener_ft2) : '',
      ],
    };
  });
  table(sheet, columns, rows);
  sheet.paragraph(`${w.windSource(answer.field.cites)} ${w.level(answer.basis.method)}`, {
    color: GREY,
    size: 8,
  });
}
