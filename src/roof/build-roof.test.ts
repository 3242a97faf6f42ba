import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJob } from '../job/read-job.ts';
import { roofInput } from '../job/roof-input.ts';
import { hipValleyFactor, slopeFactor } from '../job/slope.ts';
import { buildRoof } from './build-roof.ts';
import { distance, dot, minus, type Point, plus } from './point.ts';
import type { Roof } from './roof.ts';

function roofOf(document: unknown): Roof {
  const built = buildRoof(roofInput.parse(document));
  if (!built.ok) throw new Error(JSON.stringify(built.faults));
  return built.roof;
}

function faultsIn(document: unknown): string {
  const built = buildRoof(roofInput.parse(document));
  return built.ok ? 'none' : built.faults.map((f) => `${f.path}: ${f.message}`).join('\n');
}

/** Plan lengths counted once for eaves and rakes, twice for lines shared by two planes. */
function tagLengths(roof: Roof): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const plane of roof.planes)
    for (const edge of plane.edges)
      sums[edge.tag] =
        (sums[edge.tag] ?? 0) + edge.length / 12 / (['hip', 'ridge', 'valley'].includes(edge.tag) ? 2 : 1);
  return sums;
}
const planArea = (roof: Roof) => roof.planes.reduce((sum, plane) => sum + plane.planArea_ft2, 0);

const eaveHeight = '12 ft';

describe('short forms', () => {
  test('a hip roof 84 by 46 at 5:12 has the area, ridge and hips of plane geometry', () => {
    const roof = roofOf({ form: 'hip', length: '84 ft', width: '46 ft', slope: '5:12', eaveHeight });
    const m = 5 / 12;
    expect(planArea(roof)).toBeCloseTo(84 * 46, 4);
    expect(roof.planes.map((plane) => plane.id).sort()).toEqual(['east', 'north', 'south', 'west']);
    const lengths = tagLengths(roof);
    expect(lengths.ridge).toBeCloseTo(84 - 46, 6);
    expect(lengths.hip).toBeCloseTo(4 * 23 * hipValleyFactor(m), 3);
    expect(lengths.eave).toBeCloseTo(2 * (84 + 46), 6);
    expect(roof.planes.reduce((sum, plane) => sum + plane.slopeArea_ft2, 0)).toBeCloseTo(
      84 * 46 * slopeFactor(m),
      3,
    );
    expect(roof.highestPoint_ft).toBeCloseTo(12 + 23 * m, 9);
    expect(roof.outside).toHaveLength(4);
  });

  test('a gable with overhangs is drawn to its outer edge, and its least dimension is that of the walls', () => {
    const roof = roofOf({
      form: 'gable',
      length: '60 ft',
      width: '40 ft',
      slope: '4:12',
      eaveHeight,
      overhang: { eave: '24 in', rake: '12 in' },
    });
    expect(planArea(roof)).toBeCloseTo(62 * 44, 6);
    expect(roof.leastDimension_ft).toBe(40);
    expect(tagLengths(roof)).toMatchObject({ eave: 124, ridge: 62 });
    expect(tagLengths(roof).rake).toBeCloseTo(4 * 22 * slopeFactor(1 / 3), 6);
  });

  test('a monoslope has one high edge and one eave', () => {
    const roof = roofOf({ form: 'monoslope', length: '30 ft', width: '20 ft', slope: '10 %', eaveHeight });
    expect(tagLengths(roof)).toMatchObject({ eave: 30, 'high edge': 30 });
  });

  test('a square hip roof is a pyramid without a ridge', () => {
    const roof = roofOf({ form: 'hip', length: '40 ft', width: '40 ft', slope: '6:12', eaveHeight });
    expect(tagLengths(roof).ridge).toBeUndefined();
    expect(roof.planes).toHaveLength(4);
  });

  test('a T of two gables has two valleys of half the wing width and keeps its area', () => {
    const roof = roofOf({
      form: 'joined',
      main: { form: 'gable', length: '60 ft', width: '40 ft', slope: '6:12' },
      wing: { form: 'gable', width: '24 ft', length: '16 ft', from: '18 ft' },
      eaveHeight,
    });
    expect(planArea(roof)).toBeCloseTo(60 * 40 + 24 * 16, 4);
    const lengths = tagLengths(roof);
    expect(lengths.valley).toBeCloseTo(2 * 12 * hipValleyFactor(0.5), 3);
    expect(lengths.ridge).toBeCloseTo(60 + 16 + 12, 4);
    expect(roof.planes).toHaveLength(4);
    const south = roof.planes.find(({ id }) => id === 'south');
    expect(south?.edges.map(({ tag }) => tag).sort()).toEqual([
      'eave',
      'eave',
      'rake',
      'rake',
      'ridge',
      'valley',
      'valley',
    ]);
    expect(roof.outside).toHaveLength(8);
    expect(roof.outside.filter((edge) => edge.reentrant.to)).toHaveLength(2);
  });

  test('an L of two hips of one width has one valley, one outer hip more, and no plane left over', () => {
    const roof = roofOf({
      form: 'joined',
      main: { form: 'hip', length: '60 ft', width: '24 ft', slope: '6:12' },
      wing: { form: 'hip', width: '24 ft', length: '30 ft', from: '0 ft' },
      eaveHeight,
    });
    expect(planArea(roof)).toBeCloseTo(60 * 24 + 24 * 30, 4);
    const lengths = tagLengths(roof);
    expect(lengths.valley).toBeCloseTo(12 * hipValleyFactor(0.5), 3);
    expect(lengths.hip).toBeCloseTo(5 * 12 * hipValleyFactor(0.5), 3);
    expect(lengths.ridge).toBeCloseTo(60 - 24 + 30, 3);
    expect(roof.planes).toHaveLength(6);
  });
});

/** A point within a tenth of an inch of an edge. */
function near(p: Point, { from, to }: { readonly from: Point; readonly to: Point }): boolean {
  const along = minus(to, from);
  const t = dot(minus(p, from), along) / dot(along, along);
  return t > -0.01 && t < 1.01 && distance(p, plus(from, along, t)) < 0.1;
}

test('joined roofs of any proportion have no hairline sides, and shared sides have one name', () => {
  fc.assert(
    fc.property(
      fc.record({
        main: fc.constantFrom('gable', 'hip'),
        wing: fc.constantFrom('gable', 'hip'),
        length: fc.integer({ min: 50, max: 120 }),
        width: fc.integer({ min: 20, max: 50 }),
        span: fc.integer({ min: 10, max: 20 }),
        from: fc.integer({ min: 0, max: 30 }),
        out: fc.integer({ min: 4, max: 40 }),
        rise: fc.integer({ min: 1, max: 12 }),
        over: fc.constantFrom('0 in', '7 in', '12 in', '19.3 in'),
      }),
      ({ main, wing, length, width, span, from, out, rise, over }) => {
        const roof = roofOf({
          form: 'joined',
          main: {
            form: main,
            length: `${length} ft`,
            width: `${width} ft`,
            slope: `${rise}:12`,
            overhang: { eave: over, rake: over },
          },
          wing: { form: wing, width: `${span} ft`, length: `${out} ft`, from: `${from} ft` },
          eaveHeight,
        });
        const edges = roof.planes.flatMap((plane) => plane.edges);
        expect(Math.min(...edges.map((edge) => edge.length))).toBeGreaterThan(0.5);
        // Whatever one plane calls a shared side, the plane beyond it calls the same.
        for (const plane of roof.planes)
          for (const { tag, from: a, to: b } of plane.edges) {
            if (tag !== 'valley' && tag !== 'hip' && tag !== 'ridge') continue;
            const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
            const beyond = roof.planes
              .filter((other) => other !== plane)
              .flatMap((other) => other.edges.filter((edge) => near(middle, edge)));
            expect(beyond.map((edge) => edge.tag)).toContain(tag);
          }
        const rakes = (main === 'gable' ? 2 : 0) + (wing === 'gable' ? 1 : 0);
        expect(edges.filter(({ tag }) => tag === 'rake').length).toBeGreaterThanOrEqual(rakes * 2);
        expect(edges.filter(({ tag }) => tag === 'high edge')).toEqual([]);
      },
    ),
    { numRuns: 150 },
  );
});

describe('drawn roofs', () => {
  const plane = {
    id: 'a',
    outline: [
      ['0 ft', '0 ft'],
      ['40 ft', '0 ft'],
      ['40 ft', '20 ft'],
      ['0 ft', '20 ft'],
    ],
    edges: ['eave', 'rake', 'headwall', 'rake'],
    slope: '3:12',
  };

  test('corners may run either way around', () => {
    const turned = {
      ...plane,
      outline: [...plane.outline].reverse(),
      edges: ['headwall', 'rake', 'eave', 'rake'],
    };
    const [a, b] = [plane, turned].map((p) =>
      tagLengths(roofOf({ form: 'planes', eaveHeight, planes: [p] })),
    );
    expect(b).toEqual(a);
  });

  test('a side against a wall is no outside edge', () => {
    expect(roofOf({ form: 'planes', eaveHeight, planes: [plane] }).outside).toHaveLength(3);
  });

  test('an opening is cut out of the area', () => {
    const roof = roofOf({
      form: 'planes',
      eaveHeight,
      planes: [plane],
      openings: [
        {
          name: 'skylight',
          plane: 'a',
          outline: [
            ['4 ft', '4 ft'],
            ['8 ft', '4 ft'],
            ['8 ft', '8 ft'],
            ['4 ft', '8 ft'],
          ],
        },
      ],
    });
    expect(planArea(roof)).toBeCloseTo(800 - 16, 6);
  });

  const crossing = {
    ...plane,
    outline: [
      ['0 ft', '0 ft'],
      ['40 ft', '20 ft'],
      ['40 ft', '0 ft'],
      ['0 ft', '20 ft'],
    ],
  };
  const faults: [string, unknown, string][] = [
    [
      'a crossing outline',
      { form: 'planes', eaveHeight, planes: [crossing] },
      'roof.planes.0.outline: crosses itself',
    ],
    [
      'planes that lie over each other',
      { form: 'planes', eaveHeight, planes: [plane, { ...plane, id: 'b' }] },
      'roof.planes.1.outline: lies over the plane "a" by 800.0 ft²',
    ],
    [
      'tags that do not match the sides',
      { form: 'planes', eaveHeight, planes: [{ ...plane, edges: ['eave', 'rake', 'rake'] }] },
      'has 3 tags for 4 sides',
    ],
    [
      'an opening outside its plane',
      {
        form: 'planes',
        eaveHeight,
        planes: [plane],
        openings: [
          {
            name: 'x',
            plane: 'a',
            outline: [
              ['90 ft', '0 ft'],
              ['95 ft', '0 ft'],
              ['95 ft', '5 ft'],
            ],
          },
        ],
      },
      'roof.openings.0.outline: lies partly outside',
    ],
    [
      'an opening on no plane',
      {
        form: 'planes',
        eaveHeight,
        planes: [plane],
        openings: [
          {
            name: 'x',
            plane: 'z',
            outline: [
              ['1 ft', '1 ft'],
              ['5 ft', '1 ft'],
              ['5 ft', '5 ft'],
            ],
          },
        ],
      },
      '"z" is no plane of this roof; its planes are: a',
    ],
    [
      'a wing wider than the main part',
      {
        form: 'joined',
        main: { form: 'gable', length: '60 ft', width: '20 ft', slope: '6:12' },
        wing: { form: 'gable', width: '24 ft', length: '10 ft', from: '0 ft' },
        eaveHeight,
      },
      'roof.wing.width',
    ],
  ];
  for (const [name, document, message] of faults)
    test(`${name} is a fault with its path`, () => expect(faultsIn(document)).toContain(message));
});

test('a job from a newer program is refused by its schema alone', () => {
  const read = readJob({ schema: 'deckbite/job/2', whatever: 1 });
  expect(read.ok ? '' : read.faults[0]?.path).toBe('schema');
});
