import { describe, expect, test } from 'vitest';
import { inch, lbf, psi } from '../quantities/quantity.ts';
import { equation } from './equation.ts';
import { walk } from './evaluate.ts';
import { parseExpression } from './expression.ts';
import { stepLine } from './print.ts';
import type { Trace } from './step.ts';

const pull = equation({
  clause: 'test',
  gives: 'P',
  unit: 'lbf',
  from: { t: 'in', d: 'in', F: 'psi' },
  is: '0.85 * t * d * F',
});

describe('equation', () => {
  test('calculates what it prints', () => {
    const trace: Trace = [];
    const value = pull({ t: inch(0.05), d: inch(0.2), F: psi(60_000) }, trace);
    expect(value).toBeCloseTo(510, 9);
    expect(trace).toHaveLength(1);
    expect(stepLine(trace[0] as (typeof trace)[0])).toBe(
      'P = 0.85 · t · d · F = 0.85 · 0.05 · 0.2 · 60000 = 510 lbf   [test]',
    );
  });

  test('gives the same bits walked and compiled', () => {
    const law = equation({
      clause: 'test',
      gives: 'y',
      unit: '1',
      from: { a: '1', b: '1' },
      is: 'sqrt(a) * b ^ 0.18 + min(a, b) / 3 - exp(-a) * log10(b)',
    });
    const values = Array.from({ length: 200 }, (_, i) =>
      law({ a: 1.1 + (i % 7) / 3, b: 2.3 + (i % 7) / 7 } as never),
    );
    values.forEach((value, i) => {
      expect(Object.is(value, values[i % 7])).toBe(true);
    });
  });

  test('records nothing when nobody asks', () => {
    expect(pull({ t: inch(1), d: inch(1), F: psi(1) })).toBe(0.85);
  });

  test('refuses a formula whose dimension is not that of its result', () => {
    const wrong = equation({
      clause: 'test',
      gives: 'P',
      unit: 'lbf',
      from: { t: 'in', F: 'psi' },
      is: 't * F',
    });
    expect(() => wrong({ t: inch(1), F: psi(1) })).toThrow('does not give lbf');
  });

  test('refuses units that belong to different systems, though the kind is right', () => {
    const wrong = equation({
      clause: 'test',
      gives: 'F',
      unit: 'lbf',
      from: { p: 'psf', w: 'in' },
      is: 'p * w ^ 2',
    });
    expect(() => wrong.formula()).toThrow('differ in size');
    const right = equation({
      clause: 'test',
      gives: 'F',
      unit: 'lbf',
      from: { p: 'psf', w: 'ft' },
      is: 'p * w ^ 2',
    });
    expect(() => right.formula()).not.toThrow();
  });

  test('refuses a stray and a missing symbol', () => {
    const stray = equation({
      clause: 'test',
      gives: 'P',
      unit: 'lbf',
      from: { P1: 'lbf', P2: 'lbf' },
      is: '2 * P1',
    });
    expect(() => stray.formula()).toThrow('P2 is given but not used');
    const missing = equation({ clause: 'test', gives: 'P', unit: 'lbf', from: { P1: 'lbf' }, is: 'P1 + P2' });
    expect(() => missing.formula()).toThrow('P2 is used but not given');
  });

  test('adds only terms of one kind', () => {
    const mixed = equation({
      clause: 'test',
      gives: 'P',
      unit: 'lbf',
      from: { P1: 'lbf', t: 'in' },
      is: 'P1 + t',
    });
    expect(() => mixed({ P1: lbf(1), t: inch(1) })).toThrow('different kinds');
  });
});

describe('expression', () => {
  const rows: [string, number][] = [
    ['2 + 3 * 4', 14],
    ['(2 + 3) * 4', 20],
    ['-2 ^ 2', -4],
    ['2 ^ 3 ^ 2', 512],
    ['8 / 4 / 2', 1],
    ['10 - 4 - 3', 3],
    ['2 * x ^ -0.5', 1],
    ['sqrt(x) + min(3, 2, 5)', 4],
    ['log10(1000) + exp(0)', 4],
    ['cos(60) + sin(30) + tan(45)', 2],
    ['abs(-x)', 4],
  ];
  for (const [text, value] of rows)
    test(`"${text}" is ${value} by walking and by native code`, () => {
      const tree = parseExpression(text);
      expect(walk(tree, { x: 4 })).toBeCloseTo(value, 12);
      const symbols = text.includes('x') && !text.startsWith('log') ? { x: '1' as const } : {};
      const run = equation({ clause: 'test', gives: 'y', unit: '1', from: symbols, is: text });
      expect(run({ x: 4 } as never)).toBeCloseTo(value, 12);
    });

  for (const text of ['', '2 +', '2 3', 'sqrt 4', '(1', 'shell(1)', '1 ; 2', 'a..b'])
    test(`"${text}" is not a formula`, () => expect(() => parseExpression(text)).toThrow());
});
