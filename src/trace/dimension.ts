/** Dimensional check of a formula: what a tree measures, from what its symbols measure. */
import { type Dimension, type Unit, units } from '../quantities/unit.ts';
import type { Expression } from './expression.ts';

const NONE: Dimension = { force: 0, length: 0, time: 0 };
const combine = (a: Dimension, b: Dimension, sign: 1 | -1): Dimension => ({
  force: a.force + sign * b.force,
  length: a.length + sign * b.length,
  time: a.time + sign * b.time,
});
const scale = (a: Dimension, by: number): Dimension => ({ force: a.force * by, length: a.length * by, time: a.time * by });

export function equalDimensions(a: Dimension, b: Dimension): boolean {
  const close = (x: number, y: number) => Math.abs(x - y) < 1e-9;
  return close(a.force, b.force) && close(a.length, b.length) && close(a.time, b.time);
}

/** @throws when terms of different kinds are added or compared, or a power or function takes a dimension. */
export function dimensionOf(tree: Expression, symbolUnits: Readonly<Record<string, Unit>>): Dimension {
  const of = (part: Expression) => dimensionOf(part, symbolUnits);
  const alike = (parts: readonly Expression[]): Dimension => {
    const [first = NONE, ...others] = parts.map(of);
    if (others.some((other) => !equalDimensions(first, other))) throw new Error('terms of different kinds are added or compared');
    return first;
  };
  switch (tree.kind) {
    case 'number':
      return NONE;
    case 'symbol': {
      const unit = symbolUnits[tree.name];
      if (!unit) throw new Error(`no unit is given for ${tree.name}`);
      return units[unit].dimension;
    }
    case 'negative':
      return of(tree.of);
    case 'call':
      if (tree.name === 'sqrt') return scale(alike(tree.args), 0.5);
      if (tree.name === 'min' || tree.name === 'max' || tree.name === 'abs') return alike(tree.args);
      if (!equalDimensions(alike(tree.args), NONE)) throw new Error(`${tree.name} takes a bare number`);
      return NONE;
    case 'binary': {
      if (tree.op === '+' || tree.op === '-') return alike([tree.left, tree.right]);
      if (tree.op === '*') return combine(of(tree.left), of(tree.right), 1);
      if (tree.op === '/') return combine(of(tree.left), of(tree.right), -1);
      const base = of(tree.left);
      if (equalDimensions(base, NONE)) return NONE;
      const power = tree.right.kind === 'number' ? tree.right.value : undefined;
      if (power === undefined) throw new Error('a quantity is raised to a power that is not a plain number');
      return scale(base, power);
    }
  }
}
