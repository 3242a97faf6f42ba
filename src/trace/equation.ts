/**
 * An equation of a standard, written once: `is` is both what is calculated and what is printed.
 * Reading the text and making code wait for the first call, so that a program pays only for what it uses.
 */
import type { Quantity } from '../quantities/quantity.ts';
import type { Unit } from '../quantities/unit.ts';
import { measure, measureOf, mustAgree } from './dimension.ts';
import { codeOf, nativeFunction, walk } from './evaluate.ts';
import { type Expression, parseExpression, symbolsOf } from './expression.ts';
import type { Formula, Trace } from './step.ts';

export type QuantitiesOf<F extends Readonly<Record<string, Unit>>> = {
  readonly [K in keyof F]: Quantity<F[K]>;
};

export interface EquationText<F extends Readonly<Record<string, Unit>>, U extends Unit> {
  /** The clause and equation number as cited. */
  readonly clause: string;
  /** Symbol of the result. */
  readonly gives: string;
  readonly unit: U;
  /** Symbols that go in, with the unit each must be in. */
  readonly from: F;
  /** The formula. Angles of cos, sin, tan in degrees. */
  readonly is: string;
  /**
   * A formula fitted to tests or otherwise holding constants with hidden units (2850 G² D in lb and in):
   * the dimensions cannot be checked, only the units of what goes in and comes out are promised.
   */
  readonly fitted?: true;
}

export interface Equation<F extends Readonly<Record<string, Unit>>, U extends Unit> {
  (inputs: QuantitiesOf<F>, trace?: Trace): Quantity<U>;
  readonly text: EquationText<F, U>;
  /** The formula read, checked for stray or missing symbols and for its dimension. @throws on a fault in `is`. */
  readonly formula: () => Formula;
}

type AnyEquationText = EquationText<Readonly<Record<string, Unit>>, Unit>;

export function equation<const F extends Readonly<Record<string, Unit>>, const U extends Unit>(
  text: EquationText<F, U>,
): Equation<F, U> {
  let formula: Formula | undefined;
  let run: ((inputs: QuantitiesOf<F>) => number) | undefined;
  const read = (): Formula => {
    formula ??= readFormula(text);
    return formula;
  };
  const calculate = (inputs: QuantitiesOf<F>, trace?: Trace): Quantity<U> => {
    run ??= compile(read().tree);
    const value = run(inputs) as Quantity<U>;
    if (trace)
      trace.push({
        kind: 'equation',
        clause: text.clause,
        symbol: text.gives,
        unit: text.unit,
        value,
        formula: read(),
        inputs,
      });
    return value;
  };
  return Object.assign(calculate, { text, formula: read });
}

function compile<V extends Readonly<Record<string, number>>>(tree: Expression): (inputs: V) => number {
  const native = nativeFunction(['$'], `return ${codeOf(tree, (name) => `$.${name}`)};`);
  return (native as ((inputs: V) => number) | undefined) ?? ((inputs) => walk(tree, inputs));
}

function readFormula(text: AnyEquationText): Formula {
  const tree = parseExpression(text.is);
  const used = symbolsOf(tree);
  for (const name of used)
    if (!(name in text.from)) throw new Error(`${text.clause}: ${name} is used but not given`);
  for (const name of Object.keys(text.from))
    if (!used.has(name)) throw new Error(`${text.clause}: ${name} is given but not used`);
  if (!text.fitted)
    mustAgree(
      measure(tree, text.from),
      measureOf(text.unit),
      `${text.clause}: the formula for ${text.gives} does not give ${text.unit}`,
    );
  return { text: text.is, tree, units: text.from };
}
