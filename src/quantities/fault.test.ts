import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { faultsOf } from './fault.ts';

const roof = z.discriminatedUnion('form', [
  z.strictObject({ form: z.literal('gable') }),
  z.strictObject({ form: z.literal('hip'), planes: z.int() }),
]);
const kinds: [string, z.ZodType, unknown, string][] = [
  [
    'missing text',
    z.string(),
    undefined,
    'is missing; give text in quotes, with its unit where it is a quantity',
  ],
  ['a number for text', z.string(), 5, 'must be text in quotes, with its unit where it is a quantity'],
  ['text for a number', z.number(), '5', 'must be a number without quotes'],
  ['no number at all', z.number(), Number.NaN, 'must be a number without quotes'],
  ['a broken whole number', z.int(), 1.5, 'must be a whole number without quotes'],
  ['a huge whole number', z.int(), 1e300, 'is too large a number; check it'],
  ['a word for yes or no', z.boolean(), 'yes', 'must be true or false, without quotes'],
  ['an object for a list', z.array(z.string()), {}, 'must be a list in brackets'],
  ['a list for an object', z.strictObject({}), [], 'must be an object in braces'],
  ['a list for a record', z.record(z.string(), z.string()), [], 'must be an object in braces'],
  ['one word of several', z.enum(['B', 'C']), 'E', 'must be one of: B, C'],
  ['one word of several missing', z.enum(['B', 'C']), undefined, 'is missing; give one of: B, C'],
  ['a fixed word', z.literal('x'), 'y', 'must be "x"'],
  ['a fixed word with its own message', z.literal('x', { error: 'too new' }), 'y', 'too new'],
  ['empty text', z.string().min(1), '', 'is empty; write something'],
  ['short text', z.string().min(3), 'ab', 'must have at least 3 characters; it has 2; say more'],
  ['long text', z.string().max(3), 'abcd', 'must have at most 3 characters; it has 4; shorten it'],
  [
    'an empty list',
    z.array(z.string()).min(1),
    [],
    'must have at least 1 entry; it has 0; add what is missing',
  ],
  [
    'a long list',
    z.array(z.string()).max(2),
    ['', '', ''],
    'must have at most 2 entries; it has 3; remove some',
  ],
  [
    'a short pair',
    z.tuple([z.string(), z.string()]),
    ['a'],
    'must have at least 2 entries; it has 1; add what is missing',
  ],
  [
    'its own message of size',
    z.array(z.string()).min(3, { error: 'has too few corners' }),
    [],
    'has too few corners',
  ],
  ['a small number', z.number().min(0), -1, 'must be at least 0; it is -1'],
  ['a number not above', z.number().gt(0), 0, 'must be above 0; it is 0'],
  ['a large number', z.number().max(4), 7, 'must be at most 4; it is 7'],
  [
    'a date',
    z.iso.date(),
    '2026-2-30',
    '"2026-2-30" is no date; write year, month and day, for example "2026-03-31"',
  ],
  [
    'a pattern',
    z.string().regex(/^a$/),
    'b',
    '"b" is not written as it must be here; compare it with the schema',
  ],
  ['a pattern with its own message', z.string().regex(/^a$/, { error: 'must be a' }), 'b', 'must be a'],
  [
    'a check without words',
    z.string().refine(() => false),
    'b',
    'cannot be used as it stands; compare it with the schema',
  ],
  ['a check with words', z.string().refine(() => false, { error: 'is taken' }), 'b', 'is taken'],
];

const faults = (schema: z.ZodType, value: unknown) => {
  const read = z.strictObject({ here: schema }).safeParse({ here: value }, { reportInput: true });
  return read.success ? [] : faultsOf(read.error.issues);
};

describe('one plain message for each kind of fault', () => {
  for (const [name, schema, value, message] of kinds)
    test(name, () => expect(faults(schema, value)).toEqual([{ path: 'here', message }]));
  test('a kind that is not one of those known', () =>
    expect(faults(roof, { form: 'dome' })).toEqual([
      { path: 'here.form', message: 'must be one of: gable, hip' },
    ]));
  test('a kind that is missing', () =>
    expect(faults(roof, {})).toEqual([
      { path: 'here.form', message: 'is missing; give one of: gable, hip' },
    ]));
  test('a field that is not known', () =>
    expect(faults(roof, { form: 'gable', colour: 1 })).toEqual([
      { path: 'here.colour', message: 'is not a field here; check its spelling or remove it' },
    ]));
  test('a name in a record', () =>
    expect(faults(z.record(z.string().max(3), z.string()), { abcd: '' })).toEqual([
      {
        path: 'here.abcd',
        message: 'has a name that cannot stand here: it must have at most 3 characters; it has 4; shorten it',
      },
    ]));
  test('a field name of any length is shortened in the path', () =>
    expect(faults(z.strictObject({}), { ['k'.repeat(1e5)]: 1 })[0]?.path).toBe(`here.${'k'.repeat(60)}...`));
});
