/** deckbite margins JOB: what would break each line of the schedule. */
import type { Bound, Margin } from '../../src/answer/margins/boundary.ts';
import { type LineMargins, marginsOf } from '../../src/answer/margins/margins.ts';
import { solveJob } from '../../src/answer/solve-job.ts';
import { reportFaults } from './faults.ts';
import { readJobCall } from './job-call.ts';
import { ink, printable } from './terminal.ts';

export function run(args: readonly string[]): number {
  const call = readJobCall('margins', args);
  if (typeof call === 'number') return call;
  const solved = solveJob(call.job, call.shelf);
  if (!solved.ok) return reportFaults(call.path, solved.faults);
  const lines = marginsOf(solved.value);
  process.stdout.write(call.json ? `${JSON.stringify(lines)}\n` : textOf(lines));
  return 0;
}

function textOf(lines: readonly LineMargins[]): string {
  const told = lines.map((line, i) => {
    const { connection, item, zone, spacing_in, verdict, governing } = line;
    const name =
      lines[i - 1]?.connection === connection
        ? ''
        : `\n${ink('bold')(connection)}, ${item ?? 'nothing fits'}\n`;
    return `${name}  zone ${zone}, ${Number(spacing_in.toFixed(2))} in: ${verdict} (${printable(governing)})\n${rows(
      line,
    )
      .map(([what, text]) => `    ${what.padEnd(19)} ${text}\n`)
      .join('')}`;
  });
  return `Item and spacing held as they are; each line holds between the values told.\n${told.join('')}`;
}

function rows({ margins, strip, verdict }: LineMargins): (readonly [string, string])[] {
  const wide: readonly (readonly [string, Margin, string, number])[] = [
    ['wind speed', margins.windSpeed_mph, 'mph', 1],
    ['spacing', margins.spacing_in, 'in', 2],
    ['support thickness', margins.supportThickness_in, 'in', 4],
    ['panel thickness', margins.panelThickness_in, 'in', 4],
  ];
  const told = wide.map(([what, margin, unit, digits]) => [what, marginText(margin, unit, digits)] as const);
  return verdict === 'holds' ? [...told, ['edge strip', stripText(strip)]] : told;
}

function marginText(margin: Margin, unit: string, digits: number): string {
  if (margin.kind === 'none')
    return `${printable(margin.because)}${margin.judged ? `; the links that can be judged: ${marginText(margin.judged, unit, digits)}` : ''}`;
  if (margin.kind === 'starts') return `would hold at ${margin.value.toFixed(digits)} ${unit}`;
  const bound = (word: string, held: Bound | undefined) =>
    held ? [`${word} ${held.value.toFixed(digits)} ${unit} (${printable(held.by)})`] : [];
  const bounds = [...bound('from', margin.least), ...bound('up to', margin.most)];
  const text = bounds.length === 0 ? 'holds over all that was tried' : bounds.join(', ');
  return margin.steady ? text : `${text}; holds again farther on`;
}

function stripText({ failsIn, a_ft }: LineMargins['strip']): string {
  if (failsIn.length === 0) return 'would hold in every severer zone too, however wide its strip';
  const width = a_ft === undefined ? '' : `; the edge strip is ${a_ft.toFixed(2)} ft wide`;
  return `no wider than drawn: it would not hold in zone ${failsIn.join(', ')}${width}`;
}
