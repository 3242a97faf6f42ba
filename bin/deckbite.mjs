#!/usr/bin/env node
// Every start passes here, so it imports nothing beyond what it needs to find the program.
import { existsSync } from 'node:fs';

const program = new URL('../dist/cli.mjs', import.meta.url);
if (!existsSync(program)) {
  const { build } = await import('../scripts/build.mjs');
  await build().catch((error) => {
    console.error(`deckbite: the program is not built: ${error.message}`);
    process.exit(1);
  });
}
await import(program.href);
