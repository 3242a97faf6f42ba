/** How many: "500 - 10-13 x 1", "2 boxes of", "(250) #10", "qty 40", "3 cajas de". */
import { type Draft, doubt, mask, put, spanOf } from './draft.ts';

const NUMBER = String.raw`\d{1,3}(?:,\d{3})+|\d{1,9}`;
const UNITS: Readonly<Record<string, string>> = {
  pc: 'pieces',
  pcs: 'pieces',
  piece: 'pieces',
  pieces: 'pieces',
  pza: 'pieces',
  pzas: 'pieces',
  pieza: 'pieces',
  piezas: 'pieces',
  ea: 'pieces',
  each: 'pieces',
  ct: 'pieces',
  box: 'boxes',
  boxes: 'boxes',
  bx: 'boxes',
  caja: 'boxes',
  cajas: 'boxes',
  bag: 'bags',
  bags: 'bags',
  bolsa: 'bags',
  bolsas: 'bags',
  pack: 'packs',
  packs: 'packs',
  pail: 'pails',
  pails: 'pails',
  bucket: 'pails',
  buckets: 'pails',
  lb: 'pounds',
  lbs: 'pounds',
  kg: 'kilograms',
  dozen: 'dozens',
  docena: 'dozens',
  docenas: 'dozens',
};
const unit = Object.keys(UNITS)
  .sort((a, b) => b.length - a.length)
  .join('|');
/** What must follow a bare number for it to be a count: the beginning of a size. */
const SIZE = String.raw`(?=#|no\.?\s?\d|[mt]\s?\d|st\s?\d|\d{1,2}\s?-\s?\d{1,2}(?!\d|\s?\/)|\d{1,2}\s?\/\s?\d{1,2}\s?"?\s?-\s?\d|\.\d|0\.\d|\d{1,2}\s?d(?![a-z])|[\d./]+\s?(?:"|in|mm)?\s?x|\d{1,2}\s?\/\s?\d{1,2}\s?"?\s?x)`;

const withUnit = new RegExp(
  String.raw`(?<![\d./a-z-]|[a-z]-)\(?(${NUMBER})\)?[\s-]?(${unit})(?![a-z])\.?(?:\s*(?:of|de|-))?`,
  'd',
);
const said = new RegExp(
  String.raw`(?<![a-z])(?:qty|quantity|cantidad|cant)\.?\s*[:=]?\s*(${NUMBER})(?![\d./a-z])`,
  'd',
);
const bracketed = new RegExp(String.raw`^\s*\((${NUMBER})\)`, 'd');
const dashed = new RegExp(
  String.raw`^\s*(${NUMBER})(?:\s+-\s*|\s*-\s+|\s*[:@]\s*|-(?=\d{1,2}-(?:[89]|[1-9]\d)(?![\d/]|\s?\/|\s\d)))${SIZE}`,
  'd',
);
const bare = new RegExp(String.raw`^\s*(${NUMBER})(?:\s*x)?\s+(?:of\s+|de\s+)?${SIZE}`, 'd');
const plural = new RegExp(
  String.raw`^\s*(${NUMBER})\s+(?=(?:[a-z]+\s+){0,2}(?:screws|nails|rivets|bolts|tornillos|pijas|clavos|remaches|pernos)(?![a-z]).*\d)`,
  'd',
);
const onePack = new RegExp(String.raw`^\s*(a|one|una?)\s+(${unit})(?![a-z])(?:\s*(?:of|de))?`, 'd');

/** Masks the count before sizes are looked for, so that 500 is no size and 12 10-16 no "12 10/16". */
export function readCount(draft: Draft): void {
  if (readCountWithUnit(draft)) return;
  for (const pattern of [said, bracketed, dashed, plural, bare]) {
    const match = pattern.exec(draft.text);
    if (!match?.[1]) continue;
    const count = Number(match[1].replaceAll(',', ''));
    if (count <= 24 && belongsToSize(draft, match, pattern === bare)) continue;
    enterCount(draft, count, 'pieces', match);
    if (count <= 24 && mayBeSize(draft, match, pattern === bare))
      doubt(draft, `"${match[1]}" in front is taken as a count; it may belong to the size`);
    return;
  }
}

/** "10-10-16 x 1" and "10 16 x 1": the first number may be a count or a size. */
function mayBeSize(draft: Draft, match: RegExpExecArray, isBare: boolean): boolean {
  const rest = draft.text.slice(match.index + match[0].length);
  return isBare ? /^\d{1,2}\s?x/.test(rest) : /^\s*\d+-$/.test(match[0]);
}

/** "2 1/4 x 3" may be one number, and "10 - 13 x 1" is number 10 with 13 threads: the size reader decides. */
function belongsToSize(draft: Draft, match: RegExpExecArray, isBare: boolean): boolean {
  const rest = draft.text.slice(match.index + match[0].length);
  return isBare ? /^\d{1,2}\s?\/\s?\d{1,2}\s?"?\s?x/.test(rest) : /^\d{1,2}\s?x/.test(rest);
}

function readCountWithUnit(draft: Draft): boolean {
  const one = onePack.exec(draft.text);
  const match = one ?? withUnit.exec(draft.text);
  if (!match?.[1] || !match[2]) return false;
  enterCount(draft, one ? 1 : Number(match[1].replaceAll(',', '')), UNITS[match[2]] ?? match[2], match);
  return true;
}

function enterCount(draft: Draft, count: number, of: string, match: RegExpExecArray): void {
  if (count >= 1 && count <= 10_000_000) {
    put(draft, 'quantity', count, spanOf(match, 1), `${count} ${count === 1 ? of.replace(/e?s$/, '') : of}`);
    put(draft, 'quantityUnit', of, spanOf(match), 'what is counted');
  } else doubt(draft, `"${match[1]}": no possible count`);
  mask(draft, spanOf(match));
}
