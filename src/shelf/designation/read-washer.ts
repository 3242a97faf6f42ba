/** Washers under the head: "w/ washer", "with 5/8 bonded EPDM washer", "con rondana de neopreno". */
import { type Draft, doubt, mask, piece, put, type Span, spanOf } from './draft.ts';
import { inchesOf, inchText, MEASURE, measureOf } from './measure.ts';

const WITH = String.raw`(?:(?<![a-z])(?:w\s?\/|w|with|con|c\/|plus|and|y)\s*|[+&]\s*)`;
const WITHOUT =
  /(?:(?<![a-z])(?:w\/\s?o|without|no|sin)\s+)(?:epdm |bonded |rubber )?(?:washers?|rondanas?|arandelas?)(?![a-z])/d;
const METAL =
  'stainless 304|stainless 316|stainless 410|304 ss|316 ss|ss|stainless|galvanized steel|galvanized|galv|aluminium-zinc coated steel|aluminium|aluminum|carbon steel|bi-metal 304|copper|zinc|brass';
const INNER = String.raw`(?:(?:bonded|bond|epdm|neoprene|neopreno|sealing|seal|rubber|domed|flat|metal|all|and|with|od|${METAL})[\s/-]+)`;
const NOUN = String.raw`(?<!(?:hex|round)[\s-]{0,3})(?:washers?|rondanas?|arandelas?)(?![a-z])(?!\s*(?:head|hd|face))`;
const AFTER_NOUN = String.raw`(?:\s*(?:de|of)?\s*(?:epdm|neopreno|neoprene|goma|hule))?`;
const THICK = String.raw`(?:\s*x\s*(\d?\.\d{1,20})\s*in thick)?`;
/** Groups: with; size before: number, unit; words; size after: number, unit; thickness. */
const washer = new RegExp(
  String.raw`(${WITH})?(?:(?<![\d./]|x\s?|[a-z])${MEASURE}\s*(?:od|dia\.?)?\s*)?(${INNER}{0,8})${NOUN}${AFTER_NOUN}(?:\s*(?:de\s*)?(?<=\s)(?!304|316|410)${MEASURE}(?!\s?x(?!\s*\d?\.\d+ in thick)|\s*hex)${THICK})?`,
  'd',
);
const rubberAlone = new RegExp(
  String.raw`(${WITH})?(?:(?<![\d./]|x\s?|[a-z])${MEASURE}\s*(?:od|dia\.?)?\s*)?(?:bonded\s+)?(?:epdm|neoprene|neopreno|bonded)(?:\s+(?:gasket|seal|empaque))?(?![a-z])`,
  'd',
);

const metals: readonly (readonly [RegExp, string])[] = [
  [/stainless 304|304 ss/, 'stainless 304'],
  [/stainless 316|316 ss/, 'stainless 316'],
  [/stainless 410/, 'stainless 410'],
  [/bi-metal 304/, 'bi-metal 304'],
  [/\bss\b|stainless/, 'stainless'],
  [/aluminium-zinc coated steel/, 'aluminium-zinc coated steel'],
  [/galvanized steel|galv/, 'galvanized steel'],
  [/alumini?um/, 'aluminium'],
  [/carbon steel/, 'carbon steel'],
  [/copper/, 'copper'],
  [/zinc/, 'zinc'],
  [/brass/, 'brass'],
];

export function readWasher(draft: Draft): void {
  const none = WITHOUT.exec(draft.text);
  if (none) {
    put(draft, 'washer', 'none', spanOf(none), 'no washer');
    mask(draft, spanOf(none));
    return;
  }
  const match = washer.exec(draft.text) ?? rubberAlone.exec(draft.text);
  if (!match) return;
  const written = match[0];
  const span = spanOf(match);
  readSize(draft, match);
  readWords(draft, written, span);
  warnOfMetal(draft, match);
  mask(draft, span);
}

function readSize(draft: Draft, match: RegExpExecArray): void {
  const group = match[2] !== undefined ? 2 : 5;
  const number = match[group];
  if (number !== undefined) {
    const measure = measureOf(number, match[group + 1]);
    const metric = measure.unit === 'none' && measure.value >= 10 && measure.value <= 40;
    const size = inchesOf(metric ? { ...measure, unit: 'mm' } : measure);
    if (size >= 0.2 && size <= 3)
      put(
        draft,
        'washerDiameter_in',
        size,
        spanOf(match, group),
        `washer ${metric || measure.unit === 'mm' ? `${measure.value} mm` : `${inchText(size)} in`} across`,
      );
    else doubt(draft, `"${number}": no possible size of a washer`);
  }
  if (match[7] !== undefined)
    put(draft, 'washerThickness_in', Number(match[7]), spanOf(match, 7), 'thickness of the metal');
}

function readWords(draft: Draft, written: string, span: Span): void {
  const rubber = /epdm|neopren[eo]|goma|hule|rubber/.exec(written)?.[0];
  const bonded = rubber !== undefined || /bond|seal/.test(written);
  if (/all[\s-]metal/.test(written)) {
    put(draft, 'washer', 'metal', span, 'a washer of metal without rubber');
    put(draft, 'washerRubber', 'none', span, 'no rubber');
  } else {
    put(
      draft,
      'washer',
      bonded ? 'bonded' : 'washer',
      span,
      bonded ? 'metal washer with rubber bonded to it' : 'a washer; whether it has rubber is not said',
    );
    if (rubber === 'epdm') put(draft, 'washerRubber', 'EPDM', span, 'EPDM rubber');
    else if (rubber?.startsWith('neopren')) put(draft, 'washerRubber', 'neoprene', span, 'neoprene rubber');
  }
  const shape = /domed|flat/.exec(written)?.[0];
  if (shape) put(draft, 'washerShape', shape, span, `${shape} washer`);
  const metal = metals.find(([pattern]) => pattern.test(written))?.[1];
  if (metal) put(draft, 'washerMetal', metal, span, `the washer is of ${metal}`);
}

/** "stainless washer" without "with" before it: the screw may be of it too. */
function warnOfMetal(draft: Draft, match: RegExpExecArray): void {
  if (match[1] === undefined && draft.fields.washerMetal !== undefined)
    doubt(
      draft,
      `"${piece(draft, spanOf(match)).text.trim()}": the metal is taken as the washer's; whether the fastener is of it too is not said`,
    );
}
