/** docs/clauses.md, made from the clauses themselves. */
import { type AnyClause, limitText } from '../src/trace/clause.ts';

export function clausesPage(clauses: readonly AnyClause['about'][]): string {
  const folders = new Map<string, AnyClause['about'][]>();
  for (const one of clauses) {
    const folder = one.id.slice(0, one.id.indexOf('/'));
    folders.set(folder, [...(folders.get(folder) ?? []), one]);
  }
  const parts = [...folders].map(
    ([folder, list]) =>
      `## ${folder}\n\n| clause | gives | cited as | takes |\n|---|---|---|---|\n${list.map(row).join('\n')}\n`,
  );
  return `# Clauses\n\nMade from the code by \`npm run docs\`; ${clauses.length} clauses. Evaluate one with \`npx deckbite clause ID name=value ...\`.\n\n${parts.join('\n')}`;
}

const cell = (text: string): string => text.replaceAll('|', '\\|');

function row({ id, title, cites, inputs, gives }: AnyClause['about']): string {
  const takes = Object.entries(inputs).map(([name, input]) => `${name} (${limitText(input)})`);
  return `| \`${id}\` | ${cell(title)}: ${gives.symbol}${gives.unit === '1' ? '' : `, ${gives.unit}`} | ${cell(cites)} | ${cell(takes.join('; '))} |`;
}
