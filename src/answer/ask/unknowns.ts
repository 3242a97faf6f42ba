/** The unknowns of a job: what is asked, what is assumed, and what was left out although something hangs on it. */
import type { Job } from '../../job/job.ts';
import type { Shelf } from '../../shelf/shelf.ts';
import { inputsOf } from '../inputs.ts';
import { fieldAt, withField } from './field.ts';
import { plausibleRanges, rangeFor } from './plausible.ts';
import type { PlausibleRange, PlausibleValue } from './plausible-range.ts';

export interface Unknown {
  readonly path: string;
  readonly standing: 'asked' | 'assumed' | 'left out';
  /** The question or the reason as it stands in the job. */
  readonly own: string | undefined;
  readonly range: PlausibleRange;
  readonly values: readonly PlausibleValue[];
  /** Index of the value at which the other unknowns are compared: what is assumed, or what is usual. */
  readonly reference: number;
}

/** Asked or assumed, and no range of plausible values is shipped for it. */
export interface WithoutRange {
  readonly path: string;
  readonly standing: 'asked' | 'assumed';
  readonly own: string;
}

export interface Unknowns {
  readonly list: readonly Unknown[];
  readonly withoutRange: readonly WithoutRange[];
}

export function unknownsOf(document: unknown, job: Job, shelf: Shelf): Unknowns {
  const list: Unknown[] = [];
  const withoutRange: WithoutRange[] = [];
  for (const { path, standing, because } of inputsOf(document)) {
    if (standing === 'given') continue;
    const range = rangeFor(path, job);
    const own = because ?? '';
    const unknown = range && tried(document, { path, standing, own, range }, job, shelf);
    if (unknown) list.push(unknown);
    else withoutRange.push({ path, standing, own });
  }
  for (const range of plausibleRanges) {
    const { path } = range;
    if (!range.serves(job) || !range.mattersLeftOut?.(job) || fieldAt(document, path) !== undefined) continue;
    const unknown = tried(document, { path, standing: 'left out', own: undefined, range }, job, shelf);
    if (unknown) list.push(unknown);
  }
  return { list, withoutRange };
}

/** An unknown with the values to try, or nothing when there are not two of them to tell apart. */
function tried(
  document: unknown,
  known: Pick<Unknown, 'path' | 'standing' | 'own' | 'range'>,
  job: Job,
  shelf: Shelf,
): Unknown | undefined {
  const { path, standing, range } = known;
  const shipped = range.values(job, shelf);
  const { values, reference } =
    standing === 'assumed'
      ? including(shipped, fieldAt(document, `${path}.assume`))
      : { values: shipped, reference: Math.min(range.usual, shipped.length - 1) };
  return values.length < 2 ? undefined : { ...known, values, reference };
}

/** What is assumed is one of the values to try, whether the shipped range has it or not. */
function including(shipped: readonly PlausibleValue[], assumed: unknown) {
  const wanted = JSON.stringify(assumed);
  const at = shipped.findIndex(({ put }) => JSON.stringify(put) === wanted);
  if (at >= 0) return { values: shipped, reference: at };
  const text = typeof assumed === 'object' ? 'as assumed' : String(assumed);
  return { values: [{ text, put: assumed }, ...shipped], reference: 0 };
}

/** The document with every unknown at one of its values, by index. */
export function atValues(document: unknown, list: readonly Unknown[], at: readonly number[]): unknown {
  return list.reduce<unknown>(
    (held, { path, values }, i) => withField(held, path, values[at[i] as number]?.put),
    document,
  );
}
