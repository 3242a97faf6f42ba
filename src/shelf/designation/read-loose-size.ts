/** Sizes of screws without mark or threads: 10 x 1 1/2, 5.5 x 25 mm, 1/4 x 3, 3/8 lag 4 in. */
import { type Draft, doubt, mask, piece, put, type Span, spanOf } from './draft.ts';
import { BEFORE, FRACTION_PATTERN, MEASURE, type Measure, measureOf } from './measure.ts';
import { MOST_SCREW_NUMBER } from './nominal-sizes.ts';
import { takeDiameter, takeLength, takeScrewNumber } from './take-size.ts';

const dashedFraction = new RegExp(
  String.raw`${BEFORE}([4-9]|1[0-8])-(${FRACTION_PATTERN})(?![\d/]|\s?x|\s?"?\s?x)`,
  'd',
);
const pair = new RegExp(String.raw`${BEFORE}${MEASURE}\s*(?:x|by|por)\s*${MEASURE}`, 'd');
export const single = new RegExp(`${BEFORE}${MEASURE}`, 'dg');

/** A length without a unit is in inches, after a metric size in millimetres; a great number cannot be inches. */
export function withUnit(draft: Draft, measure: Measure, metricSize: boolean): Measure {
  if (measure.unit !== 'none') return measure;
  if (metricSize) return { ...measure, unit: 'mm' };
  if (measure.form === 'whole' && measure.value > 14)
    doubt(
      draft,
      `"${measure.text}" has no unit: inches, or millimetres; ${measure.value > 40 ? 'neither is taken' : 'inches are taken'}`,
    );
  return measure;
}

/** "8-1/2": no fastener here is eight and a half inches thick or numbered so; number 8, 1/2 in long. */
export function readDashedFraction(draft: Draft): boolean {
  const match = dashedFraction.exec(draft.text);
  if (!match?.[1] || !match[2]) return false;
  doubt(
    draft,
    `"${piece(draft, spanOf(match)).text}": number ${match[1]}, ${match[2]} in long, or ${match[1]} ${match[2]} in; the first is taken`,
  );
  takeScrewNumber(draft, Number(match[1]), spanOf(match, 1));
  takeLength(draft, measureOf(match[2], undefined), spanOf(match, 2));
  mask(draft, spanOf(match));
  return true;
}

export function readPair(draft: Draft): boolean {
  const match = pair.exec(draft.text);
  if (!match?.[1] || !match[3]) return false;
  const [first, second] = [measureOf(match[1], match[2]), measureOf(match[3], match[4])];
  const [at, then] = [spanOf(match, 1), spanOf(match, 3)];
  if (isMetricPair(draft, first, second, match)) {
    takeDiameter(draft, { ...first, unit: 'mm' }, at);
    takeLength(draft, { ...second, unit: 'mm' }, then);
  } else if (first.form === 'mixed') takeCounted(draft, match[1], at, second, then);
  else {
    if (first.form === 'whole' && first.unit === 'none' && first.value <= MOST_SCREW_NUMBER)
      takeScrewNumber(draft, first.value, at);
    else takeDiameter(draft, first, at);
    takeLength(draft, withUnit(draft, second, false), then);
  }
  mask(draft, spanOf(match));
  return true;
}

function isMetricPair(draft: Draft, first: Measure, second: Measure, match: RegExpExecArray): boolean {
  if (first.unit === 'mm') return true;
  if (first.unit === 'in' || first.form === 'fraction' || first.form === 'mixed') return false;
  const written = piece(draft, spanOf(match)).text;
  if (second.unit === 'mm') {
    if (first.form === 'whole')
      doubt(draft, `"${written}": ${first.value} mm, or screw number ${first.value}; millimetres are taken`);
    return first.value >= 1;
  }
  const looksMetric =
    second.unit === 'none' && first.form === 'decimal' && first.value >= 2 && second.value >= 6;
  if (looksMetric)
    doubt(draft, `"${written}" has no unit; millimetres are taken, as inches would be no fastener`);
  return looksMetric;
}

/** "2 1/4 x 3": no screw is 2 1/4 in thick, so two of 1/4 x 3. */
function takeCounted(draft: Draft, number: string, at: Span, length: Measure, then: Span): void {
  const parts = /^(\d+)[\s-]+(.+)$/.exec(number);
  if (!parts?.[1] || !parts[2]) return;
  const split = at[1] - parts[2].length;
  put(draft, 'quantity', Number(parts[1]), [at[0], at[0] + parts[1].length], `${parts[1]} pieces`);
  doubt(draft, `"${number}" cannot be a diameter; taken as ${parts[1]} pieces of ${parts[2]}`);
  takeDiameter(draft, measureOf(parts[2], undefined), [split, at[1]]);
  takeLength(draft, length, then);
}

/** One or two measures with no times sign between: "3/8 lag 4 in", "1 1/2 pancake". */
export function readSingles(draft: Draft): void {
  const found = [...draft.text.matchAll(single)].filter((match) => match[1] !== undefined);
  const [first, second] = found;
  if (!first) return;
  const measure = measureOf(first[1] as string, first[2]);
  if (measure.form === 'whole' && measure.unit === 'none' && second === undefined && draft.kind === undefined)
    return;
  const thick = draft.kind === 'bolt' || draft.fields.duty?.value === 'lag' || second !== undefined;
  takeSingle(draft, measure, spanOf(first, 1), thick);
  mask(draft, spanOf(first));
  if (!second?.[1]) return;
  takeLength(draft, withUnit(draft, measureOf(second[1], second[2]), false), spanOf(second, 1));
  mask(draft, spanOf(second));
}

function takeSingle(draft: Draft, measure: Measure, span: Span, thick: boolean): void {
  const whole = measure.form === 'whole' && measure.unit === 'none';
  if (whole && measure.value <= MOST_SCREW_NUMBER) {
    takeScrewNumber(draft, measure.value, span);
    if (!thick)
      doubt(draft, `"${measure.text}" alone: screw number ${measure.text}, or a length; the number is taken`);
  } else if (thick || (measure.unit === 'none' && measure.value <= 0.375 && measure.value > 0)) {
    takeDiameter(draft, measure, span);
    if (!thick) doubt(draft, `"${measure.text}" alone: a diameter or a length; the diameter is taken`);
  } else takeLength(draft, measure, span);
}
