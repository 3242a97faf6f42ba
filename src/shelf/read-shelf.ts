/** A catalogue document to a shelf, or every fault in it at once. */
import { type Fault, faultsOf } from '../quantities/fault.ts';
import { SHELF_SCHEMA, type Shelf, shelf } from './shelf.ts';

export type ReadShelf =
  | { readonly ok: true; readonly value: Shelf }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export function readShelf(document: unknown): ReadShelf {
  const schema = (document as { schema?: unknown } | null)?.schema;
  if (typeof schema === 'string' && schema !== SHELF_SCHEMA)
    return {
      ok: false,
      faults: [
        {
          path: 'schema',
          message: `"${schema.slice(0, 40)}" is not what this program reads (${SHELF_SCHEMA})`,
        },
      ],
    };
  const read = shelf.safeParse(document, { reportInput: true });
  return read.success ? { ok: true, value: read.data } : { ok: false, faults: faultsOf(read.error.issues) };
}
