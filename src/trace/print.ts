/** A step as plain text: the symbols, the numbers put in, the value. Papers set the same tree properly. */
import type { Unit } from '../quantities/unit.ts';
import type { Expression } from './expression.ts';
import type { Step } from './step.ts';

/** A number as an engineer writes it: four significant figures, no exponent in the usual range. */
export function figure(value: number, significant = 4): string {
  if (!Number.isFinite(value)) return 'not a number';
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e7 || size < 1e-5) return value.toExponential(significant - 1);
  const decimals = Math.max(0, significant - 1 - Math.floor(Math.log10(size)));
  const text = value.toFixed(Math.min(decimals, 12));
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

export function withUnit(value: number, unit: Unit): string {
  return unit === '1' ? figure(value) : `${figure(value)} ${unit}`;
}

const rank = { '+': 1, '-': 1, '*': 2, '/': 2, '^': 4 } as const;
const printed = { '+': ' + ', '-': ' − ', '*': ' · ', '/': ' / ', '^': '^' } as const;

type PrintSymbol = (name: string) => string;

/** A formula in one line; `symbol` prints a symbol as its name or its number. */
export function lineOf(tree: Expression, symbol: PrintSymbol = (name) => name): string {
  return linePart(tree, 0, symbol);
}

/** @param outer how tightly the surroundings bind: a looser part gets brackets */
function linePart(part: Expression, outer: number, symbol: PrintSymbol): string {
  const print = (inner: Expression, binds: number) => linePart(inner, binds, symbol);
  switch (part.kind) {
    case 'number':
      return part.text;
    case 'symbol':
      return bracketNegative(symbol(part.name), outer);
    case 'negative':
      return outer > 1 ? `(−${print(part.of, 3)})` : `−${print(part.of, 3)}`;
    case 'call':
      return part.name === 'sqrt'
        ? `√(${part.args.map((arg) => print(arg, 0)).join()})`
        : `${part.name}(${part.args.map((arg) => print(arg, 0)).join('; ')})`;
    case 'binary': {
      const own = rank[part.op];
      const left = print(part.left, part.op === '^' ? own + 1 : own);
      const right = print(part.right, part.op === '-' || part.op === '/' ? own + 1 : own);
      const text = `${left}${printed[part.op]}${right}`;
      return own < outer ? `(${text})` : text;
    }
  }
}

function bracketNegative(text: string, outer: number): string {
  if (!text.startsWith('-')) return text;
  return outer > 1 ? `(${text.replace('-', '−')})` : text.replace('-', '−');
}

/** One line a step: `Pnot = 0.85 · tc · d · Fu2 = 0.85 · 0.0566 · 0.19 · 65000 = 594.2 lbf   [clause]`. */
export function stepLine(step: Step): string {
  if (step.kind === 'note') return `${step.text}   [${step.clause}]`;
  if (step.kind === 'value')
    return `${step.symbol} = ${withUnit(step.value, step.unit)}   ${step.because}   [${step.clause}]`;
  const names = lineOf(step.formula.tree);
  const numbers = lineOf(step.formula.tree, (name) => figure(step.inputs[name] ?? Number.NaN));
  return `${step.symbol} = ${names} = ${numbers} = ${withUnit(step.value, step.unit)}   [${step.clause}]`;
}
