/** What every language of the catalogue must have: the shape of the English one with every text free to differ. */
import type { en } from './en.ts';

type Like<T> = T extends (...values: infer A) => string
  ? (...values: A) => string
  : T extends string
    ? string
    : T extends readonly string[]
      ? { readonly [K in keyof T]: string }
      : { readonly [K in keyof T]: Like<T[K]> };

export type Words = Like<typeof en>;
