/** The published JSON Schemas, made from the same definitions that read the documents. */
import * as z from 'zod';
import { JOB_SCHEMA, job } from '../job/job.ts';
import { SHELF_SCHEMA, shelf } from '../shelf/shelf.ts';
import { RESULT_SCHEMA, resultSchema } from './result.ts';

export const schemaNames = ['job', 'shelf', 'result'] as const;
export type SchemaName = (typeof schemaNames)[number];

/** A name, not an address: "deckbite/job/1" is urn:deckbite:job:1. */
const urn = (document: string): string => `urn:${document.replaceAll('/', ':')}`;

const published = {
  job: { id: urn(JOB_SCHEMA), schema: job },
  shelf: { id: urn(SHELF_SCHEMA), schema: shelf },
  result: { id: urn(RESULT_SCHEMA), schema: resultSchema },
} as const;

export function jsonSchema(name: SchemaName): object {
  const { id, schema } = published[name];
  const made = z.toJSONSchema(schema as z.ZodType, { io: 'input', unrepresentable: 'any' });
  return { $schema: made.$schema, $id: id, title: `Deckbite ${name}`, ...made };
}
