/** Faults of a drawn roof that no schema can see: crossing outlines, sides without tags, planes that lie over each other. */

import type { RoofInput } from '../job/roof-input.ts';
import type { Fault } from '../quantities/fault.ts';
import { levelFaults } from './check-level-sides.ts';
import { areaOf, cross, distance, minus, type Point, type Ring, sidesOf, signedArea, unit } from './point.ts';
import { intersect, subtract } from './region.ts';

/** Overlap that is only snapping of typed lengths, in square inches. */
const TOUCH = 20;
/** An opening may reach the border of its plane; so much beyond it is only snapping, in square inches. */
const BEYOND = 4;
/** Least that openings must leave of a plane, in square inches. */
const LEFT = 144;
/** Corners of all outlines together: drawings with more take minutes and are to be simplified first. */
const MOST_CORNERS = 5000;

export function checkDrawing(input: RoofInput): Fault[] {
  const openings = input.openings.flatMap((opening, i) =>
    ringFaults(
      `roof.openings.${i}.outline`,
      opening.outline.map(([x, y]) => ({ x, y })),
    ),
  );
  if (input.form === 'joined') return [...openings, ...joinedFaults(input)];
  if (input.form !== 'planes') return openings;
  const corners = input.planes.reduce((sum, plane) => sum + plane.outline.length, 0);
  if (corners > MOST_CORNERS)
    return [
      {
        path: 'roof.planes',
        message: `have ${corners} corners together; at most ${MOST_CORNERS} are taken, leave out those that a roofer would not see`,
      },
    ];
  const rings = input.planes.map((plane) => plane.outline.map(([x, y]) => ({ x, y })));
  const own = input.planes.flatMap((plane, i) => [
    ...ringFaults(`roof.planes.${i}.outline`, rings[i] as Ring),
    ...tagFaults(plane, i),
    ...(input.planes.findIndex(({ id }) => id === plane.id) < i
      ? [{ path: `roof.planes.${i}.id`, message: `"${plane.id}" names another plane already` }]
      : []),
  ]);
  if (own.length > 0) return [...openings, ...own];
  return [...openings, ...overlaps(input, rings)];
}

function joinedFaults({ main, wing }: Extract<RoofInput, { form: 'joined' }>): Fault[] {
  const faults: Fault[] = [];
  if (wing.width > main.width)
    faults.push({
      path: 'roof.wing.width',
      message:
        'the wing is wider than the main part is across its ridge; describe the wider one as the main part',
    });
  if (wing.from + wing.width > main.length + 1e-6)
    faults.push({
      path: 'roof.wing.from',
      message: 'the wing stands out beyond the end of the main part; move it or lengthen the main part',
    });
  if (main.length < main.width)
    faults.push({
      path: 'roof.main.length',
      message: 'the main part is shorter along its ridge than across; swap length and width',
    });
  return faults;
}

function tagFaults(plane: Extract<RoofInput, { form: 'planes' }>['planes'][number], i: number): Fault[] {
  if (plane.edges.length !== plane.outline.length)
    return [
      {
        path: `roof.planes.${i}.edges`,
        message: `has ${plane.edges.length} tags for ${plane.outline.length} sides; give one for each side`,
      },
    ];
  const level = ['eave', 'high edge', 'ridge', 'headwall'];
  if (!plane.edges.some((tag) => level.includes(tag)))
    return [
      {
        path: `roof.planes.${i}.edges`,
        message:
          'has no eave, high edge, ridge or headwall, so its fall is not known; tag its low or high side',
      },
    ];
  return levelFaults(plane, `roof.planes.${i}.edges`);
}

interface PlacedOpening {
  readonly name: string;
  /** Counter-clockwise. */
  readonly ring: Ring;
}

/** What is wrong with an opening in its plane, beside the openings placed there already. */
export function openingFault(
  opening: PlacedOpening,
  plane: { readonly id: string; readonly outline: Ring },
  others: readonly PlacedOpening[],
): string | undefined {
  const outside = areaOf(subtract([opening.ring], [plane.outline]));
  if (outside > BEYOND)
    return `lies partly outside the plane "${plane.id}", by ${squareFeet(outside)}; move it inside or up to the edge`;
  const box = boxOf(opening.ring);
  const other = others.find(
    ({ ring }) => boxesMeet(box, boxOf(ring)) && areaOf(intersect([opening.ring], [ring])) > BEYOND,
  );
  if (other)
    return `"${opening.name}" lies over the opening "${other.name}"; move one, or describe both as one opening`;
  const cut = [...others, opening].reduce((sum, { ring }) => sum + signedArea(ring), 0);
  return signedArea(plane.outline) - cut < LEFT
    ? `leaves nothing of the plane "${plane.id}"; check its corners`
    : undefined;
}

const squareFeet = (squareInches: number): string =>
  squareInches < 144 ? `${squareInches.toFixed(0)} in²` : `${(squareInches / 144).toFixed(1)} ft²`;

function ringFaults(path: string, ring: Ring): Fault[] {
  const sides = sidesOf(ring);
  for (let i = 0; i < sides.length; i++) {
    const [a, b] = sides[i] as readonly [Point, Point];
    if (distance(a, b) < 0.01)
      return [{ path: `${path}.${i}`, message: 'is the same corner as the next one; remove one of them' }];
    for (let j = i + 2; j < sides.length; j++) {
      if (i === 0 && j === sides.length - 1) continue;
      const [c, d] = sides[j] as readonly [Point, Point];
      if (cross4(a, b, c, d))
        return [
          {
            path,
            message: `crosses itself: side ${i + 1} meets side ${j + 1}; put the corners in order around the plane`,
          },
        ];
    }
  }
  if (Math.abs(signedArea(ring)) < 144)
    return [{ path, message: 'encloses less than a square foot; check its corners' }];
  return [];
}

function cross4(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => cross(unit(minus(q, p)), minus(r, p));
  const [s, t, u, v] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  return s * t < -1e-9 && u * v < -1e-9;
}

function overlaps(input: Extract<RoofInput, { form: 'planes' }>, rings: readonly Ring[]): Fault[] {
  const ccw = rings.map((ring) => (signedArea(ring) < 0 ? [...ring].reverse() : ring));
  const boxes = ccw.map(boxOf);
  const faults: Fault[] = [];
  for (let i = 0; i < ccw.length; i++)
    for (let j = i + 1; j < ccw.length; j++) {
      if (!boxesMeet(boxes[i] as Box, boxes[j] as Box)) continue;
      const shared = areaOf(intersect([ccw[i] as Ring], [ccw[j] as Ring]));
      if (shared > TOUCH)
        faults.push({
          path: `roof.planes.${j}.outline`,
          message: `lies over the plane "${input.planes[i]?.id}" by ${(shared / 144).toFixed(1)} ft²; planes may only touch`,
        });
    }
  return faults;
}

type Box = readonly [number, number, number, number];
const boxOf = (ring: Ring): Box => [
  Math.min(...ring.map((p) => p.x)),
  Math.min(...ring.map((p) => p.y)),
  Math.max(...ring.map((p) => p.x)),
  Math.max(...ring.map((p) => p.y)),
];
const boxesMeet = (a: Box, b: Box): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
