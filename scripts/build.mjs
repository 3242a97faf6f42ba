// Bundles apps/cli/main.ts into dist/cli.mjs and lazy chunks beside it.
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const entry = join(root, 'apps/cli/main.ts');
const dist = join(root, 'dist');
const program = join(dist, 'cli.mjs');

/** Why the program cannot be built here at all, or undefined. */
export function cannotBuild() {
  if (!existsSync(entry)) return 'apps/cli/main.ts does not exist, so there is nothing to bundle';
  if (!existsSync(join(root, 'node_modules/rolldown/package.json')))
    return 'rolldown is not installed; run `npm install` with development dependencies';
  return undefined;
}

/** True when a source, the lock or this script is newer than the program. */
export function isStale() {
  if (!existsSync(program)) return true;
  const built = statSync(program).mtimeMs;
  const inputs = ['src', 'apps', 'package-lock.json', 'scripts/build.mjs'].map((name) => join(root, name));
  return inputs.some((path) => newest(path) > built);
}

/** Newest time in a tree; folders count too, so a deleted file is noticed. */
function newest(path) {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (!stat) return 0;
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}

/** Bundles the program; returns its files as [name, bytes]. */
export async function build() {
  const obstacle = cannotBuild();
  if (obstacle) throw new Error(obstacle);
  const { rolldown } = await import('rolldown');
  const bundle = await rolldown({
    input: { cli: entry },
    cwd: root,
    platform: 'node',
    // pdfkit reads its colour profile and font metrics from its own folder, papers the font
    // files from theirs: both break inside a bundle. exceljs does not, and loads 40 ms sooner in one.
    external: [/^pdfkit($|\/)/, /^@expo-google-fonts\//],
    logLevel: 'warn',
  });
  try {
    const { output } = await bundle.generate({
      format: 'esm',
      entryFileNames: '[name].mjs',
      chunkFileNames: 'chunks/[name]-[hash].mjs',
      // Left readable, so that a stack trace from a user means something.
      minify: false,
    });
    return replaceDist(output);
  } finally {
    await bundle.close();
  }
}

/**
 * Chunk names carry a digest of their content, so writing chunks first and the program last
 * lets another process start the old or the new program at any moment, never half of each.
 */
function replaceDist(output) {
  const files = output.map((part) => [part.fileName, part.type === 'chunk' ? part.code : part.source]);
  files.sort(([a], [b]) => Number(a === 'cli.mjs') - Number(b === 'cli.mjs'));
  for (const [name, text] of files) {
    const path = join(dist, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(`${path}.${process.pid}`, text);
    renameSync(`${path}.${process.pid}`, path);
  }
  removeOthers(dist, new Set(files.map(([name]) => name)));
  return files.map(([name, text]) => [name, Buffer.byteLength(text)]);
}

function removeOthers(folder, wanted) {
  for (const item of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, item.name);
    if (item.isDirectory()) removeOthers(path, wanted);
    else if (!wanted.has(relative(dist, path).replaceAll('\\', '/'))) rmSync(path, { force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    const started = performance.now();
    for (const [name, bytes] of await build()) console.log(`dist/${name}  ${(bytes / 1024).toFixed(1)} kB`);
    console.log(`built in ${Math.round(performance.now() - started)} ms`);
  } catch (error) {
    console.error(`build: ${error.message}`);
    process.exitCode = 1;
  }
}
