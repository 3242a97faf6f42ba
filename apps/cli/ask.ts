/** deckbite ask JOB: what to ask next, most decisive first. */

import type { VerdictCount } from '../../src/answer/answer.ts';
import { askOf } from '../../src/answer/ask/ask.ts';
import type { Moves } from '../../src/answer/ask/moves.ts';
import type { AskReport, RankedQuestion, ValueEffect } from '../../src/answer/ask/report.ts';
import type { Robust } from '../../src/answer/ask/robust.ts';
import { reportFaults } from './faults.ts';
import { readJobCall } from './job-call.ts';
import { ink, printable } from './terminal.ts';

const REMAIN = 2;

export function run(args: readonly string[]): number {
  const call = readJobCall('ask', args);
  if (typeof call === 'number') return call;
  const report = askOf(call.job, call.shelf);
  if (!report.ok) return reportFaults(call.path, report.faults);
  process.stdout.write(call.json ? `${JSON.stringify(report.value)}\n` : textOf(report.value));
  return report.value.questions.length + report.value.withoutRange.length === 0 ? 0 : REMAIN;
}

function textOf(report: AskReport): string {
  const { present, reference, questions, needNotBeAsked, withoutRange, joint, currency } = report;
  const state = present
    ? `As it stands: ${counted(present.count)}; order ${money(present.price)} ${currency}`
    : 'As it stands it cannot be solved.';
  const blocks = [
    [
      state,
      ...(questions.length === 0
        ? []
        : [
            `With every unknown at its value marked *: ${counted(reference.count)}; order ${money(reference.price)} ${currency}`,
          ]),
    ],
    ...questions.map(questionLines),
    needNotBeAsked.length === 0
      ? []
      : [
          'Need not be asked: the answer is the same for all of these, also where everything else is at its worst',
          ...needNotBeAsked.map(
            ({ path, standing, values }) =>
              `   ${path}${standing === 'asked' ? ' (write one down as assumed)' : ''}: ${values.map(({ text }) => printable(text)).join(' / ')}`,
          ),
        ],
    withoutRange.length === 0
      ? []
      : [
          'Open, and no range is at hand to try:',
          ...withoutRange.map(({ path, own }) => `   ${path}: ${printable(own)}`),
        ],
    joint && questions.length > 0 ? jointLines(joint) : [],
    questions.length + withoutRange.length === 0 ? ['Nothing needs to be asked.'] : [],
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

function questionLines(one: RankedQuestion): string[] {
  const { question, own, values, moves, range } = one;
  const dim = ink('dim');
  return [
    `${ink('bold')(`${one.rank}. ${question.en}`)}`,
    `   ${question.es}`,
    dim(`   ${one.path}, ${one.standing}${own === undefined ? '' : `: ${printable(own)}`}`),
    dim(`   tried: ${range.source} (${range.origin})`),
    `   moves ${movesText(moves)}${one.onlyAtWorst ? ', where the other unknowns are at their worst' : ''}`,
    ...valueTable(values),
    ...(one.wantedTest && one.wantedTest.length > 0
      ? [
          `   a test is sufficient that allows ${one.wantedTest.map((row) => `${row.allowable_psf.toFixed(1)} psf at ${Number(row.spacing_in.toFixed(2))} in`).join(', ')}`,
        ]
      : []),
    ...robustLines(one.robust, values),
  ];
}

const movesText = ({ verdicts, items, spacings, price }: Moves): string =>
  [
    plural(verdicts, 'verdict'),
    plural(items, 'item'),
    plural(spacings, 'spacing'),
    `the order by ${money(price)}`,
  ].join(', ');

const plural = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? '' : 's'}`;
const money = (value: number): string => value.toFixed(2);
const counted = ({ holds, fallsShort, unproven }: VerdictCount): string =>
  `${holds} hold, ${fallsShort} fall short, ${unproven} unproven`;

function valueTable(values: readonly ValueEffect[]): string[] {
  const width = Math.max(...values.map(({ text }) => text.length));
  return values.map((value) => {
    const head = `   ${value.isReference ? '*' : ' '} ${printable(value.text).padEnd(width)}`;
    if (!value.answer) return `${head}  cannot be solved: ${printable(value.cannot ?? '')}`;
    const { count, price } = value.answer;
    const cells = [count.holds, count.fallsShort, count.unproven].map((n) => String(n).padStart(3)).join('/');
    return `${head}  ${cells}  ${money(price).padStart(10)}${changes(value)}`;
  });
}

function changes({ isReference, priceDifference = 0, items = [], verdicts = [], spacings = 0 }: ValueEffect) {
  if (isReference) return '   hold/short/unproven, order';
  const parts = [
    ...(Math.abs(priceDifference) < 0.005
      ? []
      : [`${priceDifference > 0 ? '+' : ''}${money(priceDifference)}`]),
    ...(verdicts.length === 0 ? [] : [plural(verdicts.length, 'verdict')]),
    ...items.map(({ connection, to }) => `${connection}: ${to}`),
    ...(spacings === 0 ? [] : [plural(spacings, 'spacing')]),
  ];
  return `   ${parts.length === 0 ? 'the same' : parts.join('; ')}`;
}

function robustLines(robust: Robust, values: readonly ValueEffect[]): string[] {
  if (!robust.found) return [`   one order for all: none; ${robust.because}`];
  const { serves, beyond, price, overCheapest } = robust;
  const whole =
    serves.length === values.length
      ? 'one order for all'
      : `one order for ${serves.length} of ${values.length}`;
  const cheaper = serves.filter((one) => one.price < (priceAt(values, one.name) ?? 0));
  const short = robust.count.fallsShort + robust.count.unproven;
  return [
    `   ${whole}: ${money(price)}, ${money(overCheapest)} over the cheapest${short > 0 ? `; ${counted(robust.count)} for reasons beside this question` : ''}`,
    ...(cheaper.length === 0
      ? []
      : [
          `   it costs less than what is chosen at: ${cheaper.map(({ name }) => printable(name)).join(' / ')}`,
        ]),
    ...(beyond.length === 0
      ? []
      : [`   no choice of fasteners mends: ${beyond.map((name) => printable(name)).join(' / ')}`]),
  ];
}

const priceAt = (values: readonly ValueEffect[], text: string): number | undefined =>
  values.find((value) => value.text === text)?.answer?.price;

function jointLines({ corner, answer, robust, without }: NonNullable<AskReport['joint']>): string[] {
  return [
    'All together, each at the worst that fasteners can answer for (one corner solved, not every combination):',
    ...corner.map(({ path, text }) => `   ${path}: ${printable(text)}`),
    ...(answer ? [`   ${counted(answer.count)}; order ${money(answer.price)}`] : []),
    robust.found
      ? `   one order for this corner and for each value alone that is as sound: ${money(robust.price)}, ${money(robust.overCheapest)} over the cheapest of them`
      : `   one order for all: none; ${robust.because}`,
    ...(without.length === 0
      ? []
      : [`   not in it, since other joints, parts or zones follow: ${without.join(', ')}`]),
  ];
}
