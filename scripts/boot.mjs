// Installs the dependencies when they are absent or the lock has changed, then runs the named
// script in this process: node scripts/boot.mjs [script [arguments]]. Node's own modules only.
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { isInstalled, markInstalled } from './install-mark.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
process.chdir(root);

function npm(...args) {
  console.error(`boot: npm ${args.join(' ')}`);
  // Output goes to stderr: what the named script prints on stdout stays its own.
  const windows = process.platform === 'win32';
  return spawnSync('npm', args, { stdio: ['ignore', 2, 2], shell: windows }).status === 0;
}

if (!isInstalled()) {
  if (!npm('ci', '--include=dev') && !npm('install', '--include=dev')) {
    console.error('boot: dependencies could not be installed');
    process.exit(1);
  }
  markInstalled();
}

const [script, ...rest] = process.argv.slice(2);
if (script) {
  const path = resolve(script);
  process.argv = [process.execPath, path, ...rest];
  await import(pathToFileURL(path).href);
}
