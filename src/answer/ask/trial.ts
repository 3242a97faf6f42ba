/** An unknown tried: the answer at each of its values, the other unknowns standing still. */
import type { Read } from '../../job/read-job.ts';
import { worstOf } from './moves.ts';
import type { Outcome } from './outcome.ts';
import type { Unknown } from './unknowns.ts';

export interface Trial {
  readonly unknown: Unknown;
  readonly solved: readonly Read<Outcome>[];
  /** Index of its worst value. */
  readonly worst: number;
}

export function trialOf(unknown: Unknown, solveAt: (value: number) => Read<Outcome>): Trial {
  const solved = unknown.values.map((_, value) => solveAt(value));
  const worst = worstOf(solved.map((one) => (one.ok ? one.value : undefined))) ?? unknown.reference;
  return { unknown, solved, worst };
}
