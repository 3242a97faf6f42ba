/** Reading documents and writing papers: complete files only. */
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { MOST_CHARACTERS, readJson } from '../../src/answer/documents.ts';
import type { Fault } from '../../src/quantities/fault.ts';

export type ReadFile =
  | { readonly ok: true; readonly document: unknown }
  | { readonly ok: false; readonly faults: readonly Fault[] };

const fault = (path: string, message: string): ReadFile => ({ ok: false, faults: [{ path, message }] });

/** A JSON document from a file. Too large a file is refused before it is read. */
export function readDocument(path: string): ReadFile {
  try {
    const size = statSync(path).size;
    if (size > MOST_CHARACTERS)
      return fault(
        path,
        `is ${(size / 1e6).toFixed(0)} MB; a document of one roof is far smaller (at most ${MOST_CHARACTERS / 1e6} MB)`,
      );
    const read = readJson(readFileSync(path, 'utf8'));
    return read.ok
      ? { ok: true, document: read.value }
      : { ok: false, faults: read.faults.map((one) => ({ ...one, path })) };
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    const why =
      code === 'ENOENT'
        ? 'is not there; check the path'
        : code === 'EISDIR'
          ? 'is a folder; name the file in it'
          : `cannot be read (${code ?? String(error)})`;
    return fault(path, why);
  }
}

/** The folder of the package, from source or from the bundle. */
export function packageRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'demo', 'shelf.json'))) {
    const above = dirname(folder);
    if (above === folder) throw new Error('the folder "demo" of the package is missing');
    folder = above;
  }
  return folder;
}

export interface Paper {
  readonly name: string;
  readonly bytes: Uint8Array | string;
}

/**
 * Writes every paper beside its place and renames it there only when all are complete, so that nothing half-written
 * is left and an old set is replaced whole or not at all.
 */
export function writePapers(folder: string, papers: readonly Paper[]): void {
  mkdirSync(folder, { recursive: true });
  const pairs = papers.map(({ name, bytes }) => ({
    bytes,
    final: join(folder, name),
    beside: join(folder, `.${name}.${process.pid}.part`),
  }));
  try {
    for (const { bytes, beside } of pairs) writeFileSync(beside, bytes);
    for (const { beside, final } of pairs) renameSync(beside, final);
  } catch (error) {
    for (const { beside } of pairs) rmSync(beside, { force: true });
    throw error;
  }
}
