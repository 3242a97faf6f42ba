import { describe, expect, test } from 'vitest';
import { zoneRules as zoneRules716 } from '../asce-7-16/figure-30.3-2-zones.ts';
import { asce716 } from '../asce-7-16/roof-wind.ts';
import { zoneRules as zoneRules722 } from '../asce-7-22/figure-30.3-2-zones.ts';
import { asce722 } from '../asce-7-22/roof-wind.ts';
import { figureIds } from './edition.ts';
import type { Band, ZoneRule } from './zone-rule.ts';

/** A rectangle with one corner at the origin: length along x, width along y. */
interface Rectangle {
  readonly shape: 'flat' | 'gable' | 'hip' | 'monoslope';
  readonly length: number;
  readonly width: number;
  readonly a: number;
  readonly h: number;
}
type Distances = Partial<Record<Exclude<Band['edge'], 'outside' | 'hip or ridge'>, number>>;

/** Distances to the edges of the plane a point lies on. Ridge along x; monoslope rising with y. */
function ownEdges({ shape, length, width }: Rectangle, x: number, y: number): Distances {
  const [toRake, toSide] = [Math.min(x, length - x), Math.min(y, width - y)];
  if (shape === 'flat') return {};
  if (shape === 'monoslope') return { eave: y, 'high edge': width - y, rake: toRake };
  if (shape === 'gable') return { eave: toSide, ridge: width / 2 - toSide, rake: toRake };
  const hip = Math.abs(toRake - toSide) / Math.SQRT2;
  return toRake < toSide ? { eave: toRake, hip } : { eave: toSide, ridge: width / 2 - toSide, hip };
}

function zoneAt(rules: readonly ZoneRule[], roof: Rectangle, x: number, y: number): string {
  const own = ownEdges(roof, x, y);
  const [dx, dy] = [Math.min(x, roof.length - x), Math.min(y, roof.width - y)];
  const reach = (band: Band) => band.within * roof[band.measure];
  const holds = (band: Band): boolean => {
    if (band.edge === 'outside') return Math.min(dx, dy) <= reach(band);
    const tags = band.edge === 'hip or ridge' ? (['hip', 'ridge'] as const) : ([band.edge] as const);
    return tags.some((tag) => (own[tag] ?? Number.POSITIVE_INFINITY) <= reach(band));
  };
  const group = (bands: readonly Band[]): boolean => {
    const [one, other] = bands;
    if (!one?.corner || !other?.corner) return bands.every(holds);
    return (dx <= reach(one) && dy <= reach(other)) || (dx <= reach(other) && dy <= reach(one));
  };
  const rule = rules.find(({ where }) => where.length === 0 || where.some(group));
  if (!rule) throw new Error('a point without a zone');
  return rule.zone;
}

/** Areas by lines along x, each border found by halving, lines close enough that diagonals count. */
function areasOf(rules: readonly ZoneRule[], roof: Rectangle): Record<string, number> {
  const areas: Record<string, number> = {};
  const [lines, step] = [roof.width * 8, 0.5];
  for (let i = 0; i < lines; i++) {
    const y = ((i + 0.5) * roof.width) / lines;
    const at = (x: number) => zoneAt(rules, roof, x, y);
    const add = (zone: string, length: number) => {
      areas[zone] = (areas[zone] ?? 0) + (length * roof.width) / lines;
    };
    for (let x = 0; x < roof.length; x += step) {
      const [left, right] = [at(x + 1e-9), at(x + step - 1e-9)];
      const border = left === right ? step : borderBetween(at, left, x, x + step) - x;
      add(left, border);
      add(right, step - border);
    }
  }
  return areas;
}

function borderBetween(at: (x: number) => string, left: string, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if (at(middle) === left) low = middle;
    else high = middle;
  }
  return low;
}

const roof = (shape: Rectangle['shape'], length: number, width: number, a: number, h = 20): Rectangle => ({
  shape,
  length,
  width,
  a,
  h,
});
const long = {
  flat: roof('flat', 100, 60, 4),
  gable: roof('gable', 100, 60, 4),
  hip: roof('hip', 100, 60, 4),
};

// Exact areas of the plans, computed apart from this code; half a square foot for the two decimals of the diagonals.
const areas: readonly {
  plan: string;
  rules: readonly ZoneRule[];
  roof: Rectangle;
  area: Record<string, number>;
}[] = [
  {
    plan: '2A, 100 x 60 ft, h 20',
    rules: zoneRules722('30.3-2A'),
    roof: long.flat,
    area: { 3: 320, 2: 2944, 1: 2112, "1'": 624 },
  },
  {
    plan: '2A, 200 x 120 ft, h 15',
    rules: zoneRules716('30.3-2A'),
    roof: roof('flat', 200, 120, 6, 15),
    area: { 3: 180, 2: 5256, 1: 4788, "1'": 13776 },
  },
  {
    plan: "2A, 60 x 40 ft, h 30, without 1'",
    rules: zoneRules716('30.3-2A'),
    roof: roof('flat', 60, 40, 4, 30),
    area: { 3: 720, 2: 1584, 1: 96 },
  },
  {
    plan: 'gable of 7-16',
    rules: zoneRules716('30.3-2C'),
    roof: long.gable,
    area: { '3e': 64, '3r': 64, '2e': 736, '2r': 736, '2n': 352, 1: 4048 },
  },
  {
    plan: 'gable to 27 degrees of 7-22',
    rules: zoneRules722('30.3-2B'),
    roof: long.gable,
    area: { 3: 64, 2: 1152, 1: 4784 },
  },
  {
    plan: 'gable over 27 degrees of 7-22',
    rules: zoneRules722('30.3-2D'),
    roof: long.gable,
    area: { 3: 64, 2: 416, 1: 5520 },
  },
  {
    plan: 'hip of 7-16',
    rules: zoneRules716('30.3-2G'),
    roof: long.hip,
    area: { 3: 64, '2e': 1152, '2r': 1374.1, 1: 3409.9 },
  },
  {
    plan: 'hip of 7-22',
    rules: zoneRules722('30.3-2F'),
    roof: long.hip,
    area: { 3: 1216, 2: 1374.1, 1: 3409.9 },
  },
  {
    plan: 'monoslope to 10 degrees',
    rules: zoneRules722('30.3-5A'),
    roof: roof('monoslope', 100, 60, 5),
    area: { "3'": 400, 3: 200, "2'": 1400, 2: 400, 1: 3600 },
  },
];

/** Flat roof 100 x 60 ft, h 20: x, y, zone. */
const flatPoints = [
  [3, 3, '3'],
  [11, 3, '3'],
  [13, 3, '2'],
  [3, 11, '3'],
  [5, 5, '2'],
  [30, 2, '2'],
  [30, 11, '2'],
  [30, 13, '1'],
  [30, 23, '1'],
  [50, 30, "1'"],
  [50, 25, "1'"],
] as const;

/** Gable 100 x 60 ft, a 4: from the rake, from the eave, zone in 7-16, in 7-22 to 27 degrees and over. */
const gablePoints = [
  [2, 2, '3e', '2', '3'],
  [2, 15, '2n', '2', '2'],
  [2, 28, '3r', '3', '2'],
  [50, 2, '2e', '1', '1'],
  [50, 28, '2r', '2', '1'],
  [50, 15, '1', '1', '1'],
] as const;

/** Hip 100 x 60 ft, hips at 45 degrees on plan, a 4: x, y, zone in 7-16, in 7-22. */
const hipPoints = [
  [2, 2, '3', '3'],
  [2, 20, '2e', '3'],
  [50, 2, '2e', '3'],
  [50, 28, '2r', '2'],
  [20, 17, '2r', '2'],
  [20, 12, '1', '1'],
  [10, 30, '1', '1'],
  [50, 20, '1', '1'],
] as const;

describe('zone plans on a rectangle', () => {
  test.each(areas)('areas of $plan', ({ rules, roof: on, area }) => {
    const found = areasOf(rules, on);
    expect(Object.keys(found).sort()).toEqual(Object.keys(area).sort());
    for (const [zone, expected] of Object.entries(area))
      expect(Math.abs((found[zone] ?? 0) - expected)).toBeLessThanOrEqual(0.5);
  });
  test.each(flatPoints)('low slope, %f, %f is zone %s in both editions', (x, y, zone) => {
    expect(zoneAt(zoneRules716('30.3-2A'), long.flat, x, y)).toBe(zone);
    expect(zoneAt(zoneRules722('30.3-2A'), long.flat, x, y)).toBe(zone);
  });
  test.each(gablePoints)(
    'gable, %f, %f is %s in 7-16, in 7-22 %s and over 27 degrees %s',
    (x, y, in716, to27, to45) => {
      for (const figure of ['30.3-2B', '30.3-2C', '30.3-2D'] as const)
        expect(zoneAt(zoneRules716(figure), long.gable, x, y)).toBe(in716);
      expect(zoneAt(zoneRules722('30.3-2B'), long.gable, x, y)).toBe(to27);
      expect(zoneAt(zoneRules722('30.3-2C'), long.gable, x, y)).toBe(to27);
      expect(zoneAt(zoneRules722('30.3-2D'), long.gable, x, y)).toBe(to45);
    },
  );
  test.each(hipPoints)('hip, %f, %f is %s in 7-16 and %s in 7-22', (x, y, in716, in722) => {
    for (const figure of ['30.3-2E', '30.3-2G', '30.3-2H'] as const)
      expect(zoneAt(zoneRules716(figure), long.hip, x, y)).toBe(in716);
    for (const figure of ['30.3-2E', '30.3-2F', '30.3-2G'] as const)
      expect(zoneAt(zoneRules722(figure), long.hip, x, y)).toBe(in722);
  });
  test('steep monoslope: corners of the high edge 2a deep and 4a long, edge strips, low eave a', () => {
    const on = roof('monoslope', 100, 60, 5);
    const found = areasOf(zoneRules716('30.3-5B'), on);
    // By hand: 3 is 2 x 10 x 20; 2 is 60 x 10 + 2 x 10 x 50 + 80 x 5; 1 is 80 x 45.
    expect([found['3'], found['2'], found['1']].map((area) => Math.round(area ?? 0))).toEqual([
      400, 2000, 3600,
    ]);
  });
  test('over 60 ft: full corner squares of 2a', () => {
    const found = areasOf(zoneRules716('30.5-1'), roof('flat', 100, 60, 5));
    expect([found['3'], found['2'], found['1']].map((area) => Math.round(area ?? 0))).toEqual([
      400, 1200, 4400,
    ]);
  });
});

describe('zone plans as data', () => {
  const plans = [
    ...figureIds['7-16'].map((id) => ({
      id: `7-16 ${id}`,
      rules: asce716.zoneRules(id),
      zones: asce716.zones(id),
      readings: asce716.readings(id),
    })),
    ...figureIds['7-22'].map((id) => ({
      id: `7-22 ${id}`,
      rules: asce722.zoneRules(id),
      zones: asce722.zones(id),
      readings: asce722.readings(id),
    })),
  ];
  test.each(plans)(
    '$id has a rule for every zone of its curves and no other, the last one taking the rest',
    ({ rules, zones }) => {
      expect([...new Set(rules.map((rule) => rule.zone))].sort()).toEqual([...zones].sort());
      expect(rules.map((rule) => rule.where.length === 0)).toEqual(
        rules.map((_, i) => i === rules.length - 1),
      );
    },
  );
  test('plans that were recalled or seen in one copy carry a sentence saying so', () => {
    const unclear = plans.filter((plan) => plan.readings.length > 0).map((plan) => plan.id);
    expect(unclear).toEqual([
      '7-16 30.3-2E',
      '7-16 30.3-2G',
      '7-16 30.3-2H',
      '7-16 30.3-5A',
      '7-16 30.3-5B',
      '7-16 30.5-1',
      '7-22 30.3-5A',
      '7-22 30.3-5B',
      '7-22 30.4-1',
    ]);
  });
});
