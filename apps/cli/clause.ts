/** deckbite clause: the list, what one takes, or one worked out. */
import { clauseInputs, evaluateClause, listClauses } from '../../src/answer/clauses.ts';
import { reportCall, reportFaults } from './faults.ts';

const REFUSED = 2;

export function run(args: readonly string[]): number {
  const json = args.includes('--json');
  const [id, ...pairs] = args.filter((arg) => arg !== '--json');
  if (id === undefined) return list(json);
  if (pairs.length === 0 && !json) return describe(id);
  const given = new Map<string, string>();
  for (const pair of pairs) {
    const at = pair.indexOf('=');
    if (at < 1) return reportCall(`"${pair}" is not name=value`);
    given.set(pair.slice(0, at), pair.slice(at + 1));
  }
  return evaluate(id, Object.fromEntries(given), json);
}

function list(json: boolean): number {
  const all = listClauses();
  if (json)
    process.stdout.write(
      `${JSON.stringify(all.map(({ id, title, cites, gives }) => ({ id, title, cites, ...gives })))}\n`,
    );
  else for (const { id, title, cites } of all) process.stdout.write(`${id}  ${title}  [${cites}]\n`);
  return 0;
}

function describe(id: string): number {
  const inputs = clauseInputs(id);
  if (!inputs) return evaluate(id, {}, false);
  process.stdout.write(`${id} takes\n${inputs.map((line) => `  ${line}\n`).join('')}`);
  return 0;
}

function evaluate(id: string, given: Readonly<Record<string, string>>, json: boolean): number {
  const found = evaluateClause(id, given);
  if (found.kind === 'faults') {
    if (json) process.stdout.write(`${JSON.stringify({ faults: found.faults })}\n`);
    return reportFaults(id, found.faults);
  }
  if (json)
    process.stdout.write(
      `${JSON.stringify(found.kind === 'value' ? { symbol: found.symbol, value: found.value, unit: found.unit, steps: found.steps } : { refusal: found.refusal })}\n`,
    );
  else if (found.kind === 'value')
    process.stdout.write(`${found.steps.map((step) => `${step}\n`).join('')}${found.text}\n`);
  else process.stdout.write(`refused: ${found.text}\n`);
  return found.kind === 'value' ? 0 : REFUSED;
}
