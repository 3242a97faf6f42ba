/** The schedule: connections by zones, fastener and panel verdict side by side. */

import type { ConnectionChoice, ScheduleLine } from '../../choose/schedule.ts';
import { isPieceMeal } from '../../connections/connection.ts';
import type { Verdict } from '../../links/verdict.ts';
import { GREY, RED } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { type CellText, type Column, type Row, table } from '../pdf/table.ts';
import { type Printer, printer } from '../print-units.ts';
import { zoneName } from '../words/terms.ts';
import { connectionName, type Words } from '../words/words.ts';

export function scheduleTable(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const w = words.submittal;
  const print = printer(answer.job.print.units);
  sheet.room(320);
  sheet.outline(w.schedule);
  sheet.head(w.schedule, `${answer.field.cites}, ${answer.basis.method}`);
  sheet.paragraph(w.scheduleNote, { color: GREY, size: 8 });
  sheet.y += 2;
  const columns = scheduleColumns(words, print);
  const rows = answer.choices.flatMap((choice) =>
    choice.lines.map((line, i) =>
      rowOf(choice, line, i === 0, zoneName(answer.field.zones[line.zone], words), words, print),
    ),
  );
  table(sheet, columns, rows);
}

export function scheduleColumns({ submittal: w }: Words, print: Printer): Column[] {
  return [
    { head: `${w.connection}, ${w.item}`, width: 3.4, most: 2 },
    { head: w.zone, width: 1.65, most: 2 },
    { head: `${w.spacing}, ${print.unit('spacing')}`, width: 1.5, align: 'right', most: 2 },
    { head: w.each, width: 0.8, align: 'right' },
    { head: w.setBy, width: 1.6, most: 2 },
    { head: `${w.load}, ${print.unit('force')}`, width: 1, align: 'right' },
    { head: w.governing, width: 1.8, most: 2 },
    { head: w.ratio, width: 1.1, align: 'right' },
    { head: w.fastener, width: 61, fixed: true, most: 2 },
    { head: w.panel, width: 61, fixed: true, most: 2 },
  ];
}

function rowOf(
  choice: ConnectionChoice,
  line: ScheduleLine,
  first: boolean,
  zone: string,
  words: Words,
  print: Printer,
): Row {
  const name: CellText = {
    text: connectionName(choice.connection.id, words),
    bold: true,
    note: choice.item ? `${choice.item.id}, ${choice.item.designation}` : words.submittal.nothingFits,
  };
  const pieces = isPieceMeal(choice.connection.placement);
  const link = line.checks[line.governing]?.capacity.link;
  const short = line.verdict === 'falls short';
  return {
    group: first,
    ...(first ? {} : { leadAgain: name }),
    cells: [
      first ? name : '',
      zone,
      pieces ? '–' : print.number('spacing', line.spacing_in),
      String(line.each),
      words.setBy[line.setBy],
      line.fastenerLoad_lbf === undefined ? '–' : print.number('force', line.fastenerLoad_lbf),
      { text: link === undefined ? '–' : words.link[link], ...(short ? { color: RED } : {}) },
      {
        text: line.ratio === undefined ? '–' : line.ratio.toFixed(2),
        bold: short,
        ...(short ? { color: RED } : {}),
      },
      verdictCell(line.fastenerVerdict, words),
      line.panelVerdict === undefined ? '' : verdictCell(line.panelVerdict, words),
    ],
  };
}

export function verdictCell(verdict: Verdict, words: Words): CellText {
  return {
    text: words.verdict[verdict],
    mark: verdict,
    ...(verdict === 'falls short' ? { color: RED, bold: true } : {}),
  };
}
