import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDesignation } from './read-designation.ts';

const hundredKilobytes = 100_000;
const hostile: readonly (readonly [name: string, text: string])[] = [
  ['nothing', ''],
  ['spaces', ' '.repeat(hundredKilobytes)],
  ['digits', '1'.repeat(hundredKilobytes)],
  ['words', 'washer '.repeat(hundredKilobytes / 7)],
  ['unknown words', 'blorfex '.repeat(hundredKilobytes / 8)],
  ['sizes', '10-13 x 1 1/2 '.repeat(hundredKilobytes / 14)],
  ['dashes', '-'.repeat(hundredKilobytes)],
  ['dashed digits', '1-'.repeat(hundredKilobytes / 2)],
  ['spaced digits', '1 '.repeat(hundredKilobytes / 2)],
  ['fractions', '1/'.repeat(hundredKilobytes / 2)],
  ['numbers with x', '1x'.repeat(hundredKilobytes / 2)],
  ['signs of fractions', '½'.repeat(hundredKilobytes)],
  ['a sign that spells eighteen letters', '\ufdfa'.repeat(hundredKilobytes)],
  ['washers of washers', 'w/ bonded and epdm and '.repeat(4000)],
  ['control characters', '\u0000\u0001\u0007\u001b[31m10-13 x 1\u0000'],
  ['marks on marks', `10${'\u0301'.repeat(5000)}-13 x 1`],
  ['half a character', '10-13 x 1 \ud83d'],
  ['names of object parts', '__proto__ constructor toString hasOwnProperty'],
];

describe('hostile text', () => {
  readDesignation('10-13 x 1');
  for (const [name, text] of hostile)
    test(`${name}: an answer without an exception in under 50 ms`, () => {
      const start = performance.now();
      const read = readDesignation(text);
      expect(performance.now() - start).toBeLessThan(50);
      for (const field of Object.values(read.fields))
        if (typeof field.value === 'number') expect(Number.isFinite(field.value)).toBe(true);
      if (text.length > 400) {
        expect(read.doubts.join()).toContain('only the first 400 characters are read');
        expect(read.leftovers.at(-1)?.end).toBe(text.length);
      }
    });

  test('control characters between words are spaces', () => {
    const read = readDesignation('\u0000\u0001\u0007 10-13\u0007x\u00011\u0000');
    expect(read.fields.threadsPerInch?.value).toBe(13);
  });
});

describe('any text', () => {
  const pieces = fc.constantFrom(
    '10-13',
    'x',
    '1 1/2',
    '#',
    '12',
    '-',
    '/',
    '"',
    'in',
    'mm',
    'HWH',
    'w/',
    'washer',
    '8d',
    'common',
    '.131',
    'rivet',
    '43',
    'grip',
    'SDS',
    '1e999',
    '0',
    'NaN',
    '½',
    'M',
    '6',
    ',',
    'T25',
    '304',
    'SS',
    'blorfex',
    '\u0000',
  );
  const texts = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc.array(pieces, { maxLength: 12 }).map((all) => all.join(' ')),
    fc.array(pieces, { maxLength: 12 }).map((all) => all.join('')),
  );

  test('gives finite positive sizes within reason, or none', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const { fields } = readDesignation(text);
        const { diameter_in, length_in, threadsPerInch } = fields;
        if (diameter_in) expect(diameter_in.value >= 0.03 && diameter_in.value <= 1.5).toBe(true);
        if (length_in) expect(length_in.value >= 0.05 && length_in.value <= 40).toBe(true);
        if (threadsPerInch) expect(threadsPerInch.value >= 4 && threadsPerInch.value <= 80).toBe(true);
      }),
      { numRuns: 3000, seed: 12 },
    );
  });

  test('every field and leftover shows the very piece of text it was read from', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const { fields, leftovers } = readDesignation(text);
        for (const piece of [...Object.values(fields), ...leftovers]) {
          expect(text.slice(piece.start, piece.end)).toBe(piece.text);
          expect(piece.text.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 3000, seed: 13 },
    );
  });

  test('an unknown word is never dropped, wherever it stands', () => {
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 8 }), fc.nat(8), (all, at) => {
        const text = [...all.slice(0, at), 'qzvkjw', ...all.slice(at)].join(' ');
        expect(readDesignation(text).leftovers.map((piece) => piece.text)).toContain('qzvkjw');
      }),
      { numRuns: 2000, seed: 14 },
    );
  });
});
