/** A call of the form COMMAND JOB [--shelf FILE] [--json]: its documents, or what is wrong with it. */
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { reportCall, reportFaults } from './faults.ts';
import { packageRoot, readDocument } from './files.ts';

const options = { shelf: { type: 'string' }, json: { type: 'boolean', default: false } } as const;

export interface JobCall {
  readonly path: string;
  readonly json: boolean;
  readonly job: unknown;
  readonly shelf: unknown;
}

/** The documents of the call, or the exit code when it is wrong or they cannot be read. */
export function readJobCall(command: string, args: readonly string[]): JobCall | number {
  const parsed = parse(command, args);
  if (typeof parsed === 'string') return reportCall(parsed);
  const job = readDocument(parsed.path);
  if (!job.ok) return reportFaults(parsed.path, job.faults);
  const shelf = readDocument(parsed.shelf ?? join(packageRoot(), 'demo', 'shelf.json'));
  if (!shelf.ok) return reportFaults(parsed.shelf ?? 'the demonstration shelf', shelf.faults);
  return { path: parsed.path, json: parsed.json, job: job.document, shelf: shelf.document };
}

function parse(command: string, args: readonly string[]) {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    const [path, more] = positionals;
    if (path === undefined) return `${command} wants a job document: deckbite ${command} JOB`;
    if (more !== undefined) return `${command} takes one job at a time; "${more}" is one too many`;
    return { path, ...values };
  } catch (error) {
    return (error as Error).message;
  }
}
