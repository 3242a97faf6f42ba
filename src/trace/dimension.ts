/**
 * Check of a formula's kind and scale, from what its symbols measure. Kind: a stress times an area is a force.
 * Scale: psf times square inches is a force too, but not in pounds; such a formula is refused, since it would
 * print one thing and mean another.
 */
import { type Unit, units } from '../quantities/unit.ts';
import type { Expression } from './expression.ts';

/** Exponents, and the logarithm of the size of the unit they come in. */
export interface Measure {
  readonly force: number;
  readonly length: number;
  readonly time: number;
  readonly logScale: number;
}

const NONE: Measure = { force: 0, length: 0, time: 0, logScale: 0 };

export function measureOf(unit: Unit): Measure {
  return { ...units[unit].dimension, logScale: unit === '%' ? 0 : Math.log(units[unit].factor) };
}

const combine = (a: Measure, b: Measure, sign: 1 | -1): Measure => ({
  force: a.force + sign * b.force,
  length: a.length + sign * b.length,
  time: a.time + sign * b.time,
  logScale: a.logScale + sign * b.logScale,
});
const scale = (a: Measure, by: number): Measure => ({
  force: a.force * by,
  length: a.length * by,
  time: a.time * by,
  logScale: a.logScale * by,
});

const close = (x: number, y: number): boolean => Math.abs(x - y) < 1e-9;

export function sameKind(a: Measure, b: Measure): boolean {
  return close(a.force, b.force) && close(a.length, b.length) && close(a.time, b.time);
}

/** @throws when kinds differ, or the scales of two terms of one kind do. */
export function mustAgree(a: Measure, b: Measure, what: string): void {
  if (!sameKind(a, b)) throw new Error(`${what}: the kinds differ`);
  if (Math.abs(a.logScale - b.logScale) > 1e-6)
    throw new Error(`${what}: the units differ in size; convert the inputs to units that belong together`);
}

/** @throws when terms do not agree, or a power or function takes a quantity with a unit. */
export function measure(tree: Expression, symbolUnits: Readonly<Record<string, Unit>>): Measure {
  const of = (part: Expression) => measure(part, symbolUnits);
  switch (tree.kind) {
    case 'number':
      return NONE;
    case 'symbol': {
      const unit = symbolUnits[tree.name];
      if (!unit) throw new Error(`no unit is given for ${tree.name}`);
      return measureOf(unit);
    }
    case 'negative':
      return of(tree.of);
    case 'call':
      return measureOfCall(tree.name, tree.args, of);
    case 'binary':
      return measureOfBinary(tree, of);
  }
}

type Of = (part: Expression) => Measure;

function alike(parts: readonly Expression[], of: Of): Measure {
  const [first = NONE, ...others] = parts.map(of);
  for (const other of others)
    mustAgree(first, other, 'terms added or compared are of different kinds or sizes');
  return first;
}

function measureOfCall(name: string, args: readonly Expression[], of: Of): Measure {
  const all = alike(args, of);
  if (name === 'sqrt') return scale(all, 0.5);
  if (name === 'min' || name === 'max' || name === 'abs') return all;
  if (!sameKind(all, NONE)) throw new Error(`${name} takes a bare number`);
  return NONE;
}

function measureOfBinary(tree: Extract<Expression, { kind: 'binary' }>, of: Of): Measure {
  if (tree.op === '+' || tree.op === '-') return alike([tree.left, tree.right], of);
  if (tree.op === '*') return combine(of(tree.left), of(tree.right), 1);
  if (tree.op === '/') return combine(of(tree.left), of(tree.right), -1);
  const base = of(tree.left);
  if (sameKind(base, NONE)) return NONE;
  const negative = tree.right.kind === 'negative' ? -1 : 1;
  const exponent = tree.right.kind === 'negative' ? tree.right.of : tree.right;
  if (exponent.kind !== 'number')
    throw new Error('a quantity is raised to a power that is not a plain number');
  return scale(base, negative * exponent.value);
}
