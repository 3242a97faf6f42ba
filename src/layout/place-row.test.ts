import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeRow } from './place-row.ts';
import { settleStretches, type ZoneStretch } from './row-stretches.ts';

const row = (stretches: ZoneStretch[], endOffset: number): [number, number][] => {
  const out: [number, number][] = [];
  placeRow(stretches, endOffset, (at, zone) => out.push([at, zone]));
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
