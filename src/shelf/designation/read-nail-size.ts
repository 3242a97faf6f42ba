/** Sizes of nails: 8d common, .113 x 2-3/8, 2 1/2 x .131, 11 ga x 1 1/2. */
import { type Draft, doubt, mask, piece, put, spanOf } from './draft.ts';
import { BEFORE, MEASURE, type Measure, measureOf } from './measure.ts';
import { nailSize, wireGauge } from './nominal-sizes.ts';
import { takeDiameter, takeLength } from './take-size.ts';

const pennyPattern = /(?<![\d./a-z])(\d{1,3})\s?(?:d(?![a-z])|penny)/d;
const gauge = /(?<![\d./a-z])(\d{1,2})\s?(?:ga?|gauge)(?![a-z])\.?/d;
const pair = new RegExp(String.raw`${BEFORE}${MEASURE}\s*(?:x|by|por)\s*${MEASURE}`, 'd');
const single = new RegExp(`${BEFORE}${MEASURE}`, 'd');

export function hasPenny(draft: Draft): boolean {
  return pennyPattern.test(draft.text);
}

export function readNailSize(draft: Draft): void {
  const penny = pennyPattern.exec(draft.text);
  if (penny) mask(draft, spanOf(penny));
  readGauge(draft);
  readWritten(draft);
  if (penny) takePenny(draft, penny);
}

/** Diameter and length in either order: the smaller is the diameter. */
function readWritten(draft: Draft): void {
  const match = pair.exec(draft.text);
  if (!match?.[1] || !match[3]) {
    const one = single.exec(draft.text);
    if (one?.[1]) takeOne(draft, measureOf(one[1], one[2]), one);
    return;
  }
  const written: [Measure, Measure] = [measureOf(match[1], match[2]), measureOf(match[3], match[4])];
  const metric =
    written.some(({ unit }) => unit === 'mm') ||
    written.every(({ value, unit }) => value > 1.5 && unit === 'none');
  if (metric && written.every(({ unit }) => unit === 'none'))
    doubt(draft, `"${piece(draft, spanOf(match)).text}" has no unit; millimetres are taken`);
  const [first, second] = written.map((one): Measure => (metric ? { ...one, unit: 'mm' } : one)) as [
    Measure,
    Measure,
  ];
  const reversed = second.value < first.value;
  takeDiameter(draft, reversed ? second : first, spanOf(match, reversed ? 3 : 1));
  takeLength(draft, reversed ? first : second, spanOf(match, reversed ? 1 : 3));
  mask(draft, spanOf(match));
}

function takeOne(draft: Draft, measure: Measure, match: RegExpExecArray): void {
  if (measure.unit !== 'mm' && measure.value > 0 && measure.value < 0.3)
    takeDiameter(draft, measure, spanOf(match, 1));
  else takeLength(draft, measure, spanOf(match, 1));
  mask(draft, spanOf(match));
}

function readGauge(draft: Draft): void {
  const match = gauge.exec(draft.text);
  if (!match?.[1]) return;
  const diameter = wireGauge[Number(match[1])];
  if (diameter === undefined) doubt(draft, `"${match[0].trim()}": no wire gauge of nails`);
  else {
    put(draft, 'diameterName', `${match[1]} ga`, spanOf(match), `steel wire gauge ${match[1]}`);
    put(draft, 'diameter_in', diameter, spanOf(match), `wire gauge ${match[1]}: ${diameter} in`);
  }
  mask(draft, spanOf(match));
}

/** Penny sizes fix both measures once the type is known; without it nothing is taken from them. */
function takePenny(draft: Draft, match: RegExpExecArray): void {
  const penny = Number(match[1]);
  const span = spanOf(match);
  if (penny < 2 || penny > 60) {
    doubt(draft, `"${match[0]}": nails are made from 2d to 60d`);
    return;
  }
  put(draft, 'penny', penny, span, `${penny} penny: an old measure of a nail's length`);
  const { nailType, shank, diameter_in, length_in } = draft.fields;
  const size = nailType && nailSize(nailType.value, penny);
  if (size) {
    const source = `${penny}d ${nailType.value} (NDS table L4)`;
    if (!diameter_in) put(draft, 'diameterName', `${penny}d`, span, source);
    put(draft, 'diameter_in', size.diameter_in, span, `${size.diameter_in} in: ${source}`);
    put(draft, 'length_in', size.length_in, span, `${size.length_in} in long: ${source}`);
  } else if (!diameter_in || !length_in) doubt(draft, pennyDoubt(penny, shank?.value, nailType?.value));
}

function pennyDoubt(penny: number, shank: string | undefined, type: string | undefined): string {
  if (type !== undefined)
    return `"${penny}d ${type}": diameter and length of this nail stand in no table here`;
  const kinds = (['common', 'box', 'sinker'] as const).flatMap((kind) => {
    const size = nailSize(kind, penny);
    return size ? [`${kind} ${size.diameter_in} x ${size.length_in}`] : [];
  });
  const sheathing =
    penny === 8 ? 'roof sheathing ring shank 0.113 x 2 3/8, or 0.131 x 2 1/2 as a common nail' : '';
  if (shank === 'ring' && sheathing)
    return `"${penny}d" ring shank: ${sheathing}; the size is not fixed by it`;
  return `"${penny}d": the type is not said${kinds.length > 0 ? ` (${kinds.join(', ')})` : ''}; the size is not fixed by it`;
}
