/** deckbite demo: the demonstration jobs with all their papers. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { reportCall } from './faults.ts';
import { packageRoot } from './files.ts';
import { solveFile, writeAll } from './solve.ts';
import { summaryOf } from './summary.ts';

export async function run(args: readonly string[]): Promise<number> {
  let out = 'out';
  try {
    out = parseArgs({ args: [...args], options: { out: { type: 'string', default: 'out' } } }).values.out;
  } catch (error) {
    return reportCall((error as Error).message);
  }
  const folder = join(packageRoot(), 'demo');
  const jobs = readdirSync(folder)
    .filter((name) => name.endsWith('.json') && name !== 'shelf.json')
    .sort();
  for (const name of jobs) {
    const solved = solveFile(join(folder, name), undefined);
    if (typeof solved === 'number') return solved;
    const target = join(out, name.replace(/\.json$/, ''));
    await writeAll(solved, target);
    process.stdout.write(`${summaryOf(solved.answer)}papers in ${target}\n\n`);
  }
  return 0;
}
