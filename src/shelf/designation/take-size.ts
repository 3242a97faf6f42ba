/** Entering sizes: what is possible goes into a field, what is not becomes a doubt and never a number. */
import { type Draft, doubt, mask, put, type Span } from './draft.ts';
import { inchesOf, inchText, isRuleFraction, type Measure, MM_PER_INCH } from './measure.ts';
import { MOST_SCREW_NUMBER, screwNumberDiameter, screwNumberNote } from './nominal-sizes.ts';

/** No fastener of a roof is thicker, longer or smaller. */
const LIMITS = { diameter: [0.03, 1.5], length: [0.05, 40], threads: [4, 80], pitch: [0.2, 4] } as const;

const within = (value: number, [least, most]: readonly [number, number]): boolean =>
  value >= least && value <= most;

export function takeLength(draft: Draft, measure: Measure, span: Span): void {
  const length = inchesOf(measure);
  if (within(length, LIMITS.length)) {
    const means =
      measure.unit === 'mm'
        ? `${measure.value} mm = ${(measure.value / MM_PER_INCH).toFixed(3)} in long`
        : `${inchText(length)} in long`;
    put(draft, 'length_in', length, span, means);
    if (!isRuleFraction(measure.text)) doubt(draft, `"${measure.text}" is no fraction as a rule shows it`);
  } else doubt(draft, `"${measure.text}": no possible length`);
  mask(draft, span);
}

export function takeDiameter(draft: Draft, measure: Measure, span: Span): void {
  const diameter = inchesOf(measure);
  if (within(diameter, LIMITS.diameter)) {
    const metric = measure.unit === 'mm';
    const name = metric
      ? `${measure.value} mm`
      : measure.form === 'decimal'
        ? String(measure.value)
        : inchText(diameter);
    put(draft, 'diameterName', name, span, metric ? `${measure.value} millimetres` : `${name} inch`);
    put(
      draft,
      'diameter_in',
      diameter,
      span,
      metric ? `${measure.value} mm = ${diameter.toFixed(4)} in` : `${name} in`,
    );
    if (!isRuleFraction(measure.text)) doubt(draft, `"${measure.text}" is no fraction as a rule shows it`);
  } else doubt(draft, `"${measure.text}": no possible diameter`);
  mask(draft, span);
}

export function takeScrewNumber(draft: Draft, number: number, span: Span): void {
  if (number <= MOST_SCREW_NUMBER) {
    const diameter = screwNumberDiameter(number);
    put(draft, 'diameterName', `#${number}`, span, `screw number ${number}`);
    put(
      draft,
      'diameter_in',
      diameter,
      span,
      `number ${number}: ${diameter.toFixed(3)} in nominal (0.060 + 0.013 × ${number}, ASME B18.6.4)${screwNumberNote(number)}`,
    );
    if (number === 17)
      doubt(draft, '"17": 0.281 in by the formula of screw numbers, 0.290 in in some tables');
  } else doubt(draft, `"${number}": no screw has this number; they end at ${MOST_SCREW_NUMBER}`);
  mask(draft, span);
}

export function takeThreads(draft: Draft, threads: number, span: Span): void {
  if (within(threads, LIMITS.threads))
    put(draft, 'threadsPerInch', threads, span, `${threads} threads to the inch`);
  else doubt(draft, `"${threads}": no possible number of threads to the inch`);
  mask(draft, span);
}

export function takePitch(draft: Draft, pitch: number, span: Span, means: string): void {
  if (within(pitch, LIMITS.pitch)) put(draft, 'pitch_mm', pitch, span, means);
  else doubt(draft, `"${pitch}": no possible pitch`);
}
