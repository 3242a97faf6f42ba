/** Starts the bundled program as a user does. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const program = fileURLToPath(new URL('../../bin/deckbite.mjs', import.meta.url));

export const demo = (name: string): string =>
  fileURLToPath(new URL(`../../demo/${name}.json`, import.meta.url));

export function deckbite(...args: readonly string[]): {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
} {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  return { code: status, out: stdout, err: stderr };
}

export const temporary = (): string => mkdtempSync(join(tmpdir(), 'deckbite-'));
