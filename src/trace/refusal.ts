/**
 * A clause either gives a number or says why it cannot. A refusal is a value, not an exception: a link of a
 * chain turns it into the verdict "unproven", never into a pass.
 */
export const refusalCodes = [
  'not-a-number',
  'outside-limits',
  'unknown-choice',
  'outside-scope',
  'missing-input',
  'no-finite-value',
] as const;
export type RefusalCode = (typeof refusalCodes)[number];

export interface Refusal {
  readonly refused: true;
  readonly code: RefusalCode;
  /** The clause that refuses, as cited. */
  readonly clause: string;
  /** The input it refuses, by its symbol. */
  readonly input: string;
  readonly value: number | string | undefined;
  /** What the clause covers, in words. */
  readonly allowed: string;
}

/** A number, or the reason there is none. Costs nothing: the number itself is returned bare. */
export type Outcome<T extends number> = T | Refusal;

export function isRefusal(outcome: unknown): outcome is Refusal {
  return typeof outcome === 'object' && outcome !== null && (outcome as Refusal).refused === true;
}

export function refuse(
  clause: string,
  input: string,
  value: number | string | undefined,
  allowed: string,
  code: RefusalCode = 'outside-limits',
): Refusal {
  return { refused: true, code, clause, input, value, allowed };
}

/** One sentence a person can act on. */
export function refusalText(refusal: Refusal): string {
  const value = typeof refusal.value === 'number' ? Number(refusal.value.toPrecision(4)) : refusal.value;
  if (refusal.code === 'missing-input')
    return `${refusal.clause}: ${refusal.input} is not known; needed: ${refusal.allowed}`;
  return `${refusal.clause}: ${refusal.input} = ${value} is outside what it covers; allowed: ${refusal.allowed}`;
}
