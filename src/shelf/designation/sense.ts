/** What a word of the trade means: the field it fills, the kind of thing it tells, and what it leaves open. */
import type { DesignationKind } from './reading.ts';

/** The fields that words alone can fill. */
type WordField =
  | 'head'
  | 'pointForm'
  | 'metal'
  | 'coating'
  | 'duty'
  | 'thread'
  | 'shank'
  | 'nailType'
  | 'drive';

export interface Sense {
  /** Nothing when the word only says the kind of thing, or says nothing the fields hold. */
  readonly field?: WordField | 'sealed';
  readonly value?: string;
  readonly kind?: Exclude<DesignationKind, 'unknown'>;
  readonly means: string;
  readonly doubt?: string;
}

export const kind = (name: Exclude<DesignationKind, 'unknown'>, means: string = name): Sense => ({
  kind: name,
  means,
});
/** A word that fills a field. */
export const of = (
  field: WordField | 'sealed',
  value: string,
  means: string,
  rest: Partial<Sense> = {},
): Sense => ({
  field,
  value,
  means,
  ...rest,
});

/** Phrases apart by |; a space may be written as space, dash, dot or nothing where no word runs into another. */
export type Row = readonly [phrases: string, sense: Sense];
