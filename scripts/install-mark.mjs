// The mark of a finished install: a digest of the lock, kept inside node_modules, so that
// deleting node_modules deletes the mark with it. Node's own modules only.
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const mark = join(root, 'node_modules/.deckbite-lock-digest');
// Stands for the development tools: an install without them (--omit=dev) is not finished.
const developmentTool = join(root, 'node_modules/vitest/package.json');

function lockDigest() {
  return createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
}

/** True when node_modules was installed, development tools included, from the present lock. */
export function isInstalled() {
  return existsSync(mark) && readFileSync(mark, 'utf8') === lockDigest();
}

/** Notes the present lock as installed; does nothing after an install without development tools. */
export function markInstalled() {
  if (existsSync(developmentTool)) writeFileSync(mark, lockDigest());
}
