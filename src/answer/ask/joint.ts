/**
 * All unknowns at once. Of each unknown the values that fasteners can answer for are taken, of these the worst; the
 * answer is solved at that corner, and one specification is sought for the corner and for every value tried alone.
 */
import type { Read } from '../../job/read-job.ts';
import { briefOf } from './effects.ts';
import { worstOf } from './moves.ts';
import type { Outcome } from './outcome.ts';
import type { JointRobust } from './report.ts';
import { type Named, robustOver, sceneOf, soundest } from './robust.ts';
import type { Trial } from './trial.ts';
import type { Variations } from './variations.ts';

/** The worst value of each unknown among those that fasteners can answer for. */
export interface Corner {
  /** Index of a value for each unknown; the reference of those that make other joints, parts or zones. */
  readonly at: readonly number[];
  readonly fits: readonly boolean[];
  readonly served: readonly (readonly Named[])[];
}

export function cornerOf(trials: readonly Trial[], reference: Outcome): Corner {
  const scene = sceneOf(reference);
  const served = trials.map((trial) => soundest(namedOf(trial)));
  const fits = served.map((list) => list.every(({ outcome }) => sceneOf(outcome) === scene));
  const at = trials.map((trial, u) =>
    fits[u] ? worstServed(trial, served[u] ?? []) : trial.unknown.reference,
  );
  return { at, fits, served };
}

/** @param solveAt the answer with each unknown at the value of an index, in the order of the trials */
export function jointRobust(
  trials: readonly Trial[],
  { at, fits, served }: Corner,
  solveAt: (at: readonly number[]) => Read<Outcome>,
  variations: Variations,
): JointRobust {
  const solved = solveAt(at);
  const corner = trials.flatMap(({ unknown: { path, values } }, u) =>
    fits[u] ? [{ path, text: values[at[u] as number]?.text ?? '' }] : [],
  );
  const without = trials.flatMap(({ unknown }, u) => (fits[u] ? [] : [unknown.path]));
  if (!solved.ok) {
    const because = solved.faults.map(({ path, message }) => `${path} ${message}`).join('; ');
    return { corner, answer: undefined, robust: { found: false, because }, without };
  }
  const worst = { name: 'the worst of each', outcome: solved.value };
  const sound = soundest([worst, ...served.flatMap((list, u) => (fits[u] ? list : []))]);
  const robust = sound.includes(worst)
    ? robustOver(sound, variations)
    : {
        found: false as const,
        because:
          'what fasteners can answer for one unknown at a time they cannot for the worst of all together',
      };
  return { corner, answer: briefOf(solved.value), robust, without };
}

export const namedOf = ({ unknown, solved }: Trial): Named[] =>
  solved.flatMap((one, value) =>
    one.ok ? [{ name: unknown.values[value]?.text ?? '', outcome: one.value }] : [],
  );

function worstServed({ unknown, solved }: Trial, served: readonly Named[]): number {
  const outcomes = solved.map((one) =>
    one.ok && served.some(({ outcome }) => outcome === one.value) ? one.value : undefined,
  );
  return worstOf(outcomes) ?? unknown.reference;
}
