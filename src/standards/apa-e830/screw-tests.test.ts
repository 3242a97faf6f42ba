import { expect, test } from 'vitest';
import { inch, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { clausesOfNds2018 as nds } from '../nds-2018/clauses.ts';
import { lateralFramingRows, lateralSteelRows, withdrawalRows } from './e830.table.ts';
import {
  lateralUnderSteel,
  nailInPanelGravity,
  plywoodOverMetalLateral,
  plywoodScrewUltimate,
} from './screw-tests.ts';

test('the tables hold their rows', () => {
  expect([lateralSteelRows.length, lateralFramingRows.length, withdrawalRows.length]).toEqual([10, 26, 25]);
});

for (const { fastener, number, thread, ultimate, origin } of lateralSteelRows)
  test(`Table 1: ${fastener} No. ${number}, ${thread} in: ${ultimate} lb (${origin})`, () => {
    const row = lateralUnderSteel.find((each) => each.fastener === fastener && each.thread_in === thread);
    expect(row?.[number]).toBe(ultimate);
  });

for (const { framing, plywood, screw, ultimate, origin } of lateralFramingRows)
  test(`Table 2: ${plywood} in plywood on ${framing}, ${screw}: ${ultimate} lb (${origin})`, () => {
    expect(plywoodOverMetalLateral({ framing, screw, t: inch(plywood) })).toBe(ultimate);
  });

// The cells the rows above lack; both together are the whole table.
test.each([
  ['0.080 in aluminum', 0.25, '14', 410, 'published'],
  ['0.080 in aluminum', 0.5, '12', 860, 'published'],
  ['0.078 in galvanized steel', 0.5, '10', 890, 'published'],
  ['0.078 in galvanized steel', 0.75, '14', 1390, 'published'],
] as const)('Table 2: on %s, %d in plywood, %s: %d lb (%s)', (framing, t, screw, ultimate, _origin) => {
  expect(plywoodOverMetalLateral({ framing, screw, t: inch(t) })).toBe(ultimate);
});

// 2895 D L is the line through the recalled table: within 4 lb of each entry.
for (const { thread, number, ultimate, origin } of withdrawalRows)
  test(`Table 3: No. ${number}, ${thread} in: ${ultimate} lb (${origin})`, () => {
    const D = inch(0.06 + 0.013 * number);
    expect(Math.abs(Number(plywoodScrewUltimate({ D, L: inch(thread) })) - ultimate)).toBeLessThanOrEqual(4);
  });

test.each([
  [10, 0.19, 0.4375, 240.6, 41.8],
  [10, 0.19, 0.46875, 257.8, 44.8],
  [12, 0.216, 0.46875, 293.1, 50.9],
  [14, 0.242, 0.59375, 416, 72.2],
] as const)(
  'No. %d: the averages are 5.76 times the reference value at G 0.42, 4.06 at 0.50',
  (_number, D, L, ultimate, reference) => {
    const average = Number(plywoodScrewUltimate({ D: inch(D), L: inch(L) }));
    const at = (G: number) =>
      L * Number(nds.screwReference({ G: ratio(G), D: inch(D), screwStandard: 'other than ASME B18.6.1' }));
    expect(Math.abs(average - ultimate)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(at(0.42) - reference)).toBeLessThanOrEqual(0.1);
    expect(average / at(0.42)).toBeCloseTo(5.758, 3);
    expect(average / at(0.5)).toBeCloseTo(4.063, 3);
  },
);

test('a thickness not tested is refused, and so is thread outside the table', () => {
  const row = { framing: '0.080 in aluminum', screw: '10' } as const;
  expect(isRefusal(plywoodOverMetalLateral({ ...row, t: inch(0.4) }))).toBe(true);
  expect(isRefusal(plywoodScrewUltimate({ D: inch(0.19), L: inch(0.3) }))).toBe(true);
  expect(isRefusal(plywoodScrewUltimate({ D: inch(0.3), L: inch(0.5) }))).toBe(true);
});

test('nails held by a panel: 0.40, with ring shank 0.70, wet 0.75 (published)', () => {
  expect(nailInPanelGravity).toMatchObject({ smoothOrScrewShank: 0.4, ringShank: 0.7, wetFactor: 0.75 });
});
