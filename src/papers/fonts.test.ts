import { describe, expect, test } from 'vitest';
import { clean, cut, SIGNS } from './clean-text.ts';
import { type Face, faces, fontBytes } from './pdf/fonts.ts';
import { wordsOf } from './words/words.ts';

interface Opened {
  readonly _font: { readonly font: { hasGlyphForCodePoint(code: number): boolean } };
}

async function hasSign(face: Face): Promise<(sign: string) => boolean> {
  const { default: PDFDocument } = await import('pdfkit');
  const doc = new PDFDocument({ font: '' });
  doc.registerFont(face, fontBytes(face)).font(face);
  const { font } = (doc as unknown as Opened)._font;
  return (sign) => font.hasGlyphForCodePoint(sign.codePointAt(0) as number);
}

/** Every text of a catalogue; functions are called with something to print. */
function textsOf(part: unknown): string[] {
  if (typeof part === 'string') return [part];
  if (typeof part === 'function') return [String(part(1, 2, 3))];
  return Object.values(part as object).flatMap(textsOf);
}
const missing = (has: (sign: string) => boolean, text: string) =>
  [...new Set(text)].filter((sign) => !has(sign));

describe('the page font', () => {
  for (const face of Object.keys(faces) as Face[])
    test(`${face} has every sign that cleaned text may hold`, async () => {
      const has = await hasSign(face);
      const latin = Array.from({ length: 0x17f - 0xa0 }, (_, i) => String.fromCodePoint(0xa1 + i)).join('');
      const printable = Array.from({ length: 95 }, (_, i) => String.fromCodePoint(0x20 + i)).join('');
      expect(missing(has, clean(SIGNS + printable + latin))).toEqual([]);
    });
  for (const language of ['en', 'es'] as const)
    test(`has every sign of the words in ${language}`, async () => {
      const has = await hasSign('regular');
      const texts = textsOf(wordsOf(language));
      expect(texts.length).toBeGreaterThan(200);
      expect(missing(has, texts.join(''))).toEqual([]);
    });
  test('lacks the diameter sign, which is why ø stands for it', async () => {
    expect((await hasSign('regular'))('⌀')).toBe(false);
    expect(clean('⌀ 5')).toBe('ø 5');
  });
});

describe('cleaned text', () => {
  test('has no control signs, direction marks or line breaks', () => {
    expect(clean('a\u0000\u202eb\nc\td')).toBe('ab c d');
  });
  test('shows one box for signs the font lacks, emoji with their joiners included', () => {
    expect(clean('roof 👷‍♀️👷 屋根 ok')).toBe('roof □ □ ok');
  });
  test('joins letters and their accents', () => {
    expect(clean('man\u0303ana')).toBe('mañana');
  });
  test('is cut with an ellipsis', () => {
    expect(cut('standing seam', 9)).toBe('standing…');
    expect(cut('short', 9)).toBe('short');
  });
});
