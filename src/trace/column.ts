/**
 * One equation over whole columns of numbers, for the bulk path: the limits and the formula become one loop.
 * A row outside the limits gets NaN in the column and is counted; the column never leaves the engine as results.
 */
import type { Unit } from '../quantities/unit.ts';
import type { ClauseInputs } from './clause.ts';
import { outside } from './clause.ts';
import type { Equation } from './equation.ts';
import { codeOf, nativeFunction, walk } from './evaluate.ts';

export type Columns<I extends ClauseInputs> = { readonly [K in keyof I]: Float64Array };

export interface ColumnResult {
  readonly values: Float64Array;
  /** How many rows were outside the limits. */
  readonly refused: number;
}

type Loop = (columns: Readonly<Record<string, Float64Array>>, out: Float64Array, count: number) => number;

/** @throws when an input is a choice or the equation needs a symbol the inputs lack: a fault of our own code. */
export function columnOf<I extends ClauseInputs>(
  inputs: I,
  formula:
    | Equation<Readonly<Record<string, Unit>>, Unit>
    | { readonly formula: Equation<Readonly<Record<string, Unit>>, Unit>['formula'] },
): (columns: Columns<I>, count: number, out?: Float64Array) => ColumnResult {
  const names = Object.keys(inputs);
  const { tree } = formula.formula();
  const guards: string[] = [];
  for (const [name, input] of Object.entries(inputs)) {
    if (input.kind === 'choice' || input.optional) throw new Error(`${name} cannot be a column`);
    guards.push(`${name} > ${input.above ?? -Number.MAX_VALUE}`, `${name} < Infinity`);
    if (input.min !== undefined) guards.push(`${name} >= ${input.min}`);
    if (input.max !== undefined) guards.push(`${name} <= ${input.max}`);
  }
  const body = `
    ${names.map((name) => `const column_${name} = columns.${name};`).join('\n')}
    let refused = 0;
    for (let i = 0; i < count; i++) {
      ${names.map((name) => `const ${name} = column_${name}[i];`).join(' ')}
      if (${guards.join(' && ')}) out[i] = ${codeOf(tree, (name) => name)};
      else { out[i] = NaN; refused++; }
    }
    return refused;`;
  const loop =
    (nativeFunction(['columns', 'out', 'count'], body) as Loop | undefined) ??
    walkingLoop(inputs, (row) => walk(tree, row));
  return (columns, count, out = new Float64Array(count)) => ({
    values: out,
    refused: loop(columns, out, count),
  });
}

function walkingLoop(inputs: ClauseInputs, value: (row: Readonly<Record<string, number>>) => number): Loop {
  const entries = Object.entries(inputs);
  return (columns, out, count) => {
    let refused = 0;
    for (let i = 0; i < count; i++) {
      const row = Object.fromEntries(entries.map(([name]) => [name, columns[name]?.[i] ?? Number.NaN]));
      const bad = entries.some(([name, input]) => outside('', name, input, row[name]) !== undefined);
      out[i] = bad ? Number.NaN : value(row);
      if (bad) refused++;
    }
    return refused;
  };
}
