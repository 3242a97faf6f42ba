// Runs all tests; arguments go to the runner (a file name filters, --coverage measures).
// The last line is `N passed, N failed`, from the runner's own report.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { build, cannotBuild, isStale } from './build.mjs';

const report = `node_modules/.cache/deckbite/tests-${process.pid}.json`;

/** Process tests start the bundled program, so it has to be today's. */
async function buildProgram() {
  if (cannotBuild() || !isStale()) return true;
  try {
    await build();
    return true;
  } catch (error) {
    console.error(`test: the program does not build: ${error.message}`);
    return false;
  }
}

function runTests() {
  mkdirSync('node_modules/.cache/deckbite', { recursive: true });
  const args = ['node_modules/vitest/vitest.mjs', 'run', '--reporter=default', '--reporter=json'];
  args.push(`--outputFile.json=${report}`, ...process.argv.slice(2));
  return spawnSync(process.execPath, args, { stdio: 'inherit' }).status === 0;
}

/** A file that could not be loaded holds no test to fail; it counts as one failed. */
function counts() {
  if (!existsSync(report)) return { passed: 0, failed: 0, skipped: 0 };
  const result = JSON.parse(readFileSync(report, 'utf8'));
  rmSync(report);
  const broken = result.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  );
  for (const file of broken) console.error(`test: ${file.name} failed outside its tests`);
  return {
    passed: result.numPassedTests,
    failed: result.numFailedTests + broken.length,
    skipped: result.numPendingTests + result.numTodoTests,
  };
}

const built = await buildProgram();
const clean = runTests();
const { passed, failed, skipped } = counts();
if (skipped > 0) console.error(`test: ${skipped} skipped`);
if (passed + failed === 0) console.error('test: no test was run');
if (!clean && failed === 0 && passed > 0)
  console.error('test: the runner reported an error outside the tests, see above');
process.exitCode = built && clean && failed === 0 && passed > 0 ? 0 : 1;
console.log(`${passed} passed, ${failed} failed`);
