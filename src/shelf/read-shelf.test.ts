import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readShelf } from './read-shelf.ts';

const document = () => JSON.parse(readFileSync(new URL('../../demo/shelf.json', import.meta.url), 'utf8'));
const faults = (change: (shelf: ReturnType<typeof document>) => void): string => {
  const shelf = document();
  change(shelf);
  const read = readShelf(shelf);
  return read.ok ? 'none' : read.faults.map((f) => `${f.path}: ${f.message}`).join('\n');
};

describe('the demonstration shelf', () => {
  const read = readShelf(document());
  test('is read without a fault and holds at least 150 items of every kind a roof needs', () => {
    expect(read.ok ? [] : read.faults).toEqual([]);
    const items = read.ok ? read.value.items : [];
    expect(items.length).toBeGreaterThanOrEqual(150);
    expect(new Set(items.map((item) => item.kind))).toEqual(
      new Set(['screw', 'nail', 'rivet', 'clip', 'plate', 'washer', 'bit']),
    );
  });

  test('has a bit for every drive of its screws', () => {
    const items = read.ok ? read.value.items : [];
    const bits = new Set(items.flatMap((item) => (item.kind === 'bit' ? [item.drives] : [])));
    expect(items.filter((item) => item.kind === 'screw' && !bits.has(item.drive))).toEqual([]);
  });

  // Common practice, no source: number 10 clip screws have 13 threads to the inch into wood and 16 into light steel.
  test('number 10 clip screws have 13 threads into wood and 16 into light steel', () => {
    const tens = read.ok
      ? read.value.items.flatMap((item) =>
          item.kind === 'screw' && item.size === '#10' && item.head.form === 'pancake' ? [item] : [],
        )
      : [];
    expect(tens.length).toBeGreaterThan(0);
    for (const screw of tens) expect(screw.threadsPerInch).toBe(screw.point.form === 'drill' ? 16 : 13);
  });
});

describe('a faulty shelf', () => {
  test('names the repeated stock number', () => {
    expect(faults((shelf) => shelf.items.push(shelf.items[0]))).toContain(
      'stands on the shelf already, as items.0',
    );
  });
  test('names the field that is wrong, in one message', () => {
    const text = faults((shelf) => {
      shelf.items[0].diameter = '0.19 psi';
    });
    expect(text).toBe(
      'items.0.diameter: psi does not measure what is asked for here; write a number with its unit, for example "1 1/2 in"',
    );
  });
  test('refuses a negative price and an unknown kind', () => {
    expect(
      faults((shelf) => {
        shelf.items[0].price = -1;
      }),
    ).toContain('items.0.price');
    expect(
      faults((shelf) => {
        shelf.items[0].kind = 'glue';
      }),
    ).toContain('items.0.kind');
  });
});
