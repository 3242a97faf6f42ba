// Writes what the documents take from the code: docs/clauses.md and the JSON Schemas. `npm run docs`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { rolldown } from 'rolldown';

const file = 'node_modules/.cache/deckbite/docs.mjs';
const entry = `import { clausesPage } from './scripts/clauses-page.ts';
import { jsonSchema, schemaNames } from './src/answer/schemas.ts';
import { allClauses } from './src/standards/all-clauses.ts';
export const page = clausesPage(allClauses.map(({ about }) => about));
export const schemas = schemaNames.map((name) => ({ name, schema: jsonSchema(name) }));`;
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
const { page, schemas } = await import(pathToFileURL(join(process.cwd(), file)).href);
writeFileSync('docs/clauses.md', page);
mkdirSync('docs/schemas', { recursive: true });
for (const { name, schema } of schemas)
  writeFileSync(`docs/schemas/${name}.schema.json`, `${JSON.stringify(schema, null, 2)}\n`);
