/** deckbite solve JOB */
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { exitCodeOf } from '../../src/answer/exit-code.ts';
import { type Solved, solveJob } from '../../src/answer/solve-job.ts';
import { reportCall, reportFaults } from './faults.ts';
import { packageRoot, readDocument, writePapers } from './files.ts';
import { summaryOf } from './summary.ts';
import { progress, progressDone } from './terminal.ts';

const options = { shelf: { type: 'string' }, out: { type: 'string' }, json: { type: 'boolean' } } as const;

export async function run(args: readonly string[]): Promise<number> {
  const parsed = parse(args);
  if (typeof parsed === 'string') return reportCall(parsed);
  const { path, shelf, out, json } = parsed;
  const solved = solveFile(path, shelf);
  if (typeof solved === 'number') return solved;
  if (out !== undefined) await writeAll(solved, out);
  if (json) {
    const { resultOf } = await import('../../src/answer/result.ts');
    process.stdout.write(`${JSON.stringify(resultOf(solved.answer, true))}\n`);
  } else process.stdout.write(summaryOf(solved.answer));
  return exitCodeOf(solved.answer.count);
}

function parse(args: readonly string[]) {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    const [path, more] = positionals;
    if (path === undefined) return 'solve wants a job document: deckbite solve JOB';
    if (more !== undefined) return `solve takes one job at a time; "${more}" is one too many`;
    return { path, ...values };
  } catch (error) {
    return (error as Error).message;
  }
}

/** The solved job, or the exit code when the input is bad. */
export function solveFile(path: string, shelfPath: string | undefined): Solved | number {
  const job = readDocument(path);
  if (!job.ok) return reportFaults(path, job.faults);
  const shelf = readDocument(shelfPath ?? join(packageRoot(), 'demo', 'shelf.json'));
  if (!shelf.ok) return reportFaults(shelfPath ?? 'the demonstration shelf', shelf.faults);
  const solved = solveJob(job.document, shelf.document);
  return solved.ok ? solved.value : reportFaults(path, solved.faults);
}

/** All papers of an answer to a folder, complete or not at all. */
export async function writeAll(solved: Solved, folder: string): Promise<void> {
  const { allPapers } = await import('../../src/papers/all-papers.ts');
  const papers = await allPapers(solved, (name) => progress(`writing ${name}`));
  progressDone();
  writePapers(folder, papers);
}
