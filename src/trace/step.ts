/** What a calculation leaves behind when somebody asks for its working. */
import type { Unit } from '../quantities/unit.ts';
import type { Expression } from './expression.ts';

/** A number computed by a formula: symbol, formula, the numbers put in, result, unit, clause. */
export interface EquationStep {
  readonly kind: 'equation';
  readonly clause: string;
  readonly symbol: string;
  readonly unit: Unit;
  readonly value: number;
  readonly formula: Formula;
  readonly inputs: Readonly<Record<string, number>>;
}

/** A number read from a table, chosen from a list, or set by a rule. */
export interface ValueStep {
  readonly kind: 'value';
  readonly clause: string;
  readonly symbol: string;
  readonly unit: Unit;
  readonly value: number;
  /** Where it was read and with what, in words. */
  readonly because: string;
}

/** A remark that belongs to the working: a reading taken, a doubt, a limit. */
export interface NoteStep {
  readonly kind: 'note';
  readonly clause: string;
  readonly text: string;
}

export type Step = EquationStep | ValueStep | NoteStep;

/** The formula of a step, as far as printing needs it. */
export interface Formula {
  readonly text: string;
  readonly tree: Expression;
  readonly units: Readonly<Record<string, Unit>>;
}

/** Hand one in to have the working written into it; leave it out and nothing is recorded or built. */
export type Trace = Step[];

export function note(trace: Trace | undefined, clause: string, text: string): void {
  trace?.push({ kind: 'note', clause, text });
}

/** Records a number taken from a table or rule, and hands it back. */
export function taken<T extends number>(
  trace: Trace | undefined,
  step: { readonly clause: string; readonly symbol: string; readonly unit: Unit; readonly because: string },
  value: T,
): T {
  trace?.push({ kind: 'value', ...step, value });
  return value;
}
