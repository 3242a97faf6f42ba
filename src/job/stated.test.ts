import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { faultsOf } from '../quantities/fault.ts';
import { stated } from './stated.ts';

const report = z.strictObject({ source: z.string(), factor: z.number(), rows: z.array(z.string()) });
const fields = z.strictObject({
  word: stated(z.enum(['B', 'C'])).optional(),
  report: stated(report).optional(),
});
const faultsIn = (value: unknown): string[] => {
  const read = fields.safeParse(value, { reportInput: true });
  return read.success ? [] : faultsOf(read.error.issues).map((f) => `${f.path}: ${f.message}`);
};

describe('of value, assumption and question only the one that was meant is faulted', () => {
  const rows: [unknown, string[]][] = [
    [{ word: 'E' }, ['word: must be one of: B, C']],
    [{ word: { assume: 'E', because: 'open water' } }, ['word.assume: must be one of: B, C']],
    [
      { word: { assume: 'C' } },
      ['word.because: is missing; give text in quotes, with its unit where it is a quantity'],
    ],
    [{ word: { ask: 5 } }, ['word.ask: must be text in quotes, with its unit where it is a quantity']],
    [{ word: { ask: '' } }, ['word.ask: say it in a sentence']],
    [
      { word: { ask: 'which?', colour: 1 } },
      ['word.colour: is not a field here; check its spelling or remove it'],
    ],
    [
      { report: { source: 'x', colour: 1 } },
      [
        'report.factor: is missing; give a number without quotes',
        'report.rows: is missing; give a list in brackets',
        'report.colour: is not a field here; check its spelling or remove it',
      ],
    ],
    [
      { report: { assume: { source: 'x', factor: 1, rows: [5] }, because: 'said so' } },
      ['report.assume.rows.0: must be text in quotes, with its unit where it is a quantity'],
    ],
  ];
  for (const [value, faults] of rows)
    test(JSON.stringify(value), () => expect(faultsIn(value)).toEqual(faults));
});
