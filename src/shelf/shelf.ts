/** A catalogue as a document: edition, currency, items with unique stock numbers. */
import * as z from 'zod';
import { item } from './item.ts';

export const SHELF_SCHEMA = 'deckbite/shelf/1';

export const shelf = z
  .strictObject({
    schema: z.literal(SHELF_SCHEMA, { error: `this program reads ${SHELF_SCHEMA}` }),
    name: z.string().min(1).max(200),
    edition: z.int().min(1),
    date: z.iso.date(),
    currency: z.string().regex(/^[A-Z]{3}$/, { error: 'three capital letters, for example USD' }),
    note: z.string().max(2000).optional(),
    items: z.array(item).min(1).max(20_000),
  })
  .superRefine((value, context) => {
    const seen = new Map<string, number>();
    for (const [index, { id }] of value.items.entries()) {
      const before = seen.get(id);
      if (before !== undefined)
        context.addIssue({
          code: 'custom',
          path: ['items', index, 'id'],
          message: `"${id}" stands on the shelf already, as items.${before}; give it its own stock number`,
        });
      seen.set(id, index);
    }
  });
export type Shelf = z.infer<typeof shelf>;
