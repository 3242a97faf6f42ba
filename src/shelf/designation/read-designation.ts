/**
 * Reads a written description of a fastener: "10-16 x 1 1/2 pancake SDS #2 square", "8d common", "rivet 4-3".
 * Words and numbers that carry their own mark are taken first; what is left of the numbers is the size.
 */
import { type Draft, doubt, mask, newDraft, piece, put, type Span, spanOf } from './draft.ts';
import { normalText } from './normal-text.ts';
import { readCount } from './read-count.ts';
import { hasPenny, readNailSize } from './read-nail-size.ts';
import { readPointAndDrive } from './read-point-and-drive.ts';
import { looksLikeRivetNumber, readRivetSize, saysGrip } from './read-rivet-size.ts';
import { readScrewSize } from './read-screw-size.ts';
import { readWasher } from './read-washer.ts';
import { type KindHints, readWords } from './read-words.ts';
import { type Designation, type DesignationKind, inOrder } from './reading.ts';
import { mendSpelling } from './spelling.ts';
import { fillers } from './vocabulary.ts';

/** A description is a line; what is longer is something else, and reading it must not take long. */
const MOST_CHARACTERS = 400;

/**
 * Never throws, whatever is written.
 * @example readDesignation('10-13 x 1 1/2 pancake').fields.length_in?.value // 1.5
 */
export function readDesignation(text: string): Designation {
  const { normal, taken } = mendSpelling(normalText(text, MOST_CHARACTERS));
  const draft = newDraft(normal);
  for (const [written, word] of taken) doubt(draft, `"${written}" is taken for "${word}"`);
  refuseNegatives(draft);
  readCount(draft);
  const hints: KindHints = { said: new Set(), hinted: new Set() };
  readMandrel(draft);
  readPointAndDrive(draft);
  readWasher(draft);
  readWords(draft, hints);
  settleKind(draft, hints);
  readSize(draft);
  readLoosePoint(draft);
  gatherLeftovers(draft);
  noteLength(draft, text);
  return {
    kind: draft.kind ?? 'unknown',
    fields: inOrder(draft.fields),
    doubts: draft.doubts,
    leftovers: draft.leftovers,
  };
}

const negative = /(?:^|(?<=(?:^|\s|\d)x\s?)|(?<=[(=:]\s?))\s*(-\s?[\d.]\S*)/d;

function refuseNegatives(draft: Draft): void {
  for (let found = negative.exec(draft.text); found; found = negative.exec(draft.text)) {
    const at = spanOf(found, 1);
    doubt(draft, `"${piece(draft, at).text.slice(0, 20)}": a size is never less than nothing`);
    draft.leftovers.push(piece(draft, at));
    mask(draft, at);
  }
}

const mandrels: Readonly<Record<string, string>> = {
  al: 'aluminium',
  alu: 'aluminium',
  st: 'carbon steel',
  steel: 'carbon steel',
  a2: 'stainless 304',
  a4: 'stainless 316',
  ss: 'stainless',
};
const mandrel = /(?<![a-z])(alu?|st|steel|a2|a4|ss)\s?\/\s?(alu?|st|steel|a2|a4|ss)(?![a-z\d])/d;

/** "Al/St": metal of the body before the stroke, of the mandrel after it, as ISO 15977 to 15983 write it. */
function readMandrel(draft: Draft): void {
  const match = mandrel.exec(draft.text);
  const [body, pin] = [mandrels[match?.[1] ?? ''], mandrels[match?.[2] ?? '']];
  if (!match || !body || !pin) return;
  put(draft, 'metal', body, spanOf(match, 1), `body of ${body}`);
  put(draft, 'mandrel', pin, spanOf(match, 2), `mandrel of ${pin}`);
  mask(draft, spanOf(match));
  draft.kind = 'rivet';
}

/** What a word says goes before what a form hints at; two that differ are told. */
function settleKind(draft: Draft, { said, hinted }: KindHints): void {
  const [first, second] = [...said];
  if (first && second) doubt(draft, `both ${first} and ${second} are written; ${first} is taken`);
  if (draft.kind === undefined && first) draft.kind = first;
  draft.kind ??= kindOfForm(draft, hinted);
}

function kindOfForm(draft: Draft, hinted: ReadonlySet<DesignationKind>): DesignationKind | undefined {
  if (hasPenny(draft)) return 'nail';
  if (saysGrip(draft.text)) return 'rivet';
  const [hint] = hinted;
  if (hint) return hint;
  if (draft.fields.pointForm || draft.fields.drive) return 'screw';
  if (!looksLikeRivetNumber(draft.text)) return undefined;
  doubt(
    draft,
    `"${draft.text.replace(/[^\d-]/g, '')}" alone: read as the number of a blind rivet, though no word says so`,
  );
  return 'rivet';
}

function readSize(draft: Draft): void {
  if (draft.kind === 'nail') readNailSize(draft);
  else if (draft.kind === 'rivet') readRivetSize(draft);
  else readScrewSize(draft);
  const { diameter_in, threadsPerInch, head } = draft.fields;
  if (draft.kind === undefined && (diameter_in || threadsPerInch || head)) draft.kind = 'screw';
}

const loose = /(?<![\d./a-z])#\s?([1-5])(?![\d/a-z]|\.\d)/d;

/** A small number left over beside a known size: the point of a self-drilling screw, or the bit. */
function readLoosePoint(draft: Draft): void {
  const match = loose.exec(draft.text);
  if (!match || draft.kind !== 'screw' || draft.fields.diameter_in === undefined) return;
  const drills = draft.fields.pointForm === undefined || draft.fields.pointForm.value === 'drill';
  if (!drills || draft.fields.pointNumber) return;
  put(draft, 'pointForm', 'drill', spanOf(match), 'drills its own hole');
  put(draft, 'pointNumber', Number(match[1]), spanOf(match, 1), `drill point ${match[1]}`);
  doubt(draft, `"${match[0]}": number of the drill point, or of the bit; the point is taken`);
  mask(draft, spanOf(match));
}

/** Marks that only join or part words. */
const JOINING = '\\s\u0001,;:()\\[\\]"\'+&=|!?';

function gatherLeftovers(draft: Draft): void {
  for (const match of draft.text.matchAll(new RegExp(`[^${JOINING}]+`, 'g'))) {
    const trimmed = match[0].replace(/^[-./]+|[-./]+$/g, '');
    if (trimmed === '' || fillers.has(trimmed)) continue;
    const start = match.index + match[0].indexOf(trimmed);
    const span: Span = [start, start + trimmed.length];
    if (isFiller(trimmed)) continue;
    draft.leftovers.push(piece(draft, span));
  }
}

/** "w/", "c/" and words joined by dash or stroke that say nothing. */
const isFiller = (word: string): boolean =>
  word.split(/[-./]/).every((part) => part === '' || fillers.has(part));

function noteLength(draft: Draft, text: string): void {
  if (text.length <= MOST_CHARACTERS) return;
  doubt(draft, `only the first ${MOST_CHARACTERS} characters are read; a description is one line`);
  draft.leftovers.push({ text: text.slice(MOST_CHARACTERS), start: MOST_CHARACTERS, end: text.length });
}
