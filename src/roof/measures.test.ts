import { describe, expect, test } from 'vitest';
import { roofInput } from '../job/roof-input.ts';
import { slopeFactor } from '../job/slope.ts';
import { lengthOnSlope } from './build-plane.ts';
import { buildRoof } from './build-roof.ts';
import { frameOf } from './frame.ts';
import type { Roof } from './roof.ts';
import { runCount, upLines } from './runs.ts';

function roofOf(document: object): Roof {
  const built = buildRoof(roofInput.parse({ eaveHeight: '10 ft', ...document }));
  if (!built.ok) throw new Error(JSON.stringify(built.faults));
  return built.roof;
}
const area = (roof: Roof) => roof.planes.reduce((sum, plane) => sum + plane.slopeArea_ft2, 0);
const length = (roof: Roof, tag: string) =>
  roof.planes
    .flatMap((plane) => plane.edges.filter((edge) => edge.tag === tag))
    .reduce((sum, edge) => sum + edge.length / 12, 0);

// Computed by hand from plane geometry; areas to 0.05 ft², lengths to 0.001 ft.
const gables = [
  {
    L: 60,
    W: 40,
    eave: 12,
    rake: 12,
    rise: 6,
    eaveWidth: 62,
    slopeLength: 23.479,
    area: 2911.4,
    runs36: 21,
    runs16: 47,
  },
  {
    L: 48,
    W: 30,
    eave: 18,
    rake: 12,
    rise: 4,
    eaveWidth: 50,
    slopeLength: 17.393,
    area: 1739.3,
    runs36: 17,
    runs16: 38,
  },
  {
    L: 100,
    W: 50,
    eave: 0,
    rake: 0,
    rise: 1,
    eaveWidth: 100,
    slopeLength: 25.087,
    area: 5017.3,
    runs36: 34,
    runs16: 75,
  },
  {
    L: 36,
    W: 24,
    eave: 24,
    rake: 24,
    rise: 12,
    eaveWidth: 40,
    slopeLength: 19.799,
    area: 1583.9,
    runs36: 14,
    runs16: 30,
  },
];
describe('gables with horizontal overhangs', () => {
  for (const g of gables)
    test(`${g.L} by ${g.W} ft at ${g.rise}:12`, () => {
      const roof = roofOf({
        form: 'gable',
        length: `${g.L} ft`,
        width: `${g.W} ft`,
        slope: `${g.rise}:12`,
        overhang: { eave: `${g.eave} in`, rake: `${g.rake} in` },
      });
      const plane = roof.planes[0] as Roof['planes'][number];
      const frame = frameOf(plane);
      expect(frame.width / 12).toBeCloseTo(g.eaveWidth, 6);
      expect(Math.abs((frame.depth / 12) * slopeFactor(plane.slope) - g.slopeLength)).toBeLessThanOrEqual(
        0.0005,
      );
      expect(Math.abs(area(roof) - g.area)).toBeLessThanOrEqual(0.05);
      expect(runCount(plane, 36, 0)).toBe(g.runs36);
      expect(runCount(plane, 16, 0)).toBe(g.runs16);
    });
});

const hips = [
  { L: 50, W: 30, rise: 5, area: 1625, ridge: 20, hip: 22.115, triangle: 243.75, eave: 160 },
  { L: 60, W: 40, rise: 6, area: 2683.3, ridge: 20, hip: 30, triangle: 447.21, eave: 200 },
  { L: 36, W: 36, rise: 8, area: 1557.6, ridge: 0, hip: 28.142, triangle: 389.4, eave: 144 },
];
describe('hip roofs', () => {
  for (const h of hips)
    test(`${h.L} by ${h.W} ft at ${h.rise}:12`, () => {
      const roof = roofOf({ form: 'hip', length: `${h.L} ft`, width: `${h.W} ft`, slope: `${h.rise}:12` });
      expect(Math.abs(area(roof) - h.area)).toBeLessThanOrEqual(0.05);
      expect(length(roof, 'ridge') / 2).toBeCloseTo(h.ridge, 6);
      expect(Math.abs(length(roof, 'hip') / 8 - h.hip)).toBeLessThanOrEqual(0.0005);
      expect(length(roof, 'eave')).toBeCloseTo(h.eave, 6);
      expect(
        Math.abs((roof.planes.find(({ id }) => id === 'west')?.slopeArea_ft2 ?? 0) - h.triangle),
      ).toBeLessThanOrEqual(0.005);
    });
});

describe('valleys of a wing', () => {
  for (const [span, rise, each] of [
    [20, 8, 15.635],
    [16, 4, 11.624],
  ] as const)
    test(`a wing of ${span} ft at ${rise}:12 has two valleys of ${each} ft`, () => {
      const roof = roofOf({
        form: 'joined',
        main: { form: 'gable', length: '60 ft', width: '40 ft', slope: `${rise}:12` },
        wing: { form: 'gable', width: `${span} ft`, length: '12 ft', from: '20 ft' },
      });
      expect(Math.abs(length(roof, 'valley') / 4 - each)).toBeLessThanOrEqual(0.0005);
    });
});

describe('hips at other corners', () => {
  // Unequal slopes at a square corner: runs h/mA and h/mB, hip = sqrt(RA² + RB² + h²). Computed, 0.001 ft.
  for (const [riseA, runA, runB, hip] of [
    [6, 20, 15, 26.926],
    [4, 18, 6, 19.9],
  ] as const)
    test(`${riseA}:12 against a run of ${runB} ft: a hip of ${hip} ft`, () => {
      expect(
        Math.abs(lengthOnSlope({ x: 0, y: 0 }, { x: runB, y: runA }, riseA / 12, { x: 0, y: 1 }) - hip),
      ).toBeLessThanOrEqual(0.001);
    });
  // Equal slopes at an interior corner φ: plan hip = R / sin(φ/2). Computed, 0.001 ft.
  for (const [angle, rise, run, plan, hip] of [
    [135, 8, 10, 10.824, 12.712],
    [120, 6, 12, 13.856, 15.1],
    [90, 6, 12, 16.971, 18],
  ] as const)
    test(`a corner of ${angle}° at ${rise}:12: plan ${plan} ft, hip ${hip} ft`, () => {
      const half = (angle / 2) * (Math.PI / 180);
      const top = { x: run / Math.tan(half), y: run };
      expect(Math.abs(Math.hypot(top.x, top.y) - plan)).toBeLessThanOrEqual(0.001);
      expect(
        Math.abs(lengthOnSlope({ x: 0, y: 0 }, top, rise / 12, { x: 0, y: 1 }) - hip),
      ).toBeLessThanOrEqual(0.001);
    });
});

describe('steps of panels along a hip', () => {
  // Neighbouring runs at a square corner differ by coverage times the slope factor; computed, 0.001 in.
  for (const [coverage, rise, step] of [
    [16, 6, 17.889],
    [18, 4, 18.974],
    [36, 5, 39],
  ] as const)
    test(`${coverage} in runs at ${rise}:12 step by ${step} in`, () => {
      const west = roofOf({ form: 'hip', length: '80 ft', width: '60 ft', slope: `${rise}:12` }).planes.find(
        ({ id }) => id === 'west',
      ) as Roof['planes'][number];
      const lengths = upLines(west, coverage, 0).map(
        ({ stretches }) => ((stretches[0]?.to ?? 0) - (stretches[0]?.from ?? 0)) * slopeFactor(west.slope),
      );
      expect(Math.abs((lengths[2] as number) - (lengths[1] as number) - step)).toBeLessThanOrEqual(0.001);
    });
});
