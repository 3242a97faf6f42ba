import { describe, expect, test } from 'vitest';
import { parseExpression } from '../../trace/expression.ts';
import type { Pen } from '../pdf/pen.ts';
import { setExpression, splitSymbol, symbolName, symbolNumber } from './set-expression.ts';

interface Put {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

/** Draws a formula with a pen that only notes what it was told. */
function drawn(formula: string, inputs?: Readonly<Record<string, number>>) {
  const texts: Put[] = [];
  const rules: { x: number; y: number; width: number }[] = [];
  const paths: number[] = [];
  const chain = new Proxy({}, { get: () => () => chain }) as Pen['doc'];
  const pen = {
    doc: chain,
    width: (text: string, type: { size?: number } = {}) => text.length * (type.size ?? 8) * 0.5,
    line: (text: string, x: number, y: number, type: { size?: number } = {}) =>
      texts.push({ text, x, y, size: type.size ?? 8 }),
    rule: (x: number, y: number, width: number) => rules.push({ x, y, width }),
    path: (points: readonly unknown[]) => paths.push(points.length),
  } as unknown as Pen;
  const symbol = inputs ? symbolNumber(inputs) : symbolName;
  const box = setExpression(parseExpression(formula), { pen, size: 10 }, symbol);
  box.draw(0, 100);
  return { texts, rules, paths, box };
}
const at = (list: readonly Put[], text: string): Put => {
  const found = list.find((one) => one.text === text);
  if (!found) throw new Error(`${text} is not drawn`);
  return found;
};

describe('formulas set from their trees', () => {
  test('a fraction has a bar, its numerator over and its denominator under it', () => {
    const { texts, rules } = drawn('(a + b) / c');
    expect(rules).toHaveLength(1);
    const bar = rules[0]?.y ?? 0;
    expect(at(texts, 'a').y).toBeLessThan(bar);
    expect(at(texts, 'c').y).toBeGreaterThan(bar);
    expect(texts.map(({ text }) => text)).not.toContain('(');
  });
  test('a power is raised and smaller', () => {
    const { texts } = drawn('G^2');
    expect(at(texts, '2').y).toBeLessThan(at(texts, 'G').y);
    expect(at(texts, '2').size).toBeLessThan(at(texts, 'G').size);
  });
  test('the rest of a symbol is lowered', () => {
    const { texts } = drawn('Pnot');
    expect(at(texts, 'not').y).toBeGreaterThan(at(texts, 'P').y);
  });
  test('a root is drawn over what it holds', () => {
    expect(drawn('sqrt(a + b)').paths).toEqual([5]);
  });
  test('brackets stand only where the tree needs them', () => {
    const signs = (formula: string) =>
      drawn(formula)
        .texts.map(({ text }) => text.trim())
        .join('');
    expect(signs('a * (b - c)')).toBe('a·(b−c)');
    expect(signs('a + b * c')).toBe('a+b·c');
    expect(signs('a - (b - c)')).toBe('a−(b−c)');
    expect(signs('(a * b) + c')).toBe('a·b+c');
    expect(signs('min(a, b)')).toBe('min(a;b)');
  });
  test('numbers put in keep their sign readable', () => {
    const { texts } = drawn('a * (b - c)', { a: 54.33, b: -1.4, c: -0.18 });
    expect(texts.map(({ text }) => text.trim()).join('')).toBe('54.33·(−1.4−(−0.18))');
  });
  test('what is drawn stays inside the box', () => {
    const { texts, box } = drawn('a + (b + c / d) / (e - f^2) * sqrt(g)');
    for (const { text, x, size } of texts) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x + text.length * size * 0.5).toBeLessThanOrEqual(box.width + 1);
    }
  });
});

test('symbols split into letter, prime and subscript', () => {
  expect(splitSymbol('Fu2')).toEqual({ base: 'F', prime: '', sub: 'u2' });
  expect(splitSymbol("W'pt")).toEqual({ base: 'W', prime: '′', sub: 'pt' });
  expect(splitSymbol('GCp')).toEqual({ base: 'GC', prime: '', sub: 'p' });
  expect(splitSymbol('Ω')).toEqual({ base: 'Ω', prime: '', sub: '' });
  expect(splitSymbol('cap')).toEqual({ base: 'cap', prime: '', sub: '' });
});
