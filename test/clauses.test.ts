import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { clausesPage } from '../scripts/clauses-page.ts';
import { jsonSchema, schemaNames } from '../src/answer/schemas.ts';
import { allClauses } from '../src/standards/all-clauses.ts';
import type { ClauseInput } from '../src/trace/clause.ts';
import { isRefusal } from '../src/trace/refusal.ts';
import type { Trace } from '../src/trace/step.ts';

/** A value well inside what an input covers. */
function inside(input: ClauseInput): number | string {
  if (input.kind === 'choice') return input.options[0] as string;
  const { min, max, above } = input;
  if (max !== undefined) return (max + (min ?? above ?? 0)) / 2;
  return (min ?? above ?? 0) + 1;
}

/** Values an input must refuse: no numbers, and numbers a hair outside its limits. */
function outsideOf(input: ClauseInput): readonly unknown[] {
  if (input.kind === 'choice') return ['no such choice', undefined];
  const hair = (limit: number) => Math.max(1e-6, Math.abs(limit) * 1e-6);
  return [
    ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 'one'],
    ...(input.min === undefined ? [] : [input.min - hair(input.min)]),
    ...(input.max === undefined ? [] : [input.max + hair(input.max)]),
    ...(input.above === undefined ? [] : [input.above]),
  ];
}

describe('every clause', () => {
  test('has a name of its own, and there are many', () => {
    const ids = allClauses.map(({ about }) => about.id);
    expect(ids.length).toBeGreaterThan(150);
    expect(new Set(ids).size).toBe(ids.length);
  });

  for (const one of allClauses) {
    const { about } = one;
    const middle = Object.fromEntries(
      Object.entries(about.inputs).map(([name, input]) => [name, inside(input)]),
    );

    test(`${about.id}: the same with and without a trace, and never a number that is not finite`, () => {
      const trace: Trace = [];
      const plain = one(middle as never);
      const traced = one(middle as never, trace);
      if (isRefusal(plain)) expect(traced).toEqual(plain);
      else {
        expect(Number.isFinite(plain)).toBe(true);
        expect(traced).toBe(plain);
        expect(trace.length).toBeGreaterThan(0);
      }
    });

    test(`${about.id}: refuses NaN, the infinite, a wrong word and what lies just outside, by the input's name`, () => {
      for (const [name, input] of Object.entries(about.inputs))
        for (const value of outsideOf(input)) {
          const outcome = one({ ...middle, [name]: value } as never);
          expect(isRefusal(outcome) && outcome.input, `${name} = ${value}`).toBe(name);
        }
    });
  }
});

test('no clause of an edition is missing from its list', () => {
  const root = new URL('../src/standards/', import.meta.url);
  const listed = new Set(allClauses.map(({ about }) => about.id));
  const missing = readdirSync(root, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap((folder) =>
      readdirSync(new URL(`${folder.name}/`, root))
        .filter((name) => name.endsWith('.ts') && !name.includes('.test.'))
        .map((name) => readFileSync(new URL(`${folder.name}/${name}`, root), 'utf8')),
    )
    // Ids written out in a file; those made from an edition's name are checked by their factories' tests.
    .flatMap((text) => [...text.matchAll(/\bid: '([^'$]+\/[^'$]+)'/g)].map((match) => match[1] as string))
    .filter((id) => !listed.has(id));
  expect(missing).toEqual([]);
});

for (const name of schemaNames)
  test(`docs/schemas/${name}.schema.json is the schema of today`, () => {
    const written = readFileSync(new URL(`../docs/schemas/${name}.schema.json`, import.meta.url), 'utf8');
    expect(JSON.parse(written)).toEqual(JSON.parse(JSON.stringify(jsonSchema(name))));
  });

test('docs/clauses.md is the list of today', () => {
  expect(readFileSync(new URL('../docs/clauses.md', import.meta.url), 'utf8')).toBe(
    clausesPage(allClauses.map(({ about }) => about)),
  );
});
