/**
 * Sizes of blind rivets: 43 and 4-3 are 4/32 in across for a grip to 3/16 in; 1/8 x 1/4; grip .126-.187; 4.8 x 12 mm.
 * Rivet numbers are common practice; their grip steps stand in US Army TM 10-5410-221-14-1 (published).
 */
import { type Draft, doubt, mask, piece, put, type Span, spanOf } from './draft.ts';
import { BEFORE, inchesOf, inchText, MEASURE, type Measure, measureOf } from './measure.ts';
import { takeDiameter, takeLength } from './take-size.ts';

const NUMBER = String.raw`(\d{1,2}\s?\/\s?\d{1,2}|\d?\.\d{1,20}|\d{1,2}(?:,\d)?)`;
const ENDS = String.raw`\s*("|in\b\.?|mm\b)?(?![\d/]|\.\d)`;
const gripRange = new RegExp(
  String.raw`(?<![a-z])(?:grip(?:\s?range)?|agarre)\s*(?:of|de)?\s*:?\s*${NUMBER}\s*("|in\b\.?|mm\b)?\s*(?:-|to|a|thru)\s*${NUMBER}${ENDS}`,
  'd',
);
const gripMost = new RegExp(
  String.raw`(?<![a-z])(?:max\.?\s*)?(?:grip|agarre)\s*(?:max\.?|to|up to|de)?\s*:?\s*${NUMBER}${ENDS}`,
  'd',
);
const gripAfter = new RegExp(
  String.raw`(?<![\d./]|x\s?)${NUMBER}\s*("|in\b\.?|mm\b)?\s*(?:-\s*|to\s*)${NUMBER}\s*("|in\b\.?|mm\b)?\s*(?:grip|agarre)`,
  'd',
);
const gripWord = /(?<![a-z])(?:max\.?\s*)?(?:grip|agarre)(?:\s*(?:range|max))?(?![a-z])/d;
const dashed = /(?<![\d./a-z])#?([34568])\s?-\s?(\d{1,2})(?![\d/]|\.\d|\s?"|\s\d+\/)/d;
const glued = /(?<![\d./a-z])#?([34568])([1-9]|1[0-6])(?![\d/a-z]|\.\d|\s?x|\s?")/d;
const pair = new RegExp(String.raw`${BEFORE}${MEASURE}\s*(?:x|by|por)\s*${MEASURE}`, 'd');
const single = new RegExp(`${BEFORE}${MEASURE}`, 'd');
/** A text that is a rivet number and no more, but for words understood already. */
const numberOnly = /^[^a-z\d]*#?[34568](?:\s?-\s?[1-7]|[1-9]|1[0-6])[^a-z\d"./]*$/;

export const looksLikeRivetNumber = (text: string): boolean => numberOnly.test(text);
export const saysGrip = (text: string): boolean => gripWord.test(text);

export function readRivetSize(draft: Draft): void {
  readGrip(draft);
  if (readRivetNumber(draft) || readPair(draft)) return;
  const one = single.exec(draft.text);
  if (!one?.[1]) return;
  takeDiameter(draft, measureOf(one[1], one[2]), spanOf(one, 1));
  mask(draft, spanOf(one));
}

function readGrip(draft: Draft): void {
  const range = gripRange.exec(draft.text) ?? gripAfter.exec(draft.text);
  if (range?.[1] && range[3]) {
    const unit = range[4] ?? range[2];
    takeGrip(draft, 'gripFrom_in', measureOf(range[1], clean(range[2] ?? unit)), spanOf(range, 1));
    takeGrip(draft, 'gripTo_in', measureOf(range[3], clean(unit)), spanOf(range, 3));
    mask(draft, spanOf(range));
    warnOfOrder(draft);
    return;
  }
  const most = gripMost.exec(draft.text);
  if (!most?.[1]) return;
  takeGrip(draft, 'gripTo_in', measureOf(most[1], clean(most[2])), spanOf(most, 1));
  mask(draft, spanOf(most));
}

const clean = (unit: string | undefined): string | undefined => unit?.replace('.', '');

function takeGrip(draft: Draft, name: 'gripFrom_in' | 'gripTo_in', measure: Measure, span: Span): void {
  const grip = inchesOf(measure);
  const most = name === 'gripTo_in';
  if (grip <= 2 && (most ? grip > 0 : grip >= 0))
    put(draft, name, grip, span, `${most ? 'most' : 'least'} thickness it joins: ${inchText(grip)} in`);
  else doubt(draft, `"${measure.text}": no possible grip`);
}

function warnOfOrder(draft: Draft): void {
  const { gripFrom_in, gripTo_in } = draft.fields;
  if (gripFrom_in && gripTo_in && gripFrom_in.value > gripTo_in.value)
    doubt(draft, `grip from "${gripFrom_in.text}" to "${gripTo_in.text}": the first is the greater`);
}

function readRivetNumber(draft: Draft): boolean {
  const match = dashed.exec(draft.text) ?? glued.exec(draft.text);
  if (!match?.[1] || !match[2]) return false;
  const [diameter, grip] = [Number(match[1]) / 32, Number(match[2]) / 16];
  if (grip <= 0 || grip > 1) {
    doubt(draft, `"${match[0]}": no rivet number; the grip in sixteenths is not possible`);
    draft.leftovers.push(piece(draft, spanOf(match)));
    mask(draft, spanOf(match));
    return true;
  }
  put(
    draft,
    'diameterName',
    inchText(diameter),
    spanOf(match, 1),
    `${match[1]}/32 in = ${inchText(diameter)} in`,
  );
  put(
    draft,
    'diameter_in',
    diameter,
    spanOf(match, 1),
    `${match[1]}: diameter in 1/32 in = ${inchText(diameter)} in`,
  );
  if (!draft.fields.gripTo_in)
    put(
      draft,
      'gripTo_in',
      grip,
      spanOf(match, 2),
      `${match[2]}: grip to ${match[2]}/16 in = ${inchText(grip)} in`,
    );
  else if (Math.abs(draft.fields.gripTo_in.value - grip) > 0.002)
    doubt(
      draft,
      `grip "${draft.fields.gripTo_in.text}" is not the one of the rivet number "${match[0].trim()}"`,
    );
  mask(draft, spanOf(match));
  return true;
}

function readPair(draft: Draft): boolean {
  const match = pair.exec(draft.text);
  if (!match?.[1] || !match[3]) return false;
  let [first, second] = [measureOf(match[1], match[2]), measureOf(match[3], match[4])];
  const bare = first.unit === 'none' && second.unit === 'none' && first.value >= 2;
  if (bare) doubt(draft, `"${piece(draft, spanOf(match)).text}" has no unit; millimetres are taken`);
  const metric =
    bare ||
    (first.unit !== 'in' && first.form !== 'fraction' && first.value >= 2 && second.unit === 'mm') ||
    first.unit === 'mm';
  if (metric)
    [first, second] = [
      { ...first, unit: 'mm' },
      { ...second, unit: 'mm' },
    ];
  takeDiameter(draft, first, spanOf(match, 1));
  takeSecond(draft, second, match, metric);
  mask(draft, spanOf(match));
  return true;
}

/** Metric rivets are named diameter by length (ISO 15977 to 15983); inch ones by diameter and grip, or by length. */
function takeSecond(draft: Draft, second: Measure, match: RegExpExecArray, metric: boolean): void {
  const rest = draft.text.slice(spanOf(match)[1]);
  const grip = gripWord.exec(draft.text);
  if (grip) mask(draft, spanOf(grip));
  if (metric || /^\s*(?:long|length|lg|largo)/.test(rest) || draft.fields.gripTo_in)
    takeLength(draft, second, spanOf(match, 3));
  else {
    takeGrip(draft, 'gripTo_in', second, spanOf(match, 3));
    if (!grip)
      doubt(
        draft,
        `"${piece(draft, spanOf(match)).text}": the second number is the greatest grip, or the length of the body; grip is taken`,
      );
  }
}
