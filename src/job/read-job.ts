/** A document to a job, or every fault in it at once. */
import { type Fault, faultsOf } from '../quantities/fault.ts';
import { JOB_SCHEMA, type Job, job } from './job.ts';

/** Larger documents are refused before they are read: no roof needs more, and a hostile one would stall. */
export const MOST_CHARACTERS = 20_000_000;

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export const wrong = (
  path: string,
  message: string,
): { readonly ok: false; readonly faults: readonly Fault[] } => ({
  ok: false,
  faults: [{ path, message }],
});

/** JSON text to a value, with the place of a break named. */
export function readJson(text: string): Read<unknown> {
  if (text.length > MOST_CHARACTERS)
    return wrong('(the document)', 'is larger than 20 million characters; a job of one roof is far smaller');
  try {
    return { ok: true, value: JSON.parse(text.replace(/^\uFEFF/, '')) };
  } catch (error) {
    return wrong(
      '(the document)',
      `is not complete JSON: ${(error as Error).message}; check for a cut-off end, a missing comma or quote`,
    );
  }
}

export function readJob(document: unknown): Read<Job> {
  const schema = (document as { schema?: unknown } | null)?.schema;
  if (typeof schema === 'string' && schema !== JOB_SCHEMA)
    return wrong(
      'schema',
      `"${schema.slice(0, 40)}" is not what this program reads (${JOB_SCHEMA}); use a newer program or convert the document`,
    );
  const read = job.safeParse(document, { reportInput: true });
  return read.success ? { ok: true, value: read.data } : { ok: false, faults: faultsOf(read.error.issues) };
}
