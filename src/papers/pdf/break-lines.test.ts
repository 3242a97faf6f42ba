import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakLines, shortened } from './break-lines.ts';

/** Every sign one wide. */
const width = (text: string) => [...text].length;

test('breaks at spaces, and inside a word only when it is longer than the line', () => {
  expect(breakLines('two words abcdefghijkl', 5, width)).toEqual(['two', 'words', 'abcde', 'fghij', 'kl']);
});

test('says with an ellipsis that something was cut', () => {
  expect(breakLines('one two three four', 5, width, 2)).toEqual(['one', 'two…']);
  expect(shortened('abcdef', 4, width)).toBe('abc…');
});

test('no line is ever wider than the width, and no more of them than asked', () => {
  fc.assert(
    fc.property(
      fc.string({ maxLength: 120 }),
      fc.integer({ min: 2, max: 30 }),
      fc.integer({ min: 1, max: 6 }),
      (text, room, most) => {
        const lines = breakLines(text, room, width, most);
        expect(lines.length).toBeLessThanOrEqual(most);
        for (const line of lines) expect(width(line)).toBeLessThanOrEqual(room);
      },
    ),
  );
});

test('nothing is lost when there is no limit', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 120 }), fc.integer({ min: 1, max: 20 }), (text, room) => {
      const bare = (part: string) => part.replaceAll(' ', '');
      expect(bare(breakLines(text, room, width).join(''))).toBe(bare(text));
    }),
  );
});
