/**
 * Text as people type it, made plain: small letters, no accents, one kind of dash, of inch mark and of times sign,
 * "½" spelled out. Every character remembers where it stood, so that a field can show what it was read from.
 */
export interface NormalText {
  readonly original: string;
  readonly text: string;
  /** For each character of `text`: where the original character begins and ends. */
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

const signs: Readonly<Record<string, string>> = {
  '×': 'x',
  '✕': 'x',
  '*': 'x',
  '″': '"',
  '“': '"',
  '”': '"',
  '„': '"',
  '′': "'",
  '’': "'",
  '‘': "'",
  '´': "'",
  '–': '-',
  '—': '-',
  '−': '-',
  '‐': '-',
  '‑': '-',
  '⌀': ' ',
  Ø: ' ',
  ø: ' ',
};

function plain(character: string): string {
  const sign = signs[character];
  if (sign !== undefined) return sign;
  const spelled = character.normalize('NFKD');
  // Some single signs spell whole sentences; a fraction needs no more than five characters.
  return (spelled.length > 6 ? character : spelled)
    .replace(/\u2044/g, '/')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[\p{C}\s]/gu, ' ');
}

const FRACTION_SIGN = /^\d+\/\d+$/;

/** Plain text of the first characters, up to `most`; what stands behind them is the caller's to report. */
export function normalText(original: string, most: number): NormalText {
  const starts: number[] = [];
  const ends: number[] = [];
  let text = '';
  let at = 0;
  for (const character of original.slice(0, most)) {
    const made = character < '\u007f' ? plainAscii(character) : plain(character);
    // "1½" is one and a half, not eleven halves.
    const glued = FRACTION_SIGN.test(made) && /\d$/.test(text);
    for (const one of glued ? ` ${made}` : made) {
      text += one;
      for (let unit = 0; unit < one.length; unit++) {
        starts.push(at);
        ends.push(at + character.length);
      }
    }
    at += character.length;
  }
  return { original, text, starts, ends };
}

function plainAscii(character: string): string {
  if (character < ' ') return ' ';
  return character === '*' ? 'x' : character.toLowerCase();
}

/** The same text with a stretch replaced; the new characters stand for the whole old stretch. */
export function respelled(normal: NormalText, start: number, end: number, by: string): NormalText {
  const from = normal.starts[start] ?? 0;
  const to = normal.ends[end - 1] ?? from;
  const put = <T>(old: readonly T[], one: T): T[] => [
    ...old.slice(0, start),
    ...Array.from({ length: by.length }, () => one),
    ...old.slice(end),
  ];
  return {
    original: normal.original,
    text: normal.text.slice(0, start) + by + normal.text.slice(end),
    starts: put(normal.starts, from),
    ends: put(normal.ends, to),
  };
}
