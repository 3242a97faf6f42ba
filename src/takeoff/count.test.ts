import { expect, test } from 'vitest';
import { packsFor } from './count.ts';

// Take-off arithmetic, computed by hand: waste, rounded up to a whole piece, then whole packs.
const rows = [
  { count: 500, waste: 0.05, pack: 250, withWaste: 525, packs: 3, ordered: 750 },
  { count: 1260, waste: 0.05, pack: 250, withWaste: 1323, packs: 6, ordered: 1500 },
  { count: 2520, waste: 0.1, pack: 2500, withWaste: 2772, packs: 2, ordered: 5000 },
  { count: 2381, waste: 0.05, pack: 2500, withWaste: 2501, packs: 2, ordered: 5000 },
  { count: 1000, waste: 0, pack: 250, withWaste: 1000, packs: 4, ordered: 1000 },
];
for (const { count, waste, pack, ...expected } of rows)
  test(`${count} pieces with ${waste * 100} % waste in packs of ${pack}`, () => {
    expect(packsFor(count, waste, pack)).toEqual(expected);
  });
