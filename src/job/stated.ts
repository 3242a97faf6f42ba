/**
 * The standing of an input: given by the customer, assumed by us with the reason, or asked and not known yet.
 * In the document: the bare value; { "assume": value, "because": "..." }; { "ask": "the question" }.
 */
import * as z from 'zod';

export type Stated<T> =
  | { readonly standing: 'given'; readonly value: T }
  | { readonly standing: 'assumed'; readonly value: T; readonly because: string }
  | { readonly standing: 'asked'; readonly question: string };

const sentence = z.string().min(3, { error: 'say it in a sentence' }).max(500);

export function stated<T extends z.ZodType>(inner: T) {
  const given = inner.transform((value): Stated<z.output<T>> => ({ standing: 'given', value }));
  const assumed = z
    .strictObject({ assume: inner, because: sentence })
    .transform((input): Stated<z.output<T>> => {
      const { assume, because } = input as { assume: z.output<T>; because: string };
      return { standing: 'assumed', value: assume, because };
    });
  const asked = z
    .strictObject({ ask: sentence })
    .transform(({ ask }): Stated<z.output<T>> => ({ standing: 'asked', question: ask }));
  return z.union([given, assumed, asked]);
}

/** The value of an input, or nothing while it is only asked. */
export function known<T>(input: Stated<T> | undefined): T | undefined {
  return input === undefined || input.standing === 'asked' ? undefined : input.value;
}
