/** The program as a process: a cold solve of a small job without papers, against starting the runtime alone. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { report, type Timing } from './timing.ts';

const small = join(mkdtempSync(join(tmpdir(), 'deckbite-')), 'small.json');
writeFileSync(
  small,
  JSON.stringify({
    schema: 'deckbite/job/1',
    name: 'porch',
    basis: { codeYear: 'IBC 2024' },
    wind: { by: 'standard', speed: '115 mph', exposure: 'B', enclosure: 'enclosed' },
    roof: { form: 'monoslope', length: '20 ft', width: '12 ft', slope: '3:12', eaveHeight: '9 ft' },
    panel: {
      system: 'exposed ribbed',
      coverage: '36 in',
      ribSpacing: '9 in',
      metal: 'steel',
      thickness: '29 ga',
      grade: 'SS80',
    },
    support: { kind: 'wood purlins', depth: '1 1/2 in', species: 'Southern Pine', spacing: '24 in' },
  }),
);

function time(args: readonly string[]): Timing {
  const all: number[] = [];
  let length = 0;
  for (let i = 0; i < 15; i++) {
    const start = performance.now();
    const { stdout } = spawnSync(process.execPath, [...args], { encoding: 'utf8' });
    all.push(performance.now() - start);
    length = stdout.length;
  }
  all.sort((a, b) => a - b);
  return { ms: all[7] as number, spread: (all.at(-1) as number) - (all[0] as number), checksum: length };
}

const bare = time(['-e', '0']);
const solve = time(['bin/deckbite.mjs', 'solve', small]);
report('cold start, median of 15 (checksum: characters printed)', [
  ['node -e 0', bare, ''],
  [
    'deckbite solve, small job, no papers',
    solve,
    `${(solve.ms / bare.ms).toFixed(1)} times bare (at most 5)`,
  ],
]);
