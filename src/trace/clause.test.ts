import { expect, test } from 'vitest';
import { inch, psi } from '../quantities/quantity.ts';
import { clause, limitText, mayNeed, needs, oneOf } from './clause.ts';
import { columnOf } from './column.ts';
import { equation } from './equation.ts';
import { isRefusal, refusalText } from './refusal.ts';

const load = equation({
  clause: 'test',
  gives: 'P',
  unit: 'lbf',
  from: { t: 'in', F: 'psi' },
  is: 't ^ 2 * F',
});
const inputs = {
  t: needs('in', 'thickness', { above: 0, max: 2 }),
  F: needs('psi', 'strength', { above: 0 }),
};
const strength = clause({
  id: 'test/1',
  title: 'test',
  cites: 'Test 1',
  inputs,
  gives: { symbol: 'P', unit: 'lbf' },
  compute: load,
});

test('a clause gives the bare number inside its limits', () => {
  expect(strength({ t: inch(2), F: psi(10) })).toBe(40);
});

for (const [name, t] of [
  ['zero', 0],
  ['negative', -1],
  ['NaN', Number.NaN],
  ['infinite', Number.POSITIVE_INFINITY],
  ['too thick', 2.1],
] as const)
  test(`a ${name} thickness is refused and named`, () => {
    const outcome = strength({ t: inch(t), F: psi(10) });
    expect(isRefusal(outcome) && outcome.input).toBe('t');
    expect(isRefusal(outcome) && refusalText(outcome)).toContain('above 0, at most 2 in');
  });

test('a missing input is refused, a missing optional one is not', () => {
  const lenient = clause({
    id: 'test/2',
    title: 'test',
    cites: 'Test 2',
    inputs: { side: oneOf(['left', 'right'], 'side'), n: mayNeed('1', 'count', { min: 1, whole: true }) },
    gives: { symbol: 'n', unit: '1' },
    compute: ({ n }) => n ?? (1 as never),
  });
  expect(lenient({ side: 'left' })).toBe(1);
  expect(isRefusal(lenient({ side: 'up' as 'left' }))).toBe(true);
  expect(isRefusal(lenient({ side: 'left', n: 1.5 as never }))).toBe(true);
  expect(limitText({ kind: 'choice', options: ['a', 'b'], means: '' })).toBe('a, b');
});

test('a result that is not finite is a refusal, never a number', () => {
  const broken = clause({
    id: 'test/3',
    title: 'test',
    cites: 'Test 3',
    inputs: {},
    gives: { symbol: 'x', unit: '1' },
    compute: () => Number.NaN as never,
  });
  expect(isRefusal(broken({}))).toBe(true);
});

test('a column gives what the clause gives, and counts what the clause refuses', () => {
  const run = columnOf(inputs, load);
  const t = Float64Array.of(0.5, 1, -1, 3, Number.NaN);
  const F = Float64Array.of(10, 20, 30, 40, 50);
  const { values, refused } = run({ t, F }, 5);
  expect([...values.slice(0, 2)]).toEqual([2.5, 20]);
  expect(refused).toBe(3);
  expect(values.slice(2).every(Number.isNaN)).toBe(true);
});
