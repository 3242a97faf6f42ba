/** The message catalogue: a key that a language lacks does not compile. */
import { en } from './en.ts';
import { es } from './es.ts';
import type { Words } from './shape.ts';
import { planeName } from './terms.ts';

export type { Words };
export type Language = 'en' | 'es';

const catalogues: Readonly<Record<Language, Words>> = { en, es };

export const wordsOf = (language: Language): Words => catalogues[language];

/** The name of a connection for people: its first words in the language, then what tells it from its like. */
export function connectionName(id: string, words: Words): string {
  const [base = id, ...rest] = id.split(/(?=,)| (?=\d+$)/);
  const named = (words.connection as Readonly<Record<string, string>>)[base];
  if (named === undefined) return id;
  const [first = ''] = rest;
  if (first.startsWith(',')) return `${named}, ${planeName(first.slice(1).trim(), words)}`;
  return first === '' ? named : `${named} ${first}`;
}
