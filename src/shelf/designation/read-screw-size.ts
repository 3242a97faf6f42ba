/** Sizes of screws and bolts: 10-13 x 1, #10 x 1 1/2, 1/4-14x7/8, M5.5x25, 5.5 x 25 mm, 1/4 x 3. */
import { type Draft, doubt, mask, spanOf } from './draft.ts';
import { BEFORE, FRACTION_PATTERN, MEASURE, measureOf, numberOf } from './measure.ts';
import { tappingPitch_mm } from './nominal-sizes.ts';
import { readDashedFraction, readPair, readSingles, single, withUnit } from './read-loose-size.ts';
import { takeDiameter, takeLength, takePitch, takeScrewNumber, takeThreads } from './take-size.ts';

const NO = String.raw`(?:#|(?<![a-z])(?:number|numero|num|nro|no|n[°o]|n\.)\.?)`;
const JOIN = String.raw`(?:\s*(?:x|by|por)\s*|\s+-\s+|\s+|-)`;
const metric =
  /(?<![a-z\d.])(m|st)\s?(\d{1,2}(?:[.,]\d{1,2})?)(?![\d/]|[a-wyz])(?:\s?[-x]\s?(\d(?:[.,]\d{1,2})?)(?=\s?x))?/d;
const threaded = new RegExp(
  String.raw`${BEFORE}(${NO})?\s?(\d{1,3}|${FRACTION_PATTERN})\s?("|in\b|ga?\b)?\s?-\s?(\d{1,3})(?:\s?tpi)?(?![\d/]|\.\d|[a-wyz]|\s?"|\s?in\b|\s\d+\s?\/\s?\d)`,
  'd',
);
const fractionAfter = new RegExp(
  String.raw`${BEFORE}(${NO})?\s?(\d{1,2}|${FRACTION_PATTERN})\s?(")?-(\d{2})(?=\s\d{1,2}\s?\/\s?\d)`,
  'd',
);
const numbered = new RegExp(
  String.raw`${NO}\s?(\d{1,3})(?![\d/]|\.\d|[a-fh-wyz])(?:\s?g(?:a|auge)?\b)?`,
  'd',
);
const gauged = /(?<![\d./a-z])(\d{1,2})\s?g(?:a|auge)?(?![a-fh-wyz])\.?/d;
const pitched = new RegExp(
  String.raw`${BEFORE}(\d{1,3}(?:\.\d{1,20})?)\s*(?:tpi|threads per inch|hilos)(?![a-z])`,
  'd',
);
const across = new RegExp(String.raw`(?<![a-z])(?:dia|diameter|diam|diametro)\.?\s*${MEASURE}`, 'd');
const next = new RegExp(`${JOIN}${MEASURE}`, 'dy');
const timed = new RegExp(String.raw`(?<![a-z])(?:x|by|por)\s*${MEASURE}`, 'd');

export function readScrewSize(draft: Draft): void {
  readApart(draft);
  const end = readMetric(draft) ?? readThreaded(draft) ?? readNumbered(draft);
  if (end !== undefined) readLengthAfter(draft, end);
  else if (!readPair(draft) && !readDashedFraction(draft)) readSingles(draft);
}

/** Threads and diameter written with their own word, wherever they stand. */
function readApart(draft: Draft): void {
  const threads = pitched.exec(draft.text);
  if (threads) {
    takeThreads(draft, Number(threads[1]), spanOf(threads));
    mask(draft, spanOf(threads));
  }
  const diameter = across.exec(draft.text);
  if (diameter?.[1]) takeDiameter(draft, measureOf(diameter[1], diameter[2]), spanOf(diameter));
}

function readMetric(draft: Draft): number | undefined {
  const match = metric.exec(draft.text);
  if (!match?.[2]) return undefined;
  const size = numberOf(match[2]);
  const at = spanOf(match, 2);
  takeDiameter(draft, { value: size, unit: 'mm', form: 'decimal', text: match[2] }, at);
  if (match[3])
    takePitch(draft, numberOf(match[3]), spanOf(match, 3), `pitch ${match[3]} mm from thread to thread`);
  const pitch = match[1] === 'st' ? tappingPitch_mm[String(size)] : undefined;
  if (pitch) takePitch(draft, pitch, at, `ST${size}: tapping thread with pitch ${pitch} mm (ISO 1478)`);
  mask(draft, spanOf(match));
  return spanOf(match)[1];
}

function readThreaded(draft: Draft): number | undefined {
  const match = fractionAfter.exec(draft.text) ?? threaded.exec(draft.text);
  if (!match?.[2] || !match[4]) return undefined;
  const [size, threads] = [match[2], Number(match[4])];
  // "10-1", "10-2": a number and a length, not one thread to the inch.
  if (threads < 4 && !size.includes('/')) return undefined;
  if (size.includes('/') || isInches(draft, match))
    takeDiameter(draft, measureOf(size, undefined), spanOf(match, 2));
  else takeScrewNumber(draft, Number(size), spanOf(match, 2));
  takeThreads(draft, threads, spanOf(match, 4));
  mask(draft, spanOf(match));
  return spanOf(match)[1];
}

/** `1"-8`, and `1-8` of a bolt: one inch, not number 1. */
const isInches = (draft: Draft, match: RegExpExecArray): boolean =>
  match[3] === '"' ||
  match[3] === 'in' ||
  (draft.kind === 'bolt' && match[1] === undefined && Number(match[2]) <= 2);

function readNumbered(draft: Draft): number | undefined {
  const match = numbered.exec(draft.text) ?? gauged.exec(draft.text);
  if (!match?.[1]) return undefined;
  takeScrewNumber(draft, Number(match[1]), spanOf(match, 1));
  mask(draft, spanOf(match));
  return spanOf(match)[1];
}

function readLengthAfter(draft: Draft, end: number): void {
  next.lastIndex = end;
  const match = next.exec(draft.text) ?? timed.exec(draft.text) ?? firstMarked(draft);
  if (match?.[1]) {
    const metricSize = draft.fields.diameterName?.value.endsWith(' mm') === true;
    takeLength(draft, withUnit(draft, measureOf(match[1], match[2]), metricSize), spanOf(match, 1));
    mask(draft, spanOf(match));
  } else warnOfRange(draft);
}

/** A measure that cannot be a count: it has a unit, a fraction or a point. */
function firstMarked(draft: Draft): RegExpExecArray | undefined {
  return [...draft.text.matchAll(single)].find(
    (match) => match[2] !== undefined || /[/.]/.test(match[1] ?? ''),
  );
}

/** Two screw numbers joined by a dash and no length: the second may be a size instead of threads. */
function warnOfRange(draft: Draft): void {
  const { diameterName, threadsPerInch } = draft.fields;
  const number = Number(diameterName?.value.replace('#', ''));
  const threads = threadsPerInch?.value ?? 0;
  if (!diameterName?.value.startsWith('#') || threads <= number || threads > 14 || threads % 2 === 1) return;
  doubt(
    draft,
    `"${number}-${threads}": number ${number} with ${threads} threads to the inch, or a range of sizes ${number} to ${threads}`,
  );
}
