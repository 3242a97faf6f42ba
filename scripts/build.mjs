// Bundles apps/cli/main.ts into dist/cli.mjs and lazy chunks beside it.
// `--prepare` is the quiet form npm runs after an install: nothing to build, or no
// bundler on the machine, is then no error.
import { existsSync, renameSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const entry = 'apps/cli/main.ts';
const preparing = process.argv.includes('--prepare');

/** Ends quietly while npm prepares an install, loudly otherwise. */
function missing(what) {
  if (!preparing) {
    console.error(`build: ${what}`);
    process.exit(1);
  }
  process.exit(0);
}

process.chdir(root);
if (!existsSync(entry)) missing(`${entry} does not exist, so there is nothing to bundle`);

const rolldown = await import('rolldown').catch(() =>
  missing('rolldown is not installed; run `npm install` with development dependencies'),
);

const started = performance.now();
try {
  // Built beside the old one and swapped in, so that a failed build leaves a working dist.
  const fresh = `dist.${process.pid}`;
  const bundle = await rolldown.rolldown({
    input: { cli: entry },
    cwd: root,
    platform: 'node',
    // Loaded only by the papers that need them; each is larger than the rest of the program.
    external: [/^pdfkit($|\/)/, /^exceljs($|\/)/, /^@expo-google-fonts\//],
    logLevel: 'warn',
  });
  try {
    const { output } = await bundle.write({
      dir: fresh,
      format: 'esm',
      entryFileNames: '[name].mjs',
      chunkFileNames: 'chunks/[name]-[hash].mjs',
      minify: false,
      sourcemap: false,
      cleanDir: true,
    });
    rmSync('dist', { recursive: true, force: true });
    renameSync(fresh, 'dist');
    if (!preparing) report(output);
  } finally {
    await bundle.close();
    rmSync(fresh, { recursive: true, force: true });
  }
} catch (error) {
  console.error(`build: ${error.message ?? error}`);
  process.exit(preparing ? 0 : 1);
}

function report(output) {
  for (const chunk of output) {
    const bytes = chunk.type === 'chunk' ? chunk.code.length : chunk.source.length;
    console.log(`dist/${chunk.fileName}  ${(bytes / 1024).toFixed(1)} kB`);
  }
  console.log(`built in ${Math.round(performance.now() - started)} ms`);
}
