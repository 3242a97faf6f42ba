/**
 * Two ways to run a formula tree: native code written from the tree, and a walk over it where the surroundings
 * forbid making code (a page under a strict content security policy). Both must give the same bits; a test
 * holds them together. Only our own trees reach the code writer: numbers are printed from their value and
 * symbols are checked names, so no outside text can enter.
 */
import type { Expression, FunctionName } from './expression.ts';

const RADIAN = Math.PI / 180;

const calls: Readonly<
  Record<FunctionName, { readonly code: string; readonly run: (...x: number[]) => number }>
> = {
  sqrt: { code: 'Math.sqrt', run: Math.sqrt },
  min: { code: 'Math.min', run: Math.min },
  max: { code: 'Math.max', run: Math.max },
  log10: { code: 'Math.log10', run: Math.log10 },
  exp: { code: 'Math.exp', run: Math.exp },
  abs: { code: 'Math.abs', run: Math.abs },
  cos: { code: '((x) => Math.cos(x * RADIAN))', run: (x = Number.NaN) => Math.cos(x * RADIAN) },
  sin: { code: '((x) => Math.sin(x * RADIAN))', run: (x = Number.NaN) => Math.sin(x * RADIAN) },
  tan: { code: '((x) => Math.tan(x * RADIAN))', run: (x = Number.NaN) => Math.tan(x * RADIAN) },
};

/** JavaScript text of a tree; `symbol` says how a symbol is reached. */
export function codeOf(tree: Expression, symbol: (name: string) => string): string {
  switch (tree.kind) {
    case 'number':
      return String(tree.value);
    case 'symbol':
      return symbol(tree.name);
    case 'negative':
      return `(-${codeOf(tree.of, symbol)})`;
    case 'call':
      return `${calls[tree.name].code}(${tree.args.map((arg) => codeOf(arg, symbol)).join(', ')})`;
    case 'binary': {
      const [left, right] = [codeOf(tree.left, symbol), codeOf(tree.right, symbol)];
      return tree.op === '^' ? `Math.pow(${left}, ${right})` : `(${left} ${tree.op} ${right})`;
    }
  }
}

/** The value of a tree by walking it. */
export function walk(tree: Expression, values: Readonly<Record<string, number>>): number {
  switch (tree.kind) {
    case 'number':
      return tree.value;
    case 'symbol':
      return values[tree.name] ?? Number.NaN;
    case 'negative':
      return -walk(tree.of, values);
    case 'call':
      return calls[tree.name].run(...tree.args.map((arg) => walk(arg, values)));
    case 'binary': {
      const [left, right] = [walk(tree.left, values), walk(tree.right, values)];
      if (tree.op === '+') return left + right;
      if (tree.op === '-') return left - right;
      if (tree.op === '*') return left * right;
      return tree.op === '/' ? left / right : left ** right;
    }
  }
}

/** Makes a function from code text, or nothing where that is forbidden. */
export function nativeFunction(
  parameters: readonly string[],
  body: string,
): ((...x: never[]) => unknown) | undefined {
  try {
    return new Function(...parameters, `const RADIAN = ${RADIAN};\n${body}`) as (...x: never[]) => unknown;
  } catch {
    return undefined;
  }
}
