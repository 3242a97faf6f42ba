/** The tree of a formula as boxes: fractions with bars, powers raised, roots drawn, symbols with their subscripts. */
import type { Expression } from '../../trace/expression.ts';
import { figure } from '../../trace/print.ts';
import {
  bracketBox,
  exponentSetting,
  type FormulaBox,
  fractionBox,
  powerBox,
  rootBox,
  rowBox,
  type Setting,
  symbolBox,
  textBox,
} from './box.ts';

/** Prints a symbol as its name or as its number. */
export type SymbolSetter = (name: string, setting: Setting, outer: number) => FormulaBox;

/** Symbols that are words, not a letter with a subscript. */
const words = new Set(['share', 'cap']);

/** First letter the base, the rest lowered; the coefficients GC of the wind standard stay together. */
export function splitSymbol(name: string): {
  readonly base: string;
  readonly prime: string;
  readonly sub: string;
} {
  if (words.has(name)) return { base: name, prime: '', sub: '' };
  const parts = /^(GC|[^']|)(['′]*)(.*)$/u.exec(name);
  const [, base = name, prime = '', rest = ''] = parts ?? [];
  return { base, prime: prime.replaceAll("'", '′'), sub: rest.replaceAll('_', ' ').replaceAll("'", '′') };
}

export const symbolName: SymbolSetter = (name, setting) => {
  const { base, prime, sub } = splitSymbol(name);
  return symbolBox(setting, base, prime, sub);
};

/** The number that was put in for a symbol. */
export const symbolNumber =
  (inputs: Readonly<Record<string, number>>): SymbolSetter =>
  (name, setting, outer) => {
    const value = inputs[name] ?? Number.NaN;
    const box = numberBox(setting, figure(Math.abs(value)));
    if (value >= 0) return box;
    const negative = rowBox([textBox(setting, '−'), box]);
    return outer > 0 ? bracketBox(setting, negative) : negative;
  };

/** A number; one with an exponent is printed as a power of ten. */
export function numberBox(setting: Setting, text: string): FormulaBox {
  const [mantissa = text, exponent] = text.split('e');
  if (exponent === undefined) return textBox(setting, text);
  const power = exponent.replace('+', '').replace('-', '−');
  return powerBox(textBox(setting, `${mantissa} · 10`), textBox(exponentSetting(setting), power));
}

const rank = { '+': 1, '-': 1, '*': 2, '/': 3, '^': 4 } as const;
const signs = { '+': '+', '-': '−', '*': '·' } as const;

export function setExpression(tree: Expression, setting: Setting, symbol: SymbolSetter): FormulaBox {
  return part(tree, 0, setting, symbol);
}

/** @param outer how tightly the surroundings bind: a looser part gets brackets */
function part(tree: Expression, outer: number, setting: Setting, symbol: SymbolSetter): FormulaBox {
  switch (tree.kind) {
    case 'number':
      return numberBox(setting, tree.text);
    case 'symbol':
      return symbol(tree.name, setting, outer);
    case 'negative': {
      const box = rowBox([textBox(setting, '−'), part(tree.of, 3, setting, symbol)]);
      return outer > 1 ? bracketBox(setting, box) : box;
    }
    case 'call':
      return call(tree, setting, symbol);
    case 'binary':
      return binary(tree, outer, setting, symbol);
  }
}

type Call = Extract<Expression, { kind: 'call' }>;
type Binary = Extract<Expression, { kind: 'binary' }>;

function call(tree: Call, setting: Setting, symbol: SymbolSetter): FormulaBox {
  const args = tree.args.map((arg) => part(arg, 0, setting, symbol));
  if (tree.name === 'sqrt') return rootBox(setting, rowBox(args));
  const listed = args.flatMap((arg, i) => (i === 0 ? [arg] : [textBox(setting, '; '), arg]));
  const name = tree.name === 'log10' ? symbolBoxUpright(setting) : textBox(setting, tree.name);
  return rowBox([name, bracketBox(setting, rowBox(listed))]);
}

const symbolBoxUpright = (setting: Setting): FormulaBox =>
  rowBox([textBox(setting, 'log'), textBox(exponentSetting(setting), '10')]);

function binary(
  { op, left, right }: Binary,
  outer: number,
  setting: Setting,
  symbol: SymbolSetter,
): FormulaBox {
  if (op === '/') {
    const box = fractionBox(setting, part(left, 0, setting, symbol), part(right, 0, setting, symbol));
    return outer > rank['/'] ? bracketBox(setting, box) : box;
  }
  if (op === '^')
    return powerBox(
      part(left, rank['^'] + 1, setting, symbol),
      part(right, 0, exponentSetting(setting), symbol),
    );
  const own = rank[op];
  const box = rowBox(
    [
      part(left, own === 1 ? 0 : own, setting, symbol),
      textBox(setting, signs[op]),
      part(right, op === '-' ? own + 1 : own, setting, symbol),
    ],
    setting.size * 0.24,
  );
  return own < outer ? bracketBox(setting, box) : box;
}
