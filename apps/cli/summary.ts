/** The answer in a terminal: what is asked, the schedule, what falls short, the order. */
import type { Answer } from '../../src/answer/answer.ts';
import type { ConnectionChoice, ScheduleLine } from '../../src/choose/schedule.ts';
import { ink, printable } from './terminal.ts';

const figure = (value: number | undefined, decimals: number): string =>
  value === undefined ? '-' : value.toFixed(decimals);

export function summaryOf(answer: Answer): string {
  const bold = ink('bold');
  const { job, basis, count, takeoff } = answer;
  const area = answer.roof.planes.reduce((sum, plane) => sum + plane.slopeArea_ft2, 0);
  return [
    bold(printable(job.name)),
    `${answer.field.cites}, ${basis.method}; ${answer.roof.planes.length} planes, ${area.toFixed(0)} ft² on the slope`,
    '',
    ...asked(answer),
    ...schedule(answer),
    '',
    ...shortfalls(answer),
    `${bold(`${count.holds} hold, ${count.fallsShort} fall short, ${count.unproven} unproven`)}   order ${takeoff.total.toFixed(2)} ${takeoff.currency}, ${takeoff.weight_lbf.toFixed(0)} lb`,
    '',
  ].join('\n');
}

function asked(answer: Answer): string[] {
  const open = answer.inputs.filter((input) => input.standing === 'asked');
  return open.length === 0
    ? []
    : ['To ask:', ...open.map((input) => `  ${input.path}: ${printable(input.because ?? '')}`), ''];
}

function schedule(answer: Answer): string[] {
  const rows = answer.choices.flatMap((choice) =>
    choice.lines.map((line, i) => rowOf(answer, choice, line, i === 0)),
  );
  const head = ['connection', 'item', 'zone', 'in', 'each', 'load lb', 'governed by', 'ratio', 'verdict'];
  const widths = head.map((title, i) => Math.max(title.length, ...rows.map((row) => (row[i] ?? '').length)));
  const right = new Set([3, 4, 5, 7]);
  const print = (row: readonly string[]) =>
    row
      .map((cell, i) =>
        right.has(i) ? cell.padStart(widths[i] as number) : cell.padEnd(widths[i] as number),
      )
      .join('  ')
      .trimEnd();
  return [ink('dim')(print(head)), ...rows.map(print)];
}

function rowOf(answer: Answer, choice: ConnectionChoice, line: ScheduleLine, first: boolean): string[] {
  const zone = answer.field.zones[line.zone]?.label ?? '';
  const link = line.checks[line.governing]?.capacity.link ?? 'nothing checked';
  return [
    first ? choice.connection.id : '',
    first ? (choice.item?.id ?? 'nothing fits') : '',
    zone,
    figure(line.spacing_in, 1),
    String(line.each),
    figure(line.fastenerLoad_lbf, 0),
    link,
    figure(line.ratio, 2),
    line.verdict,
  ];
}

function shortfalls(answer: Answer): string[] {
  const short = answer.choices.flatMap((choice) =>
    choice.lines
      .filter((line) => line.verdict === 'falls short')
      .map((line) => {
        const check = line.checks[line.governing];
        return `  ${choice.connection.id}, zone ${answer.field.zones[line.zone]?.label}: ${check?.capacity.link} carries ${figure(check?.capacity.value, 0)} of ${figure(check?.demand, 0)} ${check?.capacity.unit}`;
      }),
  );
  return short.length === 0 ? [] : [ink('red')('Falls short:'), ...short, ''];
}
