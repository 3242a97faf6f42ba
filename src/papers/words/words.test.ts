import { expect, test } from 'vitest';
import { demos, solvedAsIs } from '../read-back/solved-demo.ts';
import { choiceGroups } from '../submittal/groups.ts';
import { connectionName, wordsOf } from './words.ts';

const keys = (part: unknown, path = ''): string[] =>
  typeof part === 'object' && part !== null
    ? Object.entries(part).flatMap(([key, value]) => keys(value, `${path}.${key}`))
    : [path];

test('Spanish has every key English has and no other, with no text left empty', () => {
  expect(keys(wordsOf('es')).sort()).toEqual(keys(wordsOf('en')).sort());
  expect(keys(wordsOf('en')).length).toBeGreaterThan(200);
});

test('every connection of the demonstration jobs has a Spanish name', () => {
  for (const demo of demos)
    for (const { connection } of solvedAsIs(demo).answer.choices)
      expect(connectionName(connection.id, wordsOf('es')), connection.id).not.toBe(connection.id);
});

test('a name keeps what tells it from its like', () => {
  const es = wordsOf('es');
  expect(connectionName('trim joints, north', es)).toBe('uniones de remates, norte');
  expect(connectionName('pipe boot 2', es)).toBe('bota de tubo 2');
  expect(connectionName('something new', es)).toBe('something new');
});

test('connections alike but for their place share one page, others keep theirs', () => {
  const { choices } = solvedAsIs('a-boathouse').answer;
  const groups = choiceGroups(choices);
  expect(groups.flatMap((group) => group.all)).toHaveLength(choices.length);
  const joints = groups.filter((group) => group.first.connection.id.startsWith('trim joints'));
  expect(joints.map((group) => group.all.length)).toEqual([4]);
});
