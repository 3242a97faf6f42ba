import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { slopeFactor } from '../job/slope.ts';
import type { FastenerSet } from '../layout/fastener-set.ts';
import { frameOf } from '../roof/frame.ts';
import { cross, distance, dot, minus, type Point, sidesOf, unit } from '../roof/point.ts';
import type { Plane } from '../roof/roof.ts';
import { inside } from '../roof/tag-edges.ts';
import { solveJob } from './solve-job.ts';

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../demo/${name}.json`, import.meta.url), 'utf8'));
const solvedOf = (document: unknown) => {
  const solved = solveJob(document, read('shelf'));
  if (!solved.ok) throw new Error(JSON.stringify(solved.faults));
  return solved.value;
};
const farm = read('c-farm');
const hall = read('b-long-hall');
const jobs: [string, unknown][] = [
  ['boathouse', read('a-boathouse')],
  ['long hall', hall],
  ['barn with a wing and skylights', farm],
  ['re-roof', read('d-reroof')],
  [
    'hall as a hip',
    { ...hall, roof: { ...hall.roof, form: 'hip', length: '120 ft', width: '80 ft', slope: '3:12' } },
  ],
  [
    'boathouse with start offset',
    { ...read('a-boathouse'), panel: { ...read('a-boathouse').panel, startOffset: '5 in' } },
  ],
  [
    'opening near the eave',
    {
      ...farm,
      roof: {
        ...farm.roof,
        openings: [
          {
            name: 'hatch',
            plane: 'north',
            outline: [
              ['20 ft', '47 ft'],
              ['23 ft', '47 ft'],
              ['23 ft', '48 ft 11 in'],
              ['20 ft', '48 ft 11 in'],
            ],
          },
        ],
      },
    },
  ],
];

/** Distance outside a ring, 0 inside. */
function outsideBy(ring: readonly Point[], p: Point): number {
  if (inside(ring, p)) return 0;
  return Math.min(
    ...sidesOf(ring).map(([a, b]) => {
      const along = unit(minus(b, a));
      const t = Math.max(0, Math.min(distance(a, b), dot(minus(p, a), along)));
      return distance(p, { x: a.x + along.x * t, y: a.y + along.y * t });
    }),
  );
}

for (const [name, document] of jobs)
  describe(name, () => {
    const { answer } = solvedOf(document);
    const planes = new Map(answer.roof.planes.map((plane) => [plane.id, plane]));

    test('every fastener is on its plane and in no opening', () => {
      for (const set of answer.layout) {
        const plane = planes.get(set.plane) as Plane;
        for (let i = 0; i < set.count; i++) {
          const p = { x: set.x[i] as number, y: set.y[i] as number };
          expect(
            outsideBy(plane.outline, p),
            `${set.connection} on ${set.plane} at ${p.x}, ${p.y}`,
          ).toBeLessThan(0.01);
          for (const opening of plane.openings)
            expect(
              inside(opening.ring, p) &&
                outsideBy([...opening.ring].reverse(), p) === 0 &&
                deep(opening.ring, p),
              `${set.connection} in ${opening.name}`,
            ).toBe(false);
        }
      }
    });

    test('no two fasteners of one joint stand in one place', () => {
      for (const set of answer.layout) {
        const places = new Set(
          Array.from(
            { length: set.count },
            (_, i) => `${(set.x[i] as number).toFixed(2)} ${(set.y[i] as number).toFixed(2)}`,
          ),
        );
        expect(places.size, `${set.connection} on ${set.plane}`).toBe(set.count);
      }
    });

    test('rows of the field begin and end in place, and no gap is wider than the schedule allows', () => {
      const primary = answer.choices[0];
      const widest = Math.max(...(primary?.lines.map((line) => line.spacing_in) ?? []));
      for (const set of answer.layout.filter(({ connection }) => connection === primary?.connection.id)) {
        const plane = planes.get(set.plane) as Plane;
        const frame = frameOf(plane);
        const rows = new Map<number, number[]>();
        for (let i = 0; i < set.count; i++) {
          const v =
            (dot({ x: set.x[i] as number, y: set.y[i] as number }, frame.up) - frame.v0) *
            slopeFactor(plane.slope);
          const line = set.line[i] as number;
          rows.set(line, [...(rows.get(line) ?? []), v]);
        }
        if (plane.openings.length > 0) continue;
        for (const row of rows.values()) {
          row.sort((a, b) => a - b);
          row.slice(1).forEach((v, i) => {
            expect(v - (row[i] as number)).toBeLessThanOrEqual(widest + 0.01);
          });
        }
      }
    });
  });

/** Inside by more than snapping dust. */
function deep(ring: readonly Point[], p: Point): boolean {
  return sidesOf(ring).every(([a, b]) => Math.abs(cross(unit(minus(b, a)), minus(p, a))) > 0.05);
}

describe('rows along edges', () => {
  /** At least as many as the widest spacing needs; a second row of a hip is cut short by the ridge. */
  const least = (edges: Plane['edges'], rows: number, widest: number): number =>
    Math.floor(
      ((edges.reduce((sum, edge) => sum + edge.length, 0) - 24 * edges.length) / widest) *
        (rows > 1 ? rows * 0.9 : 1),
    );

  function checkSet(set: FastenerSet | undefined, edges: Plane['edges'], name: string): void {
    for (let i = 0; i < (set?.count ?? 0); i++) {
      const edge = edges[set?.line[i] as number] as Plane['edges'][number];
      const p = { x: set?.x[i] as number, y: set?.y[i] as number };
      const off = cross(unit(minus(edge.to, edge.from)), minus(p, edge.from));
      expect(
        [1.5, 3, 4.5].some((inset) => Math.abs(off - inset) < 0.01),
        `${name} ${off} in inside the edge`,
      ).toBe(true);
    }
  }

  for (const [name, document] of jobs)
    test(`${name}: every trim has its row along every edge, at its own distance inside`, () => {
      const { answer } = solvedOf(document);
      for (const { connection, lines } of answer.choices) {
        if (connection.placement.by !== 'edge') continue;
        const { tag, rows } = connection.placement;
        const widest = Math.max(...lines.map((line) => line.spacing_in));
        for (const plane of answer.roof.planes) {
          const edges = plane.edges.filter((edge) => edge.tag === tag);
          const set = answer.layout.find((one) => one.connection === connection.id && one.plane === plane.id);
          expect(set?.count ?? 0, `${connection.id} on ${plane.id}`).toBeGreaterThanOrEqual(
            least(edges, rows, widest),
          );
          checkSet(set, edges, connection.id);
        }
      }
    });
});

describe('borders inside a plane', () => {
  const planes = (outline: string[][], edges: string[]) => ({
    ...hall,
    details: {},
    roof: {
      form: 'planes',
      eaveHeight: '14 ft',
      highestPoint: '16 ft',
      planes: [{ id: 'a', outline, edges, slope: '0.5:12', windShape: 'gable' }],
    },
  });
  const clipsNear = (document: unknown, x: number, within = 0.6) => {
    const set = solvedOf(document).answer.layout.find(({ connection }) => connection === 'panel clips');
    return Array.from({ length: set?.count ?? 0 }, (_, i) => ({
      x: set?.x[i] as number,
      y: set?.y[i] as number,
    }))
      .filter((p) => Math.abs(p.x - x) < within)
      .map(({ y }) => y)
      .sort((p, q) => p - q);
  };

  test('a seam in line with a notch keeps its clips below the notch', () => {
    const outline = [
      ['0 ft', '0 ft'],
      ['40 ft', '0 ft'],
      ['40 ft', '10 ft'],
      ['24 ft', '10 ft'],
      ['24 ft', '20 ft'],
      ['0 ft', '20 ft'],
    ];
    const job = planes(outline, ['eave', 'rake', 'ridge', 'rake', 'ridge', 'rake']);
    const ys = clipsNear(job, 288);
    expect(ys.length).toBeGreaterThanOrEqual(2);
    expect(Math.max(...ys)).toBeLessThanOrEqual(120.1);
    // Above, the rake of the notch has its own line.
    expect(Math.min(...clipsNear(job, 285.5))).toBeGreaterThanOrEqual(119.9);
  });

  test('both sides of an opening are held alike, clear of the curb', () => {
    const reroof = read('d-reroof');
    const set = solvedOf(reroof).answer.layout.find(({ connection }) => connection === 'panel clips');
    const beside = (x: number) =>
      Array.from({ length: set?.count ?? 0 }, (_, i) => ({
        x: set?.x[i] as number,
        y: set?.y[i] as number,
      })).filter((p) => Math.abs(p.x - x) < 0.01 && p.y > 315 && p.y < 433).length;
    const [left, right] = [12_000 / 25.4 - 2.5, 14_000 / 25.4 + 2.5].map(beside);
    expect(left).toBeGreaterThan(3);
    expect(right).toBe(left);
    expect(beside(14_000 / 25.4)).toBe(0);
  });

  test('a rake a little off the slope is held all the same', () => {
    const outline = [
      ['0 ft', '0 ft'],
      ['40 ft', '0 ft'],
      ['40 ft', '20 ft'],
      ['0.02 ft', '20 ft'],
    ];
    expect(clipsNear(planes(outline, ['eave', 'rake', 'ridge', 'rake']), 2.74).length).toBeGreaterThan(3);
  });

  test('a rake drawn in two sides has one row', () => {
    const outline = [
      ['0 ft', '0 ft'],
      ['40 ft', '0 ft'],
      ['40 ft', '10 ft'],
      ['40 ft', '20 ft'],
      ['0 ft', '20 ft'],
    ];
    const ys = clipsNear(planes(outline, ['eave', 'rake', 'rake', 'ridge', 'rake']), 40 * 12 - 2.5);
    ys.slice(1).forEach((y, i) => {
      expect(y - (ys[i] as number)).toBeGreaterThan(6);
    });
  });
});

describe('rows at borders', () => {
  test('the outer edges of the first and last run are clipped along the rakes', () => {
    const { answer } = solvedOf(hall);
    const set = answer.layout.find(
      ({ connection, plane }) => connection === 'panel clips' && plane === 'south',
    );
    const xs = new Set(Array.from(set?.x ?? [], (x) => x.toFixed(2)));
    expect(xs.has('2.50')).toBe(true);
    expect(xs.has((300 * 12 - 2.5).toFixed(2))).toBe(true);
  });

  test('eave and ridge rows of exposed panels get both sides of each rib, the rows between one', () => {
    const { answer } = solvedOf({
      ...farm,
      roof: { form: 'gable', length: '60 ft', width: '40 ft', slope: '4:12', eaveHeight: '14 ft' },
      details: { ...farm.details, pipes: [] },
    });
    const set = answer.layout.find(({ connection }) => connection === 'panel screws');
    const rows = new Map<string, Set<number>>();
    if (!set) throw new Error('no panel screws on this roof');
    for (let i = 0; i < set.count; i++) {
      // Along the rakes the outer rib has one side only.
      if ((set.x[i] as number) < 4 || (set.x[i] as number) > 60 * 12 - 4) continue;
      const row = (set.y[i] as number).toFixed(2);
      rows.set(row, new Set([...(rows.get(row) ?? []), set.each[i] as number]));
    }
    const each = [...rows].sort(([a], [b]) => Number(a) - Number(b)).map(([, counts]) => [...counts]);
    expect(each[0]).toEqual([2]);
    expect(each.at(-1)).toEqual([2]);
    for (const middle of each.slice(1, -1)) expect(middle).toEqual([1]);
  });

  test('a run that ends between purlins at a hip is held at its end too', () => {
    const { answer } = solvedOf({
      ...hall,
      roof: { ...hall.roof, form: 'hip', length: '120 ft', width: '80 ft', slope: '3:12' },
    });
    const plane = answer.roof.planes.find(({ id }) => id === 'west') as Plane;
    const set = answer.layout.find(
      ({ connection, plane: id }) => connection === 'panel clips' && id === 'west',
    );
    const { width } = frameOf(plane);
    const factor = slopeFactor(plane.slope);
    const frame = frameOf(plane);
    const last = new Map<number, { top: number; end: number }>();
    for (let i = 0; i < (set?.count ?? 0); i++) {
      const p = { x: set?.x[i] as number, y: set?.y[i] as number };
      const u = dot(p, frame.along) - frame.u0;
      const at = (dot(p, frame.up) - frame.v0) * factor;
      // A hip end with hips at 45 degrees in plan: a run ends as far up as it is from the nearer corner.
      const end = Math.min(u, width - u) * factor;
      const line = set?.line[i] as number;
      last.set(line, { top: Math.max(at, last.get(line)?.top ?? 0), end });
    }
    expect(last.size).toBe(39);
    // Purlins every 60 in, last one 12 in from the top: their tributary length is at most 60 in, 30 in of it beyond the line.
    for (const { top, end } of last.values()) expect(end - top).toBeLessThanOrEqual(30.1);
    expect([...last.values()].some(({ top, end }) => Math.abs(end - top - 3) < 0.01)).toBe(true);
  });

  test('trims of ten feet lapped four inches: a 60 ft ridge takes 7 pieces, so 6 rows of rivets', () => {
    const { answer } = solvedOf({
      ...farm,
      roof: { form: 'gable', length: '60 ft', width: '40 ft', slope: '4:12', eaveHeight: '14 ft' },
      details: {},
    });
    const plane = answer.roof.planes[0] as Plane;
    const set = answer.layout.find(
      ({ connection, plane: id }) => connection.startsWith('trim joints') && id === plane.id,
    );
    const atRidge = Array.from({ length: set?.count ?? 0 }, (_, i) => set?.y[i] as number).filter(
      (y) => Math.abs(y - 240) < 0.5,
    );
    expect(atRidge).toHaveLength(6);
  });

  test('end laps lie over supports and no sheet is longer than delivered', () => {
    const { answer, design } = solvedOf(hall);
    const set = answer.layout.find(({ connection }) => connection === 'end lap, south');
    const factor = slopeFactor(answer.roof.planes[0]?.slope ?? 0);
    const at = [
      ...new Set(
        Array.from(
          { length: set?.count ?? 0 },
          (_, i) => Math.round((set?.y[i] as number) * factor * 10) / 10,
        ),
      ),
    ].sort((a, b) => a - b);
    expect(at.length).toBe(1);
    expect((at[0] as number) + 6).toBeLessThanOrEqual(480);
    // Purlins at 6, 66, 126 ... in along the slope.
    expect(((at[0] as number) - 6) % 60).toBeCloseTo(0, 0);
    expect(design.job.panel.longestSheet).toBeCloseTo(480, 9);
  });
});
