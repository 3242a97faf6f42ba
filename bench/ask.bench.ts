/** Ranked questions for a job with ten unknowns and more, and margins of the demonstration jobs; documents already read. */
import { readFileSync } from 'node:fs';
import { ask } from '../src/answer/ask/ask.ts';
import { withField } from '../src/answer/ask/field.ts';
import { marginsOf } from '../src/answer/margins/margins.ts';
import { solveJob } from '../src/answer/solve-job.ts';
import { readJob } from '../src/job/read-job.ts';
import { readShelf } from '../src/shelf/read-shelf.ts';
import { best, median, report, type Timing } from './timing.ts';

const read = (name: string): unknown => JSON.parse(readFileSync(`demo/${name}.json`, 'utf8'));
const shelfDocument = read('shelf');
const shelf = readShelf(shelfDocument);

/** The boathouse with most of what a first message leaves out asked. */
const hardlyKnown = [
  'place.saltWater',
  'wind.exposure',
  'wind.enclosure',
  'roof.eaveHeight',
  'panel.thickness',
  'panel.grade',
  'panel.upliftTest',
  'support.thickness',
  'support.specificGravity',
  'support.nailing',
].reduce<unknown>(
  (document, path) => withField(document, path, { ask: 'not told yet' }),
  read('a-boathouse'),
);

function asking(document: unknown): () => number {
  const job = readJob(document);
  if (!job.ok || !shelf.ok) throw new Error('a document cannot be read');
  return () => {
    const report = ask(document, job.value, shelf.value);
    if (!report.ok) throw new Error(JSON.stringify(report.faults));
    const { questions, needNotBeAsked } = report.value;
    return questions.reduce(
      (sum, one) => sum + one.moves.price,
      100 * needNotBeAsked.length + questions.length,
    );
  };
}

const rows: [string, Timing, string][] = [];
const first = asking(hardlyKnown);
const cold = performance.now();
const checksum = first();
rows.push([
  'a-boathouse, ten asked, first time',
  { ms: performance.now() - cold, spread: 0, checksum },
  'one run, cold',
]);
best(first, 5);
rows.push(['a-boathouse, ten asked', median(first, 15), 'median (at most 500 ms)']);
for (const name of ['a-boathouse', 'b-long-hall', 'c-farm', 'd-reroof'])
  rows.push([`${name}, as it stands`, median(asking(read(name)), 11), 'median']);
for (const name of ['a-boathouse', 'b-long-hall', 'c-farm', 'd-reroof']) {
  const solved = solveJob(read(name), shelfDocument);
  if (!solved.ok) throw new Error(`${name} cannot be solved`);
  const run = (): number =>
    marginsOf(solved.value).reduce((sum, { margins: { spacing_in: margin } }) => {
      return sum + (margin.kind === 'holds' ? (margin.most?.value ?? 0) : 0);
    }, 0);
  rows.push([`${name}, margins of every line`, median(run, 7), 'median']);
}
report('what to ask next, what would break it', rows);
