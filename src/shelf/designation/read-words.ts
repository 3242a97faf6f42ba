/** Finds the trade's words in a description; longest phrases first, so that "hex washer head" is not "hex". */
import { type Draft, doubt, mask, piece, put, type Span } from './draft.ts';
import { colours, shades } from './finish-words.ts';
import type { DesignationKind } from './reading.ts';
import type { Sense } from './sense.ts';
import { vocabulary } from './vocabulary.ts';

const senses = new Map<string, Sense>();
for (const [phrases, sense] of vocabulary)
  for (const phrase of phrases.split('|')) senses.set(keyOf(phrase), sense);

/** "Self-Drilling", "self drilling" and "selfdrilling" are one word. */
function keyOf(phrase: string): string {
  return phrase.replace(/[^a-z\d]+/g, '');
}

/** Digits may not belong to a size, letters not to another word; "7/8hwh" is a size and a word. */
function patternOf(phrase: string): string {
  const body = phrase.replace(/[^a-z\d]+/g, String.raw`[\s.-]*`);
  const before = /^\d/.test(phrase) ? String.raw`(?<![\d./]|[a-z]-?|\d-)` : '(?<![a-z])';
  const after = /\d$/.test(phrase) ? String.raw`(?![\d/]|\.\d|[a-rt-z]|\s?-\d|\s?x)` : '(?![a-z])';
  return `${before}${body}${after}`;
}

const phrasePattern = new RegExp(
  vocabulary
    .flatMap(([phrases]) => phrases.split('|'))
    .sort((a, b) => b.length - a.length)
    .map(patternOf)
    .join('|'),
  'g',
);
const colourPattern = new RegExp(
  String.raw`(?<![a-z])(?:(?:${shades})\s+)*(?:${colours})(?:s|\s+(?:claro|oscuro))?(?![a-z])`,
  'g',
);

/** Letters that mean one thing on a nail and another on a screw are settled by the rest of the text. */
function senseIn(draft: Draft, found: string): Sense | undefined {
  const key = keyOf(found);
  // "box" counts packs unless the thing is a nail ("16d box").
  if (key === 'box' && !/\dd(?![a-z])|penny|nail|clavo/.test(draft.normal.text)) return undefined;
  return senses.get(key);
}

/** Fields that are entered before kinds are settled by words that only hint at them. */
export interface KindHints {
  readonly said: Set<DesignationKind>;
  readonly hinted: Set<DesignationKind>;
}

export function readWords(draft: Draft, hints: KindHints): void {
  readColours(draft);
  for (const match of draft.text.matchAll(phrasePattern)) {
    const sense = senseIn(draft, match[0]);
    if (!sense) continue;
    const span: Span = [match.index, match.index + match[0].length];
    const negation = NEGATION.exec(draft.text.slice(0, match.index));
    if (negation) {
      refuse(draft, [negation.index, span[1]]);
      continue;
    }
    enter(draft, sense, span);
    mask(draft, span);
    if (sense.kind) (sense.field ? hints.hinted : hints.said).add(sense.kind);
  }
}

const NEGATION = /(?<![a-z])(?:not|no|non|without|sin|w\/o)[\s-]+$/;

/** "not painted" says what it is not: nothing can be entered for it. */
function refuse(draft: Draft, span: Span): void {
  doubt(draft, `"${piece(draft, span).text}" says what it is not; nothing is taken from it`);
  draft.leftovers.push(piece(draft, span));
  mask(draft, span);
}

function enter(draft: Draft, sense: Sense, span: Span): void {
  const { field, value } = sense;
  if (field === 'sealed') put(draft, field, value === 'yes', span, sense.means);
  else if (field !== undefined && value !== undefined) put(draft, field, value, span, sense.means);
  if (sense.doubt) doubt(draft, withPiece(piece(draft, span).text, sense.doubt));
}

const withPiece = (text: string, sentence: string): string =>
  sentence.startsWith('"') ? sentence : `"${text}": ${sentence}`;

function readColours(draft: Draft): void {
  for (const match of draft.text.matchAll(colourPattern)) {
    const span: Span = [match.index, match.index + match[0].length];
    put(draft, 'colour', match[0].replace(/\s+/g, ' '), span, 'colour of the head');
    if (match[0] === 'black' || match[0] === 'bronze')
      doubt(
        draft,
        `"${match[0]}": a paint colour, or ${match[0] === 'black' ? 'a black oxide or phosphate finish' : 'the metal'}; the colour is taken`,
      );
    mask(draft, span);
  }
}
