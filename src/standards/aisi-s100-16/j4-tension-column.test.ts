import { expect, test } from 'vitest';
import { inch, lbf, psi } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { aisiS10016 } from './edition.ts';
import { tensionColumn } from './j4-tension-column.ts';

test('the column says what the edition says, row by row', () => {
  const rows = [
    { tc: 0.0566, d: 0.19, Fu2: 65_000, t1: 0.0239, dwe: 0.42, Fu1: 65_000, share: 0.5, Pnts: 1158, T: 90 },
    { tc: 0.0239, d: 0.25, Fu2: 65_000, t1: 0.0239, dwe: 0.48, Fu1: 61_500, share: 1, Pnts: 3201, T: 60 },
    { tc: 0.118, d: 0.216, Fu2: 65_000, t1: 0.118, dwe: 0.46, Fu1: 65_000, share: 1, Pnts: 2325, T: 400 },
  ];
  const names = Object.keys(rows[0] as object) as (keyof (typeof rows)[0])[];
  const columns = Object.fromEntries(
    names.map((name) => [name, Float64Array.from(rows, (row) => row[name])]),
  ) as Record<keyof (typeof rows)[0], Float64Array>;
  const { values, refused } = tensionColumn()(columns, rows.length);
  expect(refused).toBe(0);
  rows.forEach((row, i) => {
    const out = aisiS10016.pullOut({ tc: inch(row.tc), d: inch(row.d), Fu2: psi(row.Fu2) }, 'ASD');
    const over = aisiS10016.pullOver(
      {
        bearing: 'head alone',
        d: inch(row.d),
        dh: inch(row.dwe),
        t1: inch(row.t1),
        Fu1: psi(row.Fu1),
        pull: row.share < 1 ? 'one side' : 'all round',
      },
      'ASD',
    );
    const own = aisiS10016.screwTension({ Pnts: lbf(row.Pnts) }, 'ASD');
    if (isRefusal(out) || isRefusal(over) || isRefusal(own)) throw new Error('refused');
    expect(values[i]).toBeCloseTo(row.T / Math.min(out, over, own), 12);
  });
});
