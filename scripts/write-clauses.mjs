// Writes docs/clauses.md from the clauses: `npm run clauses`.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { rolldown } from 'rolldown';

const file = 'node_modules/.cache/deckbite/clauses-page.mjs';
const entry = `import { clausesPage } from './scripts/clauses-page.ts';
import { allClauses } from './src/standards/all-clauses.ts';
export const page = clausesPage(allClauses.map(({ about }) => about));`;
const bundle = await rolldown({
  input: 'entry',
  platform: 'node',
  plugins: [
    {
      name: 'entry',
      resolveId: (id) => (id === 'entry' ? join(process.cwd(), 'entry.ts') : undefined),
      load: (id) => (id.endsWith('/entry.ts') ? entry : undefined),
    },
  ],
});
await bundle.write({ file, format: 'esm' });
await bundle.close();
const { page } = await import(pathToFileURL(join(process.cwd(), file)).href);
writeFileSync('docs/clauses.md', page);
