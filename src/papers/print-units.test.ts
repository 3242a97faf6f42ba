import { describe, expect, test } from 'vitest';
import { grouped, planLength, printer, tapeLength } from './print-units.ts';

describe('numbers for print', () => {
  test('a spacing is never printed longer than it is', () => {
    expect(tapeLength(23.622, 'US')).toBe('23 1/2 in');
    expect(tapeLength(600 / 25.4, 'SI')).toBe('600 mm');
    expect(tapeLength(24, 'US')).toBe('24 in');
    expect(tapeLength(0.25, 'US')).toBe('1/4 in');
  });
  test('units follow the job and convert exactly', () => {
    expect(printer('US').text('force', 100)).toBe('100 lbf');
    expect(printer('SI').text('force', 100)).toBe('445 N');
    expect(printer('SI').text('pressure', 100)).toBe('4.79 kPa');
    expect(printer('SI').text('thickness', 0.04)).toBe('1.02 mm');
    expect(printer('SI').weight(100)).toBe('45.4 kg');
  });
  test('long numbers are grouped, minus zero is zero', () => {
    expect(grouped(1234567.891, 2)).toBe('1 234 567.89');
    expect(grouped(9999)).toBe('9999');
    expect(grouped(-0.001, 2)).toBe('0.00');
    expect(grouped(-12.5, 1)).toBe('−12.5');
  });
  test('plan lengths carry twelve inches to a foot', () => {
    expect(planLength(1007.7, 'US')).toBe(`84'-0"`);
    expect(planLength(1000, 'SI')).toBe('25.40 m');
  });
});
