import { expect, test } from 'vitest';
import { roofInput } from '../job/roof-input.ts';
import { slopeFactor } from '../job/slope.ts';
import { buildRoof } from './build-roof.ts';
import type { Plane } from './roof.ts';
import { runCount, supportLines, upLines } from './runs.ts';

const planes = (document: object): readonly Plane[] => {
  const built = buildRoof(roofInput.parse({ eaveHeight: '12 ft', ...document }));
  if (!built.ok) throw new Error('no roof');
  return built.roof.planes;
};
const gable = planes({ form: 'gable', length: '40 ft', width: '30 ft', slope: '4:12' })[0] as Plane;

test('a 40 ft eave takes 30 runs of 16 in, with 29 seams between them', () => {
  expect(runCount(gable, 16, 0)).toBe(30);
  expect(upLines(gable, 16, 0)).toHaveLength(29);
});

test('a start offset moves every seam and adds a ripped run at the end', () => {
  expect(
    upLines(gable, 16, 6)
      .map((line) => line.u)
      .slice(0, 2),
  ).toEqual([10, 26]);
  expect(runCount(gable, 16, 6)).toBe(31);
});

test('seams of a hip end grow and shrink with the triangle', () => {
  const west = planes({ form: 'hip', length: '60 ft', width: '40 ft', slope: '4:12' }).find(
    (plane) => plane.id === 'west',
  ) as Plane;
  const lengths = upLines(west, 24, 0).map(
    ({ stretches }) => (stretches[0]?.to ?? 0) - (stretches[0]?.from ?? 0),
  );
  expect(lengths).toHaveLength(19);
  expect(Math.max(...lengths)).toBeCloseTo(240, 3);
  expect(lengths[0]).toBeCloseTo(24, 3);
});

test('a seam through an opening has two stretches', () => {
  const [plane] = planes({
    form: 'monoslope',
    length: '20 ft',
    width: '20 ft',
    slope: '2:12',
    openings: [
      {
        name: 'hatch',
        plane: 'south',
        outline: [
          ['7 ft', '8 ft'],
          ['11 ft', '8 ft'],
          ['11 ft', '12 ft'],
          ['7 ft', '12 ft'],
        ],
      },
    ],
  });
  const through = upLines(plane as Plane, 24, 0).find((line) => line.u === 96);
  expect(through?.stretches).toEqual([
    { from: 0, to: 96 },
    { from: 144, to: 240 },
  ]);
});

test('purlins: first and last at their offsets, the rest at the spacing, measured along the slope', () => {
  const lines = supportLines(gable, 60, 6, 6);
  const depth = 180 * slopeFactor(1 / 3);
  const along = [...(lines?.at ?? [])].map((v) => v * slopeFactor(1 / 3));
  expect(along[0]).toBeCloseTo(6, 9);
  expect(along.at(-1)).toBeCloseTo(depth - 6, 9);
  expect(along).toHaveLength(4);
  expect(lines?.tributary).toBeCloseTo(60, 6);
});

test('purlins whose first line lies beyond the plane do not fit', () => {
  expect(supportLines(gable, 60, 300, 6)).toBeUndefined();
});
