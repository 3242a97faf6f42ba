/**
 * Arithmetic as text, read once into a tree. The tree is the only form of a formula: the number, the printed
 * line and the check of dimensions are all made from it, so that paper and result cannot part.
 */
export const functionNames = ['sqrt', 'min', 'max', 'log10', 'exp', 'abs', 'cos', 'sin', 'tan'] as const;
export type FunctionName = (typeof functionNames)[number];

export type Expression =
  | { readonly kind: 'number'; readonly text: string; readonly value: number }
  | { readonly kind: 'symbol'; readonly name: string }
  | { readonly kind: 'negative'; readonly of: Expression }
  | {
      readonly kind: 'binary';
      readonly op: '+' | '-' | '*' | '/' | '^';
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly kind: 'call'; readonly name: FunctionName; readonly args: readonly Expression[] };

const TOKEN =
  /\s*(?:(\d+\.?\d*(?:[eE][-+]?\d+)?|\.\d+)|([A-Za-zΑ-Ωα-ωµ_][A-Za-z0-9Α-Ωα-ω_']*)|([-+*/^(),]))/y;

function tokens(text: string): string[] {
  const out: string[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.length) {
    const at = TOKEN.lastIndex;
    if (text.slice(at).trim() === '') break;
    const match = TOKEN.exec(text);
    if (!match) throw new Error(`cannot read the formula "${text}" at "${text.slice(at)}"`);
    out.push(match[1] ?? match[2] ?? match[3] ?? '');
  }
  return out;
}

/**
 * Reads a formula. Angles of cos, sin and tan are in degrees, as the standards print them.
 * @throws when the text is not a formula: a fault of our own code.
 */
export function parseExpression(text: string): Expression {
  const list = tokens(text);
  let at = 0;
  const peek = () => list[at];
  const take = (expected?: string): string => {
    const token = list[at++];
    if (token === undefined || (expected !== undefined && token !== expected))
      throw new Error(`formula "${text}": expected ${expected ?? 'more'}, found ${token ?? 'the end'}`);
    return token;
  };

  function sum(): Expression {
    let left = product();
    for (let op = peek(); op === '+' || op === '-'; op = peek()) {
      take();
      left = { kind: 'binary', op, left, right: product() };
    }
    return left;
  }
  function product(): Expression {
    let left = signed();
    for (let op = peek(); op === '*' || op === '/'; op = peek()) {
      take();
      left = { kind: 'binary', op, left, right: signed() };
    }
    return left;
  }
  // A minus sign binds looser than a power (-x^2 is -(x^2)) and may stand in an exponent (x^-0.5).
  function signed(): Expression {
    if (peek() !== '-') return power();
    take();
    return { kind: 'negative', of: signed() };
  }
  function power(): Expression {
    const left = atom();
    if (peek() !== '^') return left;
    take();
    return { kind: 'binary', op: '^', left, right: signed() };
  }
  function atom(): Expression {
    const token = take();
    if (token === '(') {
      const inner = sum();
      take(')');
      return inner;
    }
    if (/^[\d.]/.test(token)) return { kind: 'number', text: token, value: Number(token) };
    if (!/^[A-Za-zΑ-Ωα-ωµ_]/.test(token)) throw new Error(`formula "${text}": unexpected ${token}`);
    if (peek() !== '(') return { kind: 'symbol', name: token };
    if (!(functionNames as readonly string[]).includes(token))
      throw new Error(`formula "${text}": unknown function ${token}`);
    take('(');
    const args = [sum()];
    while (peek() === ',') {
      take();
      args.push(sum());
    }
    take(')');
    return { kind: 'call', name: token as FunctionName, args };
  }

  const tree = sum();
  if (at !== list.length) throw new Error(`formula "${text}": ${peek()} is left over`);
  return tree;
}

/** Every symbol a formula uses, in order of first use. */
export function symbolsOf(tree: Expression, found: Set<string> = new Set()): Set<string> {
  if (tree.kind === 'symbol') found.add(tree.name);
  else if (tree.kind === 'negative') symbolsOf(tree.of, found);
  else if (tree.kind === 'binary') {
    symbolsOf(tree.left, found);
    symbolsOf(tree.right, found);
  } else if (tree.kind === 'call') for (const arg of tree.args) symbolsOf(arg, found);
  return found;
}
