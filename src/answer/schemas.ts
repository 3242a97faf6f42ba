/** The published JSON Schemas, made from the same definitions that read the documents. */
import * as z from 'zod';
import { job } from '../job/job.ts';
import { shelf } from '../shelf/shelf.ts';
import { resultSchema } from './result.ts';

export const schemaNames = ['job', 'shelf', 'result'] as const;
export type SchemaName = (typeof schemaNames)[number];

export function jsonSchema(name: SchemaName): object {
  const schema = { job, shelf, result: resultSchema }[name];
  return { title: `Deckbite ${name}`, ...z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) };
}
