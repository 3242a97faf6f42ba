import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type * as z from 'zod';
import { isReadFault, quantityPattern, readQuantity } from './read-quantity.ts';
import { quantityText } from './schema.ts';
import type { Unit } from './unit.ts';

describe('the pattern of the schema and the reader agree', () => {
  const unitsTried: Unit[] = [
    'in',
    'ft',
    'psf',
    'psi',
    'lbf',
    'lbf·in',
    'mph',
    '1/in',
    'deg',
    'ft²',
    'kg/m³',
  ];
  const number = fc.constantFrom(
    '1',
    '0',
    '12',
    '.5',
    '1.5',
    '1e3',
    '1/2',
    '1 15/32',
    '1/0',
    '5.',
    '-2',
    '+3',
    '',
  );
  const gap = fc.constantFrom('', ' ', '-', ' - ', '.', ',', '  ');
  const name = fc.constantFrom(
    ...["'", '"', 'in', 'in.', 'ft', 'feet', 'mm', 'psf', 'lb/ft2', 'psi', 'N/mm²', 'lbf', 'lb-in', 'in-lb'],
    ...['mph', 'm/s', 'tpi', '1/in', '°', 'deg', 'sq ft', 'ft2', 'kg/m3', 'x', 'in²/in', '%', ''],
  );
  const one = fc.tuple(number, gap, name).map((parts) => parts.join(''));
  const written = fc.oneof(
    one,
    fc.tuple(one, gap, one).map((parts) => parts.join('')),
    fc.array(fc.oneof(number, gap, name), { maxLength: 7 }).map((parts) => parts.join('')),
  );
  test('on any text', () => {
    let read = 0;
    fc.assert(
      fc.property(written, fc.constantFrom(...unitsTried), (text, unit) => {
        const value = readQuantity(text, unit);
        if (!isReadFault(value)) read += 1;
        return quantityPattern(unit).test(text) === !isReadFault(value);
      }),
      { numRuns: 5000, seed: 11 },
    );
    expect(read).toBeGreaterThan(50);
  });

  const signed: [string, boolean, boolean, boolean][] = [
    // text, either sign, only positive, only negative
    ['5 psf', true, true, false],
    ['+5 psf', true, true, false],
    ['-5 psf', true, false, true],
    [' -5 psf ', true, false, true],
    ['0 psf', true, true, true],
    ['0.0 psf', true, true, true],
    ['0.5 psf', true, true, false],
    ['psf', false, false, false],
  ];
  for (const [text, either, positive, negative] of signed)
    test(`"${text}" by its sign`, () =>
      expect([
        quantityPattern('psf').test(text),
        quantityPattern('psf', 'positive').test(text),
        quantityPattern('psf', 'negative').test(text),
      ]).toEqual([either, positive, negative]));
  test('nothing is no quantity where something is wanted', () => {
    const pattern = quantityPattern('in', 'positive', false);
    expect(['0 in', '0.00 in', '0/4 in'].map((text) => pattern.test(text))).toEqual([false, false, true]);
    expect(['0.01 in', '10 in'].map((text) => pattern.test(text))).toEqual([true, true]);
  });
});

describe('spellings with digits and dashes', () => {
  const rows: [string, Unit, number][] = [
    ['300 ft2', 'ft²', 300],
    ['300 sq ft', 'ft²', 300],
    ['45 lb/ft2', 'psf', 45],
    ['400 N/mm2', 'MPa', 400],
    ['61 lb-in', 'lbf·in', 61],
    ['61 in-lb', 'lbf·in', 61],
    ['14 1/in', '1/in', 14],
    ['-5 ft 3 in', 'in', -63],
  ];
  for (const [text, unit, value] of rows)
    test(`"${text}" is ${value} ${unit}`, () => expect(readQuantity(text, unit)).toBeCloseTo(value, 9));
  for (const text of ['3 in 5 ft', '5 mm 3 in', '5 ft 3 ft', '5 ft -3 psf', '5. ft'])
    test(`"${text}" is none`, () => expect(isReadFault(readQuantity(text, 'in'))).toBe(true));
});

describe('one fault for one quantity', () => {
  const messages = (schema: z.ZodType, value: unknown) =>
    schema.safeParse(value).error?.issues.map(({ message }) => message) ?? [];
  const suction = quantityText('psf', { max: 0, min: -1000 });
  const rows: [string, string][] = [
    ['24 psf', '"24 psf" is out of range: it must be at most 0 psf'],
    ['-2000 psf', '"-2000 psf" is out of range: it must be at least -1000 psf'],
    ['-24', '"-24" has no unit; write a number with its unit, for example "45 psf"'],
    ['x'.repeat(61), 'is longer than any quantity; at most 60 characters'],
  ];
  for (const [text, message] of rows)
    test(`"${text.slice(0, 12)}"`, () => expect(messages(suction, text)).toEqual([message]));
});
