/** Points and drives that carry a number: SDS #3, drill point 2, #2 square, T25 six-lobe, PH2, 5/16 hex. */
import { type Draft, doubt, mask, put, spanOf } from './draft.ts';
import { FRACTION_PATTERN } from './measure.ts';

const MARK = String.raw`(?:#|no\.?|num\.?)?\s?-?`;
const DRILL = String.raw`(?:self[\s-]?drilling|sds|sd|drill\s?(?:point|pt)|drillpoint|dp|autoperforantes?|punta(?:\s(?:de\s)?broca)?|point|pt|tip)\.?`;
const END = String.raw`(?![\d/]|\.\d|[a-z]|\s?x|\s?-\s?\d)`;
const afterWord = new RegExp(
  String.raw`(?<![a-z])${DRILL}\s*${MARK}\s*(?:punta|point|pt|tip)?\s*${MARK}\s?(\d)${END}`,
  'd',
);
const beforeWord = new RegExp(
  String.raw`(?<![\d./a-z]|x\s?)(?:#|no\.?)\s?(\d)\s*-?\s*${DRILL}(?:\s*(?:point|pt|punta|tip))?(?![a-z\d])`,
  'd',
);

function readPoint(draft: Draft): void {
  const match = afterWord.exec(draft.text) ?? beforeWord.exec(draft.text);
  if (!match) return;
  const number = Number(match[1]);
  if (number >= 1 && number <= 5) {
    put(draft, 'pointForm', 'drill', spanOf(match), 'drills its own hole');
    put(
      draft,
      'pointNumber',
      number,
      spanOf(match, 1),
      `drill point ${number}: the higher, the thicker the steel it drills`,
    );
  } else doubt(draft, `"${match[0].trim()}": drill points are numbered 1 to 5`);
  mask(draft, spanOf(match));
}

interface DrivePattern {
  readonly pattern: RegExp;
  readonly name: (number: string) => string;
  readonly means: (number: string) => string;
}

const BIT = String.raw`(?:[\s-]*(?:drive|bit|recess|hueco))?(?![a-z\d])`;
const numbered = (words: string, digits: string): RegExp =>
  new RegExp(
    String.raw`(?<![\d./a-z]|x\s?)(?:#|no\.?\s?)?\s?(${digits})[\s-]*(?:${words})${BIT}|(?<![a-z])(?:${words})(?:[\s-]*(?:drive|bit))?[\s-]*(?:#|no\.?\s?)?(${digits})${BIT}`,
    'd',
  );

const patterns: readonly DrivePattern[] = [
  {
    pattern: numbered('square|sq|cuadrad[ao]', '[0-4]'),
    name: (number) => `No. ${number} square bit`,
    means: (number) => `square recess number ${number}`,
  },
  {
    pattern:
      /(?<![a-z])t[\s-]?(6|7|8|10|15|20|25|27|30|40|45|50)(?![\d/a-z]|\.\d)(?:[\s-]*(?:six[\s-]?lobe|star))?(?:[\s-]*(?:drive|bit))?/d,
    name: (number) => `six-lobe ${number} bit`,
    means: (number) => `six-lobe recess number ${number} (ISO 10664)`,
  },
  {
    pattern: numbered(String.raw`six[\s-]?lobe|star`, '6|7|8|10|15|20|25|27|30|40|45|50'),
    name: (number) => `six-lobe ${number} bit`,
    means: (number) => `six-lobe recess number ${number} (ISO 10664)`,
  },
  {
    pattern: /(?<![a-z])pz[\s-]?#?([0-4])(?![\d/a-z])(?:\s*(?:drive|bit|cross recess))?/d,
    name: (number) => `No. ${number} cross recess Z bit`,
    means: (number) => `cross recess type Z, number ${number} (ISO 4757)`,
  },
  {
    pattern: /(?<![a-z])ph[\s-]?#?([0-4])(?![\d/a-z]|\.\d|\s?x|\s?-\d)(?:\s*(?:drive|bit|cross recess))?/d,
    name: (number) => `No. ${number} cross recess bit`,
    means: (number) => `cross recess type H, number ${number} (ISO 4757)`,
  },
  {
    pattern: numbered(String.raw`cross[\s-]?recess(?:ed)?|cruz`, '[0-4]'),
    name: (number) => `No. ${number} cross recess bit`,
    means: (number) => `cross recess type H, number ${number} (ISO 4757)`,
  },
];

// A fraction after "x" is the length; at the start of the text it is the diameter.
const hexSize = new RegExp(
  String.raw`(?<=\S.*)(?<![\d./]|[x-]\s*|\d\s)(${FRACTION_PATTERN}|\d{1,2}\s?mm)\s*(?:"|in\.?|inch)?\s*(?:a\/?f\s*)?(?:hex(?!\s*(?:washer|head|hd))(?:[\s-]*(?:socket|drive|bit))?(?![a-z])|(?=hex|hwh|hw\b))`,
  'd',
);

function readHexSize(draft: Draft): void {
  const match = hexSize.exec(draft.text);
  if (!match?.[1]) return;
  const width = match[1].replace(/\s/g, '');
  const name = width.endsWith('mm') ? `${width.replace('mm', ' mm')} hex socket` : `${width} in hex socket`;
  put(draft, 'drive', name, spanOf(match), 'hex, width across the flats');
  mask(draft, spanOf(match));
}

export function readPointAndDrive(draft: Draft): void {
  for (const { pattern, name, means } of patterns) {
    const match = pattern.exec(draft.text);
    const number = match?.[1] ?? match?.[2];
    if (!match || number === undefined) continue;
    put(draft, 'drive', name(number), spanOf(match), means(number));
    mask(draft, spanOf(match));
  }
  readPoint(draft);
  readHexSize(draft);
}
