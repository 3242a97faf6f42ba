// Bundles bench/*.bench.ts (as shipped code is bundled, so that the numbers are those of the
// product) and runs them: `npm run bench`, or `npm run bench -- roof` for files named so.
// bench/run.ts, if there, is started once with the built files as arguments; without it each
// file is run by itself.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { rolldown } from 'rolldown';

const folder = 'node_modules/.cache/deckbite/bench';
const wanted = process.argv.slice(2);
const files = existsSync('bench') ? readdirSync('bench').filter((name) => name.endsWith('.bench.ts')) : [];
const names = files
  .map((name) => name.slice(0, -'.ts'.length))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)))
  .sort();
const runner = existsSync('bench/run.ts') ? ['run'] : [];

if (names.length === 0) {
  console.error('bench: no bench/*.bench.ts to run');
  process.exit(1);
}

const bundle = await rolldown({
  input: Object.fromEntries([...names, ...runner].map((name) => [name, `bench/${name}.ts`])),
  platform: 'node',
  external: [/^pdfkit($|\/)/, /^@expo-google-fonts\//],
});
await bundle.write({ dir: folder, format: 'esm', entryFileNames: '[name].mjs', cleanDir: true });
await bundle.close();

const built = names.map((name) => join(folder, `${name}.mjs`));
const runs = runner.length > 0 ? [[join(folder, 'run.mjs'), ...built]] : built.map((file) => [file]);
for (const args of runs) {
  const { status } = spawnSync(process.execPath, args, { stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
