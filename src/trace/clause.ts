/**
 * A clause of a standard as a function: named inputs with units and limits in, a quantity or a refusal out.
 * The limits stand in data, so that the same text refuses a value, fills the list of clauses and tells a
 * person what may be put in.
 */
import type { Quantity } from '../quantities/quantity.ts';
import type { Unit } from '../quantities/unit.ts';
import { isRefusal, type Outcome, type Refusal, refuse } from './refusal.ts';
import type { Trace } from './step.ts';

export interface QuantityInput<U extends Unit = Unit, O extends boolean = boolean> {
  readonly kind: 'quantity';
  readonly unit: U;
  readonly means: string;
  /** Lowest value covered. */
  readonly min?: number;
  /** Highest value covered. */
  readonly max?: number;
  /** The value must lie above this. */
  readonly above?: number;
  readonly whole?: boolean;
  readonly optional: O;
}

export interface ChoiceInput<T extends string = string> {
  readonly kind: 'choice';
  readonly options: readonly T[];
  readonly means: string;
}

export type ClauseInput = QuantityInput | ChoiceInput;
export type ClauseInputs = Readonly<Record<string, ClauseInput>>;

type ValueOf<I> =
  I extends QuantityInput<infer U, infer O>
    ? O extends true
      ? Quantity<U> | undefined
      : Quantity<U>
    : I extends ChoiceInput<infer T>
      ? T
      : never;

export type ClauseValues<I extends ClauseInputs> = {
  readonly [K in keyof I as I[K] extends { readonly optional: true } ? never : K]: ValueOf<I[K]>;
} & { readonly [K in keyof I as I[K] extends { readonly optional: true } ? K : never]?: ValueOf<I[K]> };

interface Limits {
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly whole?: boolean;
}

/** An input with a unit. Without limits any finite number is taken. */
export function needs<const U extends Unit>(
  unit: U,
  means: string,
  limits: Limits = {},
): QuantityInput<U, false> {
  return { kind: 'quantity', unit, means, ...limits, optional: false };
}

/** Like `needs`, but may be left out; the clause says what it does then. */
export function mayNeed<const U extends Unit>(
  unit: U,
  means: string,
  limits: Limits = {},
): QuantityInput<U, true> {
  return { kind: 'quantity', unit, means, ...limits, optional: true };
}

export function oneOf<const T extends string>(options: readonly T[], means: string): ChoiceInput<T> {
  return { kind: 'choice', options, means };
}

export interface ClauseText<I extends ClauseInputs, U extends Unit> {
  /** Path of the clause: document edition, clause, subject, as the file is named: aisi-s100-16/j4.4.1-pull-out. */
  readonly id: string;
  /** What it gives, in plain words. */
  readonly title: string;
  /** Document, edition and clause as cited in proofs. */
  readonly cites: string;
  readonly inputs: I;
  readonly gives: { readonly symbol: string; readonly unit: U };
}

export interface Clause<
  I extends ClauseInputs = ClauseInputs,
  U extends Unit = Unit,
  R extends Quantity<U> = Quantity<U>,
> {
  (values: ClauseValues<I>, trace?: Trace): Outcome<R>;
  readonly about: ClauseText<I, U>;
}

/** A clause whose inputs are not known at compile time: for lists, sweeps and the command line. */
export interface AnyClause {
  (values: never, trace?: Trace): Outcome<number>;
  readonly about: ClauseText<ClauseInputs, Unit>;
}

export function clause<
  const I extends ClauseInputs,
  const U extends Unit,
  R extends Quantity<U> = Quantity<U>,
>(
  text: ClauseText<I, U> & { readonly compute: (values: ClauseValues<I>, trace?: Trace) => Outcome<R> },
): Clause<I, U, R> {
  const { compute, ...about } = text;
  const limits = Object.entries<ClauseInput>(about.inputs);
  const run = (values: ClauseValues<I>, trace?: Trace): Outcome<R> => {
    for (const [name, input] of limits) {
      const refusal = outside(about.cites, name, input, (values as Readonly<Record<string, unknown>>)[name]);
      if (refusal) return refusal;
    }
    const outcome = compute(values, trace);
    if (isRefusal(outcome) || Number.isFinite(outcome)) return outcome;
    return refuse(
      about.cites,
      about.gives.symbol,
      outcome,
      'inputs that give a finite value',
      'no-finite-value',
    );
  };
  return Object.assign(run, { about });
}

/** The refusal of one input, or nothing when the clause covers it. */
export function outside(
  cites: string,
  name: string,
  input: ClauseInput,
  value: unknown,
): Refusal | undefined {
  if (input.kind === 'choice') {
    if (typeof value === 'string' && input.options.includes(value)) return undefined;
    return refuse(
      cites,
      name,
      String(value),
      input.options.join(', '),
      value === undefined ? 'missing-input' : 'unknown-choice',
    );
  }
  if (value === undefined)
    return input.optional ? undefined : refuse(cites, name, undefined, limitText(input), 'missing-input');
  if (typeof value !== 'number' || !Number.isFinite(value))
    return refuse(cites, name, String(value), limitText(input), 'not-a-number');
  const inside =
    (input.min === undefined || value >= input.min) &&
    (input.max === undefined || value <= input.max) &&
    (input.above === undefined || value > input.above) &&
    (!input.whole || Number.isInteger(value));
  return inside ? undefined : refuse(cites, name, value, limitText(input));
}

/** What an input may be, in words: "0.08 to 0.25 in", "above 0 psi". */
export function limitText(input: ClauseInput): string {
  if (input.kind === 'choice') return input.options.join(', ');
  const unit = input.unit === '1' ? '' : ` ${input.unit}`;
  const kind = input.whole ? 'a whole number ' : '';
  if (input.min !== undefined && input.max !== undefined) return `${kind}${input.min} to ${input.max}${unit}`;
  const low =
    input.above !== undefined
      ? `above ${input.above}`
      : input.min !== undefined
        ? `at least ${input.min}`
        : '';
  const high = input.max !== undefined ? `at most ${input.max}` : '';
  return `${kind}${[low, high].filter(Boolean).join(', ') || 'a finite number'}${unit}`;
}
