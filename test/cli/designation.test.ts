import { describe, expect, test } from 'vitest';
import { deckbite } from './run.ts';

describe('deckbite designation', () => {
  test('prints field, value, piece of text and meaning', () => {
    const { code, out, err } = deckbite('designation', '10-13 x 1 1/2 pancake');
    expect([code, err]).toEqual([0, '']);
    const lines = out.split('\n').map((line) => line.trim().split(/ {2,}/));
    expect(lines[0]).toEqual(['screw']);
    expect(lines).toContainEqual(['field', 'value', 'read from', 'meaning']);
    expect(lines).toContainEqual(['threadsPerInch', '13', '"13"', '13 threads to the inch']);
    expect(lines).toContainEqual(['length_in', '1.5', '"1 1/2"', '1 1/2 in long']);
  });

  test('takes the words of the call as one description', () => {
    expect(deckbite('designation', '10-13', 'x', '1').out).toBe(deckbite('designation', '10-13 x 1').out);
  });

  test('leaves 2 with a doubt, and tells it', () => {
    const { code, out } = deckbite('designation', '12-14');
    expect(code).toBe(2);
    expect(out).toContain(
      'in doubt\n  "12-14": number 12 with 14 threads to the inch, or a range of sizes 12 to 14',
    );
  });

  test('leaves 2 with a word not understood, and shows it', () => {
    const { code, out } = deckbite('designation', '10-16 x 1 blorfex');
    expect(code).toBe(2);
    expect(out).toContain('not understood\n  blorfex');
  });

  test('leaves 3 when nothing can be read, or nothing is given', () => {
    expect(deckbite('designation', 'hello').code).toBe(3);
    const nothing = deckbite('designation');
    expect([nothing.code, nothing.out]).toEqual([3, '']);
    expect(deckbite('designation', '10-13 x 1', '--wrong').err).toContain('is no option');
  });

  test('as JSON gives each field with its place in the text', () => {
    const { code, out } = deckbite('designation', 'rivet 4-3 steel', '--json');
    expect(code).toBe(0);
    const read = JSON.parse(out);
    expect(read.kind).toBe('rivet');
    expect(read.fields.gripTo_in).toMatchObject({ value: 0.1875, text: '3', start: 8, end: 9 });
    expect([read.doubts, read.leftovers]).toEqual([[], []]);
  });

  test('control characters do not reach the terminal', () => {
    const { out } = deckbite('designation', '10-16 x 1 \u001b[31mblorf\u0007');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
  });
});
