import { describe, expect, test } from 'vitest';
import { deckbite } from './run.ts';

const pullOut = ['clause', 'aisi-s100-16/j4.4.1-pull-out', 'tc=0.0566 in', 'd=0.19 in', 'Fu2=65 ksi'];

describe('deckbite clause', () => {
  test('lists every clause, one a line', () => {
    const { code, out } = deckbite('clause');
    expect(code).toBe(0);
    const lines = out.trim().split('\n');
    expect(lines.length).toBeGreaterThan(150);
    for (const line of lines) expect(line).toMatch(/^\S+\/\S+ {2}\S.*\[.+\]$/);
  });

  test('works one out with its steps', () => {
    const { code, out } = deckbite(...pullOut);
    expect(code).toBe(0);
    expect(out).toContain(
      'Pnot = 0.85 · tc · d · Fu2 = 0.85 · 0.0566 · 0.19 · 65000 = 594.2 lbf   [AISI S100-16 J4.4.1]',
    );
  });

  test('as JSON gives value, unit and steps', () => {
    const { out } = deckbite(...pullOut, '--json');
    const { value, unit, steps } = JSON.parse(out);
    expect(value).toBeCloseTo(0.85 * 0.0566 * 0.19 * 65_000, 9);
    expect([unit, steps.length]).toEqual(['lbf', 1]);
  });

  test('a refusal leaves 2 and says what is covered', () => {
    const { code, out } = deckbite(
      'clause',
      'aisi-s100-16/j4.4.1-pull-out',
      'tc=0.06 in',
      'd=5/16 in',
      'Fu2=65 ksi',
      '--json',
    );
    expect(code).toBe(2);
    expect(JSON.parse(out).refusal).toMatchObject({
      input: 'd',
      code: 'outside-limits',
      allowed: '0.08 to 0.25 in',
    });
  });

  const bad: [string, string[], string][] = [
    ['an unknown clause', ['clause', 'none/none', 'x=1'], 'is no clause here'],
    ['an unknown input', [...pullOut, 'zz=1'], 'is no input of this clause; its inputs are: tc, d, Fu2'],
    [
      'a missing unit',
      ['clause', 'aisi-s100-16/j4.4.1-pull-out', 'tc=0.0566', 'd=0.19 in', 'Fu2=65 ksi'],
      'has no unit',
    ],
    ['a word that is no pair', ['clause', 'aisi-s100-16/j4.4.1-pull-out', 'tc'], 'is not name=value'],
  ];
  for (const [name, args, message] of bad)
    test(name, () => {
      const { code, err } = deckbite(...args);
      expect(code).toBe(3);
      expect(err).toContain(message);
    });
});

describe('help and schema', () => {
  test('--help teaches every command', () => {
    const { code, out } = deckbite('--help');
    expect(code).toBe(0);
    for (const name of ['solve', 'clause', 'schema', 'demo']) expect(out).toContain(name);
    expect(deckbite('solve', '--help').out).toContain('Leaves 0 when all hold');
  });
  for (const name of ['job', 'shelf', 'result'])
    test(`schema ${name} is a JSON Schema`, () => {
      const { code, out } = deckbite('schema', name);
      expect(code).toBe(0);
      expect(JSON.parse(out).$schema).toContain('json-schema.org');
    });
});
