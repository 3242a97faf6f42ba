import { describe, expect, test } from 'vitest';
import { roofInput } from '../job/roof-input.ts';
import { buildRoof } from './build-roof.ts';

const feet = (...corners: readonly (readonly [number, number])[]) =>
  corners.map(([x, y]) => [`${x} ft`, `${y} ft`]);
const rectangle = (x0: number, y0: number, x1: number, y1: number) =>
  feet([x0, y0], [x1, y0], [x1, y1], [x0, y1]);

function built(document: object) {
  return buildRoof(roofInput.parse({ eaveHeight: '12 ft', ...document }));
}
function faultsIn(document: object): string[] {
  const result = built(document);
  return result.ok ? [] : result.faults.map((f) => `${f.path}: ${f.message}`);
}
const plane = (edges: readonly string[], outline: unknown = rectangle(0, 0, 40, 20)) => ({
  form: 'planes',
  planes: [{ id: 'a', outline, edges, slope: '3:12' }],
});
const openings = (...outlines: unknown[]) => ({
  ...plane(['eave', 'rake', 'ridge', 'rake']),
  openings: outlines.map((outline, i) => ({ name: `light ${i + 1}`, plane: 'a', outline })),
});

describe('openings', () => {
  test('one may stand on the eave, and its area is cut out', () => {
    const result = built(openings(rectangle(4, 0, 8, 4)));
    expect(result.ok && result.roof.planes[0]?.planArea_ft2).toBeCloseTo(800 - 16, 6);
  });
  test('one may reach every corner of the border', () => {
    for (const outline of [rectangle(0, 0, 4, 4), rectangle(36, 16, 40, 20), rectangle(0, 16, 40, 20)])
      expect(faultsIn(openings(outline))).toEqual([]);
  });
  test('an opening drawn clockwise is cut out as well', () => {
    const result = built(openings(rectangle(4, 0, 8, 4).reverse()));
    expect(result.ok && result.roof.planes[0]?.planArea_ft2).toBeCloseTo(800 - 16, 6);
  });
  test('one that hangs over the eave by an inch is a fault with the area outside', () => {
    const outline = [
      ['4 ft', '0 ft'],
      ['8 ft', '0 ft'],
      ['8 ft', '20 ft 1 in'],
      ['4 ft', '20 ft 1 in'],
    ];
    expect(faultsIn(openings(outline))).toEqual([
      'roof.openings.0.outline: lies partly outside the plane "a", by 48 in²; move it inside or up to the edge',
    ]);
  });
  test('a corner inside and a side across a notch is a fault: corners alone do not tell', () => {
    const notched = feet([0, 0], [40, 0], [40, 20], [24, 20], [24, 6], [16, 6], [16, 20], [0, 20]);
    const edges = ['eave', 'rake', 'ridge', 'rake', 'ridge', 'rake', 'ridge', 'rake'];
    expect(
      faultsIn({
        ...plane(edges, notched),
        openings: [{ name: 'x', plane: 'a', outline: rectangle(12, 10, 28, 12) }],
      }),
    ).toEqual([
      expect.stringContaining('roof.openings.0.outline: lies partly outside the plane "a", by 16.0 ft²'),
    ]);
  });
  test('two that lie over each other are a fault that names both', () => {
    expect(faultsIn(openings(rectangle(4, 4, 8, 8), rectangle(7, 7, 10, 10)))).toEqual([
      'roof.openings.1.outline: "light 2" lies over the opening "light 1"; move one, or describe both as one opening',
    ]);
  });
  test('two side by side are none', () => {
    expect(faultsIn(openings(rectangle(4, 4, 8, 8), rectangle(8, 4, 10, 8)))).toEqual([]);
  });
  test('openings that leave nothing of a plane are a fault', () => {
    expect(faultsIn(openings(rectangle(0, 0, 20, 20), rectangle(20, 0, 40, 20)))).toEqual([
      expect.stringContaining('roof.openings.1.outline: leaves nothing of the plane "a"'),
    ]);
  });
});

describe('level sides', () => {
  test('a plane with eaves all round says which do not agree', () => {
    expect(faultsIn(plane(['eave', 'eave', 'eave', 'eave']))).toEqual([
      expect.stringContaining(
        'roof.planes.0.edges.1: side 2 as eave must be level, but stands 90.0 degrees off',
      ),
      expect.stringContaining('roof.planes.0.edges.2: side 3 as eave makes the plane fall the other way'),
      expect.stringContaining('roof.planes.0.edges.3: side 4 as eave must be level'),
    ]);
  });
  test('two ridges that face each other contradict', () => {
    expect(faultsIn(plane(['ridge', 'rake', 'ridge', 'rake']))).toEqual([
      expect.stringContaining('roof.planes.0.edges.2: side 3 as ridge makes the plane fall the other way'),
    ]);
  });
  test('a ridge two degrees off level is a fault, half a degree is not', () => {
    const tilted = (degrees: number) =>
      faultsIn(
        plane(
          ['eave', 'rake', 'ridge', 'rake'],
          feet([0, 0], [40, 0], [40, 20 + 40 * Math.tan((degrees * Math.PI) / 180)], [0, 20]).map((corner) =>
            corner.map((text) => `${Number.parseFloat(text).toFixed(5)} ft`),
          ),
        ),
      );
    expect(tilted(0.5)).toEqual([]);
    expect(tilted(2)).toEqual([
      expect.stringContaining(
        'roof.planes.0.edges.2: side 3 as ridge must be level, but stands 2.0 degrees off',
      ),
    ]);
  });
  test('an L-shaped plane with two eaves one way and a headwall is none, drawn either way', () => {
    const outline = feet([0, 0], [20, 0], [20, 6], [40, 6], [40, 20], [0, 20]);
    const edges = ['eave', 'rake', 'eave', 'rake', 'headwall', 'rake'];
    expect(faultsIn(plane(edges, outline))).toEqual([]);
    const turned = ['headwall', 'rake', 'eave', 'rake', 'eave', 'rake'];
    expect(faultsIn(plane(turned, [...outline].reverse()))).toEqual([]);
  });
});

test('a drawing of very many corners is refused before it is worked on', () => {
  const comb = (x: number) => {
    const top = Array.from({ length: 249 }, (_, i) => [`${x + 100 - i * 0.4} ft`, `${20 + (i % 2)} ft`]);
    return [...feet([x, 0], [x + 100, 0]), ...top];
  };
  const planes = Array.from({ length: 21 }, (_, i) => {
    const outline = comb(i * 110);
    return {
      id: `p${i}`,
      outline,
      edges: outline.map((_, side) => (side === 0 ? 'eave' : 'rake')),
      slope: '3:12',
    };
  });
  expect(faultsIn({ form: 'planes', planes })[0]).toContain('roof.planes: have 5271 corners together');
});
