/**
 * Equations over whole columns of numbers, for the bulk path: the limits and the formulas become one loop.
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

type AnyEquation = Pick<Equation<Readonly<Record<string, Unit>>, Unit>, 'formula' | 'text'>;

/**
 * A loop over columns that works equations out one after the other; each may use the inputs and what those before
 * it gave. The column of the last one is the result.
 * @throws when an input is a choice or an equation needs a symbol nobody gives: a fault of our own code.
 */
export function columnOf<I extends ClauseInputs>(
  inputs: I,
  ...equations: readonly [AnyEquation, ...AnyEquation[]]
): (columns: Columns<I>, count: number, out?: Float64Array) => ColumnResult {
  checkSymbols(inputs, equations);
  const loop =
    (nativeFunction(['columns', 'out', 'count'], loopBody(inputs, equations)) as Loop | undefined) ??
    walkingLoop(inputs, equations);
  return (columns, count, out = new Float64Array(count)) => ({
    values: out,
    refused: loop(columns, out, count),
  });
}

function checkSymbols(inputs: ClauseInputs, equations: readonly AnyEquation[]): void {
  const given = new Set(Object.keys(inputs));
  for (const [name, input] of Object.entries(inputs))
    if (input.kind === 'choice' || input.optional) throw new Error(`${name} cannot be a column`);
  for (const { text } of equations) {
    for (const name of Object.keys(text.from))
      if (!given.has(name)) throw new Error(`${text.clause}: nobody gives ${name}`);
    given.add(text.gives);
  }
}

function loopBody(inputs: ClauseInputs, equations: readonly AnyEquation[]): string {
  const names = Object.keys(inputs);
  const guards = Object.entries(inputs).flatMap(([name, input]) => {
    if (input.kind === 'choice') return [];
    const list = [`${name} > ${input.above ?? -Number.MAX_VALUE}`, `${name} < Infinity`];
    if (input.min !== undefined) list.push(`${name} >= ${input.min}`);
    if (input.max !== undefined) list.push(`${name} <= ${input.max}`);
    return list;
  });
  const steps = equations.map(
    ({ text, formula }) => `const ${text.gives} = ${codeOf(formula().tree, (name) => name)};`,
  );
  return `
    ${names.map((name) => `const column_${name} = columns.${name};`).join('\n')}
    let refused = 0;
    for (let i = 0; i < count; i++) {
      ${names.map((name) => `const ${name} = column_${name}[i];`).join(' ')}
      if (${guards.join(' && ')}) { ${steps.join(' ')} out[i] = ${equations.at(-1)?.text.gives}; }
      else { out[i] = NaN; refused++; }
    }
    return refused;`;
}

function walkingLoop(inputs: ClauseInputs, equations: readonly AnyEquation[]): Loop {
  const entries = Object.entries(inputs);
  return (columns, out, count) => {
    let refused = 0;
    for (let i = 0; i < count; i++) {
      const row: Record<string, number> = Object.fromEntries(
        entries.map(([name]) => [name, columns[name]?.[i] ?? Number.NaN]),
      );
      const bad = entries.some(([name, input]) => outside('', name, input, row[name]) !== undefined);
      let value = Number.NaN;
      if (bad) refused++;
      else
        for (const { text, formula } of equations) {
          value = walk(formula().tree, row);
          row[text.gives] = value;
        }
      out[i] = value;
    }
    return refused;
  };
}
