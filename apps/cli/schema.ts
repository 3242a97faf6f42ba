/** deckbite schema [job|shelf|result] */
import { jsonSchema, schemaNames } from '../../src/answer/schemas.ts';
import { reportCall } from './faults.ts';

export function run(args: readonly string[]): number {
  const [name = 'job', more] = args;
  const known = schemaNames.find((one) => one === name);
  if (!known || more !== undefined)
    return reportCall(`"${more ?? name}" is no schema; there are: ${schemaNames.join(', ')}`);
  process.stdout.write(`${JSON.stringify(jsonSchema(known), null, 2)}\n`);
  return 0;
}
