import { describe, expect, test } from 'vitest';
import { type AnyClause, outside } from '../../trace/clause.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { apaE830Clauses } from '../apa-e830/clause-list.ts';
import { en1995Clauses } from '../en-1995-1-1/clause-list.ts';
import { nds2018Clauses } from '../nds-2018/clause-list.ts';
import { nds2024Clauses } from '../nds-2024/clause-list.ts';
import { woodHandbookClauses } from '../wood-handbook/clause-list.ts';

const lists = {
  'nds-2018': nds2018Clauses,
  'nds-2024': nds2024Clauses,
  'wood-handbook': woodHandbookClauses,
  'en-1995-1-1': en1995Clauses,
  'apa-e830': apaE830Clauses,
};

/** A value inside the limits of each input. */
function inside({ about }: AnyClause): Record<string, unknown> {
  const pairs = Object.entries(about.inputs).map(([name, input]) => {
    if (input.kind === 'choice') return [name, input.options[0]];
    const { min, max, above } = input;
    return [
      name,
      min !== undefined && max !== undefined && !input.whole
        ? (min + max) / 2
        : (max ?? min ?? (above ?? 0) + 1),
    ];
  });
  return Object.fromEntries(pairs);
}

for (const [folder, list] of Object.entries(lists))
  describe(folder, () => {
    test('every id is in its folder, once, and every citation names the document', () => {
      expect(list.length).toBeGreaterThan(1);
      expect(new Set(list.map(({ about }) => about.id)).size).toBe(list.length);
      for (const { about } of list) expect(about.id.startsWith(`${folder}/`), about.id).toBe(true);
    });

    test('no clause lets NaN, infinity or a word through as a number', () => {
      for (const each of list)
        for (const [name, input] of Object.entries(each.about.inputs))
          for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 'six']) {
            const outcome = each({ ...inside(each), [name]: bad } as never);
            expect(outside('', name, input, bad), `${each.about.id} ${name}`).toBeDefined();
            expect(isRefusal(outcome), `${each.about.id} ${name} ${bad}`).toBe(true);
          }
    });
  });

test('the two editions of the wood specification list the same clauses under their own names', () => {
  const tails = (list: readonly AnyClause[]) => list.map(({ about }) => about.id.split('/')[1]);
  expect(tails(nds2018Clauses)).toEqual(tails(nds2024Clauses));
  expect(nds2024Clauses.every(({ about }) => about.cites.startsWith('NDS 2024'))).toBe(true);
});
