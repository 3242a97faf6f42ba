/** Every clause of every standard here, by name: for the command line, the documents and the sweeps of the tests. */

import type { Fault } from '../quantities/fault.ts';
import { type Quantity, quantity } from '../quantities/quantity.ts';
import { isReadFault, readQuantity } from '../quantities/read-quantity.ts';
import { allClauses } from '../standards/all-clauses.ts';
import { type AnyClause, type ClauseInput, limitText } from '../trace/clause.ts';
import { stepLine, withUnit } from '../trace/print.ts';
import { isRefusal, type Refusal, refusalText } from '../trace/refusal.ts';
import type { Trace } from '../trace/step.ts';

export type ClauseEvaluation =
  | {
      readonly kind: 'value';
      readonly value: number;
      readonly unit: string;
      readonly symbol: string;
      readonly text: string;
      readonly steps: readonly string[];
    }
  | { readonly kind: 'refusal'; readonly refusal: Refusal; readonly text: string }
  | { readonly kind: 'faults'; readonly faults: readonly Fault[] };

export const listClauses = (): readonly AnyClause['about'][] => allClauses.map((one) => one.about);

/** What a clause takes, a line for each input. */
export function clauseInputs(id: string): string[] | undefined {
  const found = allClauses.find((one) => one.about.id === id);
  return (
    found &&
    Object.entries(found.about.inputs).map(
      ([name, input]) =>
        `${name}: ${input.means}; ${limitText(input)}${input.kind === 'quantity' && input.optional ? '; may be left out' : ''}`,
    )
  );
}

/** Evaluates one clause from text such as tc=0.0566in. */
export function evaluateClause(id: string, given: Readonly<Record<string, string>>): ClauseEvaluation {
  const found = allClauses.find((one) => one.about.id === id);
  if (!found)
    return {
      kind: 'faults',
      faults: [{ path: id, message: 'is no clause here; run "deckbite clause" for the list' }],
    };
  const faults: Fault[] = [];
  const values: Record<string, unknown> = {};
  for (const name of Object.keys(given))
    if (!(name in found.about.inputs))
      faults.push({
        path: name,
        message: `is no input of this clause; its inputs are: ${Object.keys(found.about.inputs).join(', ')}`,
      });
  for (const [name, input] of Object.entries(found.about.inputs)) {
    const text = given[name];
    if (text === undefined) continue;
    const value = readInput(input, text);
    if (typeof value === 'object') faults.push({ path: name, message: value.message });
    else values[name] = value;
  }
  if (faults.length > 0) return { kind: 'faults', faults };
  const trace: Trace = [];
  const outcome = found(values as never, trace);
  if (isRefusal(outcome)) return { kind: 'refusal', refusal: outcome, text: refusalText(outcome) };
  const { symbol, unit } = found.about.gives;
  return {
    kind: 'value',
    value: outcome,
    unit,
    symbol,
    text: `${symbol} = ${withUnit(outcome, unit)}`,
    steps: trace.map(stepLine),
  };
}

function readInput(
  input: ClauseInput,
  text: string,
): Quantity<'1'> | number | string | { readonly message: string } {
  if (input.kind === 'choice') return text;
  if (input.unit === '1') {
    const value = Number(text);
    return text.trim() === '' || Number.isNaN(value)
      ? { message: `"${text}" is not a number; this input has no unit` }
      : quantity(value, '1');
  }
  const read = readQuantity(text, input.unit);
  return isReadFault(read) ? { message: `${read.fault}; ${read.mend}` } : read;
}
