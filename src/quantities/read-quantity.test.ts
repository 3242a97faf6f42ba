import fc from 'fast-check';
import { expect, test } from 'vitest';
import { convert, quantity } from './quantity.ts';
import { isReadFault, readQuantity } from './read-quantity.ts';
import { sameDimension, type Unit, units } from './unit.ts';

const rows: [string, Unit, number][] = [
  [`24'6"`, 'in', 294],
  [`24' 6 1/2"`, 'in', 294.5],
  [`24'-6"`, 'ft', 24.5],
  ['24 ft 6 in', 'in', 294],
  ['1 1/2 in', 'in', 1.5],
  ['1-1/2 in', 'in', 1.5],
  ['15/32 in', 'in', 0.46875],
  ['25.4 mm', 'in', 1],
  ['141 mph', 'mph', 141],
  ['.75 in.', 'in', 0.75],
  ['-12 psf', 'psf', -12],
  ['65 ksi', 'psi', 65_000],
  ['13 tpi', '1/in', 13],
  ['18.4°', 'deg', 18.4],
  ['1 kN/m2', 'psf', Number.NaN],
];
for (const [text, unit, value] of rows)
  test(`"${text}" in ${unit}`, () => {
    const read = readQuantity(text, unit);
    if (Number.isNaN(value)) expect(isReadFault(read)).toBe(true);
    else expect(read).toBeCloseTo(value, 10);
  });

for (const [text, unit] of [
  ['141', 'mph'],
  ['141 psf', 'mph'],
  ['', 'in'],
  ['three in', 'in'],
  ['1/0 in', 'in'],
  ['5 deg', '1'],
  ['3 in 4 psf', 'in'],
  ['1e999 in', 'in'],
] as [string, Unit][])
  test(`"${text}" is not read as ${unit} and says how to mend it`, () => {
    const read = readQuantity(text, unit);
    expect(isReadFault(read) && read.mend).toContain('for example');
  });

test('a conversion and its return agree to the last digits, for every pair of like units', () => {
  const names = Object.keys(units) as Unit[];
  const pairs = names.flatMap((a) => names.filter((b) => sameDimension(a, b)).map((b) => [a, b] as const));
  fc.assert(
    fc.property(fc.constantFrom(...pairs), fc.double({ min: -1e9, max: 1e9, noNaN: true }), ([a, b], x) => {
      fc.pre(x === 0 || Math.abs(x) > 1e-200); // below this a double loses digits of its own
      const back = convert(convert(quantity(x, a), a, b), b, a);
      return Math.abs(back - x) <= Math.abs(x) * 1e-14;
    }),
  );
});
