// `npm start`: builds the program if a source is newer, then answers the demonstration job.
import { spawnSync } from 'node:child_process';
import { build, isStale } from './build.mjs';

try {
  if (isStale()) await build();
} catch (error) {
  console.error(`start: ${error.message}`);
  process.exit(1);
}
const run = spawnSync(process.execPath, ['bin/deckbite.mjs', 'demo', '--out', 'out'], { stdio: 'inherit' });
process.exitCode = run.status ?? 1;
