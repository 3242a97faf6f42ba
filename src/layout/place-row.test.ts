import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeRow } from './place-row.ts';
import { settleStretches, type ZoneStretch } from './row-stretches.ts';

const row = (stretches: ZoneStretch[], first: number, last = first, held = false): [number, number][] => {
  const out: [number, number][] = [];
  placeRow(stretches, { first, last, held }, (at, zone) => out.push([at, zone]));
  return out;
};
const one = (length: number, spacing: number): ZoneStretch[] => [{ from: 0, to: length, zone: 0, spacing }];

describe('a row in one zone', () => {
  test('20 ft with ends 3 in in and 24 in spacing: 10 intervals of 23.4 in, 11 fasteners', () => {
    const places = row(one(240, 24), 3).map(([at]) => at);
    expect(places).toHaveLength(11);
    expect(places[0]).toBe(3);
    expect(places.at(-1)).toBe(237);
    places.slice(1).forEach((at, i) => {
      expect(at - (places[i] as number)).toBeCloseTo(23.4, 9);
    });
  });

  test('a length that is a whole number of spacings gets no extra fastener', () => {
    expect(row(one(246, 24), 3)).toHaveLength(11);
  });

  test('a stretch shorter than both end offsets gets one fastener in its middle', () => {
    expect(row(one(5, 24), 3)).toEqual([[2.5, 0]]);
  });
});

// Take-off arithmetic: intervals = ceil((L - first - last) / spacing), fasteners = intervals + 1. Computed by hand.
const counts = [
  { length: 281.745, first: 3, last: 3, spacing: 24, fasteners: 13, actual: 22.979 },
  { length: 360, first: 3, last: 6, spacing: 24, fasteners: 16, actual: 23.4 },
  { length: 360, first: 3, last: 6, spacing: 12, fasteners: 31, actual: 11.7 },
  { length: 480, first: 2, last: 4, spacing: 30, fasteners: 17, actual: 29.625 },
];
for (const { length, first, last, spacing, fasteners, actual } of counts)
  test(`${length} in at ${spacing} in: ${fasteners} fasteners ${actual} in apart`, () => {
    const places = row(one(length, spacing), first, last).map(([at]) => at);
    expect(places).toHaveLength(fasteners);
    expect((places[1] as number) - (places[0] as number)).toBeCloseTo(actual, 3);
  });

test('a clip line through three zones rounds up in each: 5 + 10 + 5 intervals, 21 clips', () => {
  const zones = [
    { from: 0, to: 60, zone: 2, spacing: 12 },
    { from: 60, to: 300, zone: 1, spacing: 24 },
    { from: 300, to: 360, zone: 2, spacing: 12 },
  ];
  expect(row(zones, 3, 6)).toHaveLength(21);
});

// Lap screws between rows that hold the ends: ceil(L / spacing) - 1. Computed by hand.
for (const [length, spacing, count] of [
  [281.745, 18, 15],
  [281.745, 24, 11],
  [360, 12, 29],
] as const)
  test(`a lap of ${length} in held at its ends takes ${count} screws at ${spacing} in`, () => {
    expect(row(one(length, spacing), 0, 0, true)).toHaveLength(count);
  });

// Two rows a side on ridges: both ends fastened (FEMA P-499 spacing 3 to 6 in). Computed by hand.
for (const [length, spacing, perRow] of [
  [744, 6, 125],
  [744, 3, 249],
  [744, 12, 63],
  [600, 5, 121],
] as const)
  test(`a ridge of ${length} in at ${spacing} in takes ${perRow} screws a row`, () => {
    expect(row(one(length, spacing), 0)).toHaveLength(perRow);
  });

describe('a row through several zones', () => {
  const zones: ZoneStretch[] = [
    { from: 0, to: 48, zone: 3, spacing: 6 },
    { from: 48, to: 144, zone: 2, spacing: 12 },
    { from: 144, to: 300, zone: 1, spacing: 24 },
  ];
  test('has no doubled fastener at a border and one on it', () => {
    const places = row(zones, 3).map(([at]) => at);
    expect(new Set(places).size).toBe(places.length);
    expect(places).toContain(48);
    expect(places).toContain(144);
  });
  test('counts by formula: the sum of rounded-up intervals, and one', () => {
    expect(row(zones, 3)).toHaveLength(Math.ceil(45 / 6) + 96 / 12 + Math.ceil((297 - 144) / 24) + 1);
  });
});

test('a sliver between wider zones grows to one spacing of its own', () => {
  const settled = settleStretches([
    { from: 0, to: 100, zone: 1, spacing: 24 },
    { from: 100, to: 102, zone: 3, spacing: 6 },
    { from: 102, to: 200, zone: 1, spacing: 24 },
  ]);
  const sliver = settled.find(({ zone }) => zone === 3) as ZoneStretch;
  expect(sliver.to - sliver.from).toBeCloseTo(6, 9);
});

test('a sliver beside a tighter zone joins it', () => {
  expect(
    settleStretches([
      { from: 0, to: 60, zone: 3, spacing: 6 },
      { from: 60, to: 65, zone: 2, spacing: 12 },
      { from: 65, to: 200, zone: 1, spacing: 24 },
    ]),
  ).toEqual([
    { from: 0, to: 65, zone: 3, spacing: 6 },
    { from: 65, to: 200, zone: 1, spacing: 24 },
  ]);
});

const rowOfZones = fc
  .array(
    fc.record({
      length: fc.double({ min: 0.5, max: 400, noNaN: true }),
      spacing: fc.constantFrom(3, 4, 6, 8, 9, 12, 16, 18, 24),
    }),
    { minLength: 1, maxLength: 7 },
  )
  .map((parts) => {
    let at = 0;
    return parts.map(({ length, spacing }, zone): ZoneStretch => {
      const from = at;
      at += length;
      return { from, to: at, zone, spacing };
    });
  });

test('whatever the zones: ends in place, in order, and no gap wider than the spacing allowed anywhere in it', () => {
  fc.assert(
    fc.property(rowOfZones, (stretches) => {
      const places = row(stretches, 3).map(([at]) => at);
      const end = (stretches.at(-1) as ZoneStretch).to;
      if (end <= 6) {
        expect(places).toHaveLength(1);
        return;
      }
      expect(places[0]).toBeCloseTo(3, 9);
      expect(places.at(-1)).toBeCloseTo(end - 3, 9);
      for (let i = 1; i < places.length; i++) {
        const [a, b] = [places[i - 1] as number, places[i] as number];
        expect(b).toBeGreaterThan(a);
        // A gap lies in one or two zones; it may be as wide as the wider of what it touches, measured in its middle.
        const widest = Math.max(
          ...stretches
            .filter(({ from, to }) => to > a + 1e-6 && from < b - 1e-6)
            .map(({ spacing }) => spacing),
        );
        expect(b - a).toBeLessThanOrEqual(widest + 1e-6);
      }
    }),
    { numRuns: 400 },
  );
});
