/** deckbite margins JOB: what would break each line of the schedule. */
import type { Margin } from '../../src/answer/margins/boundary.ts';
import { type LineMargins, marginsOf } from '../../src/answer/margins/margins.ts';
import { solveJob } from '../../src/answer/solve-job.ts';
import { type Printer, printer, type System } from '../../src/papers/print-units.ts';
import { reportFaults } from './faults.ts';
import { readJobCall } from './job-call.ts';
import { ink, printable } from './terminal.ts';

export function run(args: readonly string[]): number {
  const call = readJobCall('margins', args);
  if (typeof call === 'number') return call;
  const solved = solveJob(call.job, call.shelf);
  if (!solved.ok) return reportFaults(call.path, solved.faults);
  const lines = marginsOf(solved.value);
  const print = printer(solved.value.answer.job.print.units);
  process.stdout.write(call.json ? `${JSON.stringify(lines)}\n` : textOf(lines, print));
  return 0;
}

function textOf(lines: readonly LineMargins[], print: Printer): string {
  const told = lines.map((line, i) => {
    const { connection, item, zone, spacing_in, verdict, governing } = line;
    const name =
      lines[i - 1]?.connection === connection
        ? ''
        : `\n${ink('bold')(connection)}, ${item ?? 'nothing fits'}\n`;
    const at = print.short('spacing', spacing_in);
    const table = rows(line, print).map(([what, text]) => `    ${what.padEnd(19)} ${text}\n`);
    return `${name}  zone ${zone}, ${at}: ${verdict} (${printable(governing)})\n${table.join('')}`;
  });
  return `Item and spacing held as they are; each line holds between the values told.\n${told.join('')}`;
}

type Kind = 'speed' | 'spacing' | 'thickness';

function rows({ margins, strip, verdict }: LineMargins, print: Printer): (readonly [string, string])[] {
  const told = [
    ['wind speed', marginText(margins.windSpeed_mph, 'speed', print)],
    ['spacing', marginText(margins.spacing_in, 'spacing', print)],
    ['support thickness', marginText(margins.supportThickness_in, 'thickness', print)],
    ['panel thickness', marginText(margins.panelThickness_in, 'thickness', print)],
  ] as const;
  return verdict === 'holds' ? [...told, ['edge strip', stripText(strip, print)]] : [...told];
}

function marginText(margin: Margin, kind: Kind, print: Printer): string {
  if (margin.kind === 'none')
    return margin.judged
      ? `unproven throughout; the links that can be judged: ${marginText(margin.judged, kind, print)}`
      : printable(margin.because);
  if (margin.kind === 'starts')
    return `would hold at ${safely(margin.value, margin.from === 'below' ? 'up' : 'down', kind, print)}`;
  const { least, most } = margin;
  const bounds = [
    ...(least ? [`from ${safely(least.value, 'up', kind, print)} (${printable(least.by)})`] : []),
    ...(most ? [`up to ${safely(most.value, 'down', kind, print)} (${printable(most.by)})`] : []),
  ];
  const text = bounds.length === 0 ? 'holds over all that was tried' : bounds.join(', ');
  return margin.steady ? text : `${text}; holds again farther on`;
}

/** Half of the last figure printed, in the unit kept. */
const halfFigure: Readonly<Record<System, Readonly<Record<Kind, number>>>> = {
  US: { speed: 0.5, spacing: 0.005, thickness: 0.00005 },
  SI: { speed: 0.05 / 0.44704, spacing: 0.5 / 25.4, thickness: 0.005 / 25.4 },
};

/** Rounded to the side on which it holds. */
function safely(value: number, way: 'up' | 'down', kind: Kind, print: Printer): string {
  const half = halfFigure[print.system][kind] * (1 - 1e-6);
  return print.short(kind, way === 'up' ? value + half : value - half);
}

function stripText({ failsIn, a_ft }: LineMargins['strip'], print: Printer): string {
  if (failsIn.length === 0) return 'would hold in every severer zone too, however wide its strip';
  const width = a_ft === undefined ? '' : `; the edge strip is ${print.text('run', a_ft)} wide`;
  return `no wider than drawn: it would not hold in zone ${failsIn.join(', ')}${width}`;
}
