// Type check by the native compiler. Twice: everything, then the engine alone without the types
// of Node, so that a file, clock or network call in it does not compile.
import { spawnSync } from 'node:child_process';

const projects = ['tsconfig.json', 'src/tsconfig.json'];
const failed = projects.filter((project) => {
  const run = spawnSync(process.execPath, ['node_modules/ts7/bin/tsc', '-p', project], { stdio: 'inherit' });
  return run.status !== 0;
});
if (failed.length > 0) console.error(`check: failed for ${failed.join(', ')}`);
process.exitCode = failed.length > 0 ? 1 : 0;
