/** The take-off: what is set, what is ordered, what it costs and weighs; runs and edges. */
import type { Sheet } from '../pdf/sheet.ts';
import { type Column, type Row, table } from '../pdf/table.ts';
import { grouped, type Printer, printer } from '../print-units.ts';
import { planeName } from '../words/terms.ts';
import { connectionName, type Words } from '../words/words.ts';

export function takeOffTable(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const { takeoff, job } = answer;
  const o = words.order;
  const print = printer(job.print.units);
  sheet.room(260);
  sheet.outline(words.submittal.takeoff);
  sheet.head(words.submittal.takeoff, takeoff.currency);
  const columns = takeOffColumns(words);
  const rows = takeoff.lines.map(
    (line): Row => ({
      cells: [
        {
          text: `${line.item}${line.colour === undefined ? '' : `, ${line.colour}`}`,
          bold: true,
          note: line.designation,
        },
        [...new Set(line.uses.map((use) => connectionName(use.connection, words)))].join('; '),
        grouped(line.count),
        grouped(line.withWaste),
        `${line.packs} × ${grouped(line.pack)}`,
        grouped(line.ordered),
        line.unitPrice.toFixed(4),
        grouped(line.price, 2),
      ],
    }),
  );
  const total: Row = {
    group: true,
    bold: true,
    cells: [
      o.total,
      `${o.weight} ${print.weight(takeoff.weight_lbf)}`,
      '',
      '',
      '',
      '',
      '',
      grouped(takeoff.total, 2),
    ],
  };
  table(sheet, columns, [...rows, total]);
  runs(sheet);
  edges(sheet);
}

function runs(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const print = printer(answer.job.print.units);
  const w = words.submittal;
  sheet.subhead(w.runs, keepOf(answer.takeoff.runs.length));
  table(
    sheet,
    runColumns(words, print),
    answer.takeoff.runs.map((run) => ({
      cells: [
        planeName(run.plane, words),
        grouped(run.runs),
        grouped(run.seams),
        print.number('area', run.slopeArea_ft2),
      ],
    })),
  );
}

function edges(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  const print = printer(answer.job.print.units);
  const w = words.submittal;
  sheet.subhead(w.edges, keepOf(answer.takeoff.edges.length));
  table(
    sheet,
    edgeColumns(words, print),
    answer.takeoff.edges.map(({ tag, length_ft }) => ({
      cells: [
        (words.edge as Readonly<Record<string, string>>)[tag] ?? tag,
        print.number('run', length_ft),
        '',
      ],
    })),
  );
}

/** A short table stays whole; a long one may break after its first rows. */
const keepOf = (rows: number): number => 30 + 17 * Math.min(rows, 12);

export function takeOffColumns({ order: o }: Words): Column[] {
  return [
    { head: o.item, width: 3.4, most: 2 },
    { head: o.serves, width: 2.8, most: 5 },
    { head: o.count, width: 0.9, align: 'right' },
    { head: o.withWaste, width: 0.95, align: 'right' },
    { head: o.packs, width: 1.1, align: 'right' },
    { head: o.ordered, width: 1, align: 'right' },
    { head: o.unitPrice, width: 1.1, align: 'right' },
    { head: o.price, width: 1.2, align: 'right' },
  ];
}

export const runColumns = ({ submittal: w }: Words, print: Printer): Column[] => [
  { head: w.plane, width: 3 },
  { head: w.runsCount, width: 1, align: 'right' },
  { head: w.seams, width: 1, align: 'right' },
  { head: `${w.slopeArea}, ${print.unit('area')}`, width: 1.4, align: 'right' },
];

export const edgeColumns = ({ submittal: w }: Words, print: Printer): Column[] => [
  { head: '', width: 3 },
  { head: `${w.length}, ${print.unit('run')}`, width: 1, align: 'right' },
  { head: '', width: 2.4 },
];
