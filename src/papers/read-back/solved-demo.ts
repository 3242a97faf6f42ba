/** For tests of papers: a demonstration job solved, with changes by field path. */
import { readFileSync } from 'node:fs';
import { type Solved, solveJob } from '../../answer/solve-job.ts';

export const demos = ['a-boathouse', 'b-long-hall', 'c-farm', 'd-reroof'] as const;
export type Demo = (typeof demos)[number];

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../demo/${name}.json`, import.meta.url), 'utf8'));

type Open = { [key: string]: Open };

const unchanged = new Map<Demo, Solved>();

/** As it stands, solved once for all tests. */
export function solvedAsIs(name: Demo): Solved {
  const held = unchanged.get(name) ?? solvedDemo(name);
  unchanged.set(name, held);
  return held;
}

/** @throws with the faults when the changed job cannot be read */
export function solvedDemo(name: Demo, changes: Readonly<Record<string, unknown>> = {}): Solved {
  const document = read(name) as Open;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.');
    const last = keys.pop() as string;
    let owner = document;
    for (const key of keys) {
      owner[key] ??= {};
      owner = owner[key] as Open;
    }
    owner[last] = value as Open;
  }
  const solved = solveJob(document, read('shelf'));
  if (!solved.ok) throw new Error(solved.faults.map((fault) => `${fault.path}: ${fault.message}`).join('\n'));
  return solved.value;
}

/** What people put into a name, and what breaks programs that trust it. */
export const hostileName = `Ü "Roof" <script>alert(1)</script> & 'x' 🏠\u0007\u202e 屋根 ${'W'.repeat(60)}`;
