/** The message catalogue: a key that a language lacks does not compile. */
import { en } from './en.ts';
import { es } from './es.ts';

/** The shape of the English catalogue with every text free to differ. */
type Like<T> = T extends (...values: infer A) => string
  ? (...values: A) => string
  : T extends string
    ? string
    : T extends readonly string[]
      ? { readonly [K in keyof T]: string }
      : { readonly [K in keyof T]: Like<T[K]> };
export type Words = Like<typeof en>;
export type Language = 'en' | 'es';

const catalogues: Readonly<Record<Language, Words>> = { en, es };

export const wordsOf = (language: Language): Words => catalogues[language];

/** The name of a connection for people: its first words in the language, then what tells it from its like. */
export function connectionName(id: string, words: Words): string {
  const [base = id, ...rest] = id.split(/(?=,)| (?=\d+$)/);
  const named = (words.connection as Readonly<Record<string, string>>)[base];
  if (named === undefined) return id;
  const [first = ''] = rest;
  return `${named}${first === '' || first.startsWith(',') ? first : ` ${first}`}`;
}
