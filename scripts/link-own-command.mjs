// npm links the commands of dependencies into node_modules/.bin, but not the package's own.
// With this link `npx deckbite` inside the repository runs the program of this very tree.
// Without it npx would install the folder into its cache first, and ask before doing so.
import { chmodSync, existsSync, mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

export function linkOwnCommand() {
  if (!existsSync(join(root, 'node_modules'))) return;
  const folder = join(root, 'node_modules/.bin');
  mkdirSync(folder, { recursive: true });
  if (process.platform === 'win32') {
    writeFileSync(join(folder, 'deckbite.cmd'), '@node "%~dp0\\..\\..\\bin\\deckbite.mjs" %*\r\n');
    return;
  }
  const link = join(folder, 'deckbite');
  rmSync(link, { force: true });
  symlinkSync('../../bin/deckbite.mjs', link);
  chmodSync(join(root, 'bin/deckbite.mjs'), 0o755);
}
