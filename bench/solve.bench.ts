/** Full solve of the demonstration jobs without papers, warm: job and shelf already read, everything else from the start. */
import { readFileSync } from 'node:fs';
import { inputsOf } from '../src/answer/inputs.ts';
import { solve, solveJob } from '../src/answer/solve-job.ts';
import { readJob } from '../src/job/read-job.ts';
import { readShelf } from '../src/shelf/read-shelf.ts';
import { best, median, report, type Timing } from './timing.ts';

const read = (name: string): unknown => JSON.parse(readFileSync(`demo/${name}.json`, 'utf8'));
const shelfDocument = read('shelf');
const shelf = readShelf(shelfDocument);
const rows: [string, Timing, string][] = [];
for (const name of ['a-boathouse', 'b-long-hall', 'c-farm', 'd-reroof']) {
  const document = read(name);
  const job = readJob(document);
  if (!job.ok || !shelf.ok) throw new Error(`${name} cannot be read`);
  const run = (): number => {
    const solved = solve(job.value, shelf.value, inputsOf(document));
    return solved.ok ? solved.value.answer.takeoff.total : Number.NaN;
  };
  best(run, 20);
  const limit = name === 'a-boathouse' ? 'median (at most 20 ms)' : 'median';
  rows.push([`${name}, documents already read`, median(run, 41), limit]);
  if (name === 'a-boathouse')
    rows.push([
      `${name}, from the documents`,
      median(() => (solveJob(document, shelfDocument).ok ? 1 : 0), 21),
      'median',
    ]);
}
report('solve without papers', rows);
