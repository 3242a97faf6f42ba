/** From the roof as described in a job to planes with tagged edges. */

import type { RoofInput } from '../job/roof-input.ts';
import { known } from '../job/stated.ts';
import type { Fault } from '../quantities/fault.ts';
import { buildPlane, type PlaneDescription } from './build-plane.ts';
import { checkDrawing, openingFault } from './check-drawing.ts';
import { type Face, monoslopeFaces, type Rectangle, ridgedFaces } from './face.ts';
import { joinFaces } from './join-faces.ts';
import { outsideEdges } from './outside-edges.ts';
import { dot, leftOf, minus, type Point, type Ring, sidesOf, signedArea, unit } from './point.ts';
import type { Plane, Roof } from './roof.ts';
import { breakSides, tagSide } from './tag-edges.ts';

export type BuiltRoof =
  | { readonly ok: true; readonly roof: Roof }
  | { readonly ok: false; readonly faults: readonly Fault[] };

type ShortForm = Exclude<RoofInput, { form: 'planes' }>;
type Drawn = Extract<RoofInput, { form: 'planes' }>;

const FEET = 12;
const NONE = { eave: 0, rake: 0 };
const compass = (up: Point): string =>
  Math.abs(up.x) > Math.abs(up.y) ? (up.x > 0 ? 'west' : 'east') : up.y > 0 ? 'south' : 'north';

export function buildRoof(input: RoofInput): BuiltRoof {
  const faults = checkDrawing(input);
  if (faults.length > 0) return { ok: false, faults };
  const descriptions = input.form === 'planes' ? drawnPlanes(input) : shortPlanes(input);
  const placed = placeOpenings(input, descriptions);
  if ('faults' in placed) return { ok: false, faults: placed.faults };
  const planes = placed.descriptions.map(buildPlane);
  return { ok: true, roof: assemble(input, planes) };
}

function shortPlanes(input: ShortForm): PlaneDescription[] {
  const faces = facesOf(input);
  const overhang = (input.form === 'joined' ? input.main.overhang : input.overhang) ?? NONE;
  const rings = faces.map((face) => face.ring);
  const names = new Map<string, number>();
  return faces.map((face, i) => {
    const outline = breakSides(
      face.ring,
      rings.filter((_, other) => other !== i),
    );
    const upslope = unit(face.rise);
    const side = compass(upslope);
    const count = (names.get(side) ?? 0) + 1;
    names.set(side, count);
    return {
      id: count === 1 ? side : `${side} ${count}`,
      outline,
      tags: sidesOf(outline).map(([a, b]) => tagSide(face, a, b, faces)),
      slope: Math.hypot(face.rise.x, face.rise.y),
      upslope,
      shape: face.shape,
      overhang,
      openings: [],
    };
  });
}

function facesOf(input: ShortForm): Face[] {
  if (input.form === 'joined') return joinedFaces(input);
  const over = input.overhang ?? NONE;
  const sideways = input.form === 'hip' ? over.eave : over.rake;
  const r: Rectangle = {
    x0: -sideways,
    x1: input.length + sideways,
    y0: -over.eave,
    y1: input.width + over.eave,
  };
  if (input.form === 'monoslope') return monoslopeFaces(r, input.slope);
  if (input.form === 'gable') return ridgedFaces(r, input.slope, 'x', { first: 'gable', second: 'gable' });
  return ridgedFaces(r, input.slope, input.length >= input.width ? 'x' : 'y', {
    first: 'hip',
    second: 'hip',
  });
}

function joinedFaces({ main, wing }: Extract<ShortForm, { form: 'joined' }>): Face[] {
  const over = main.overhang ?? NONE;
  const sideways = main.form === 'hip' ? over.eave : over.rake;
  const body: Rectangle = {
    x0: -sideways,
    x1: main.length + sideways,
    y0: -over.eave,
    y1: main.width + over.eave,
  };
  // The wing's own rectangle runs on under the main roof to its far eave with a hip there; whatever lies lower is cut.
  const arm: Rectangle = {
    x0: wing.from - over.eave,
    x1: wing.from + wing.width + over.eave,
    y0: -wing.length - (wing.form === 'hip' ? over.eave : over.rake),
    y1: body.y1,
  };
  return joinFaces(
    ridgedFaces(body, main.slope, 'x', { first: main.form, second: main.form }),
    ridgedFaces(arm, main.slope, 'y', { first: wing.form, second: 'hip', shape: wing.form }),
  );
}

function drawnPlanes(input: Drawn): PlaneDescription[] {
  return input.planes.map((drawn) => {
    const points = drawn.outline.map(([x, y]) => ({ x, y }));
    const clockwise = signedArea(points) < 0;
    const outline: Ring = clockwise ? [...points].reverse() : points;
    // Reversed corners put side i between corners n-1-i and n-2-i of the drawing.
    const n = points.length;
    const tags = clockwise
      ? outline.map((_, i) => drawn.edges[(2 * n - 2 - i) % n] as (typeof drawn.edges)[number])
      : drawn.edges;
    return {
      id: drawn.id,
      outline,
      tags,
      slope: drawn.slope,
      upslope: upslopeOf(outline, tags),
      shape: drawn.windShape ?? shapeFromTags(tags),
      overhang: drawn.overhang ?? NONE,
      openings: [],
    };
  });
}

/** Up the slope is square to the longest level side, away from an eave or toward a ridge or wall. */
function upslopeOf(outline: Ring, tags: readonly string[]): Point {
  const sides = sidesOf(outline).map(([a, b], i) => ({
    tag: tags[i],
    inward: leftOf(unit(minus(b, a))),
    length: Math.hypot(b.x - a.x, b.y - a.y),
  }));
  const longest = (wanted: readonly string[]) =>
    sides.filter(({ tag }) => wanted.includes(tag ?? '')).sort((a, b) => b.length - a.length)[0]?.inward;
  const eave = longest(['eave']);
  if (eave) return eave;
  const top = longest(['high edge', 'ridge', 'headwall']) ?? { x: 0, y: -1 };
  return { x: -top.x, y: -top.y };
}

function shapeFromTags(tags: readonly string[]): PlaneDescription['shape'] {
  if (tags.includes('hip')) return 'hip';
  if (tags.includes('high edge')) return 'monoslope';
  return 'gable';
}

function placeOpenings(
  input: RoofInput,
  descriptions: readonly PlaneDescription[],
): { readonly descriptions: readonly PlaneDescription[] } | { readonly faults: readonly Fault[] } {
  const faults: Fault[] = [];
  const placed = new Map(descriptions.map((plane) => [plane.id, [] as { name: string; ring: Ring }[]]));
  input.openings.forEach((opening, i) => {
    const points = opening.outline.map(([x, y]) => ({ x, y }));
    const ring = signedArea(points) < 0 ? [...points].reverse() : points;
    const plane = descriptions.find(({ id }) => id === opening.plane);
    const others = placed.get(opening.plane) ?? [];
    const message = plane ? openingFault({ name: opening.name, ring }, plane, others) : undefined;
    if (!plane)
      faults.push({
        path: `roof.openings.${i}.plane`,
        message: `"${opening.plane}" is no plane of this roof; its planes are: ${descriptions.map(({ id }) => id).join(', ')}`,
      });
    else if (message !== undefined) faults.push({ path: `roof.openings.${i}.outline`, message });
    else others.push({ name: opening.name, ring });
  });
  if (faults.length > 0) return { faults };
  return { descriptions: descriptions.map((plane) => ({ ...plane, openings: placed.get(plane.id) ?? [] })) };
}

function assemble(input: RoofInput, planes: readonly Plane[]): Roof {
  const eave = known(input.eaveHeight);
  const least = leastDimension(input, planes);
  return {
    planes,
    outside: outsideEdges(planes),
    leastDimension_ft: least.value / FEET,
    narrowest_ft: (least.narrowest ?? least.value) / FEET,
    eaveHeight_ft: eave === undefined ? undefined : eave / FEET,
    highestPoint_ft: highest(input, planes, eave),
    readings: [least.reading],
  };
}

function highest(input: RoofInput, planes: readonly Plane[], eave: number | undefined): number | undefined {
  const given = input.form === 'planes' ? known(input.highestPoint) : undefined;
  if (given !== undefined) return given / FEET;
  if (eave === undefined) return undefined;
  return (eave + Math.max(...planes.map(riseOf))) / FEET;
}

function riseOf(plane: Plane): number {
  const along = plane.outline.map((p) => dot(p, plane.upslope));
  return (Math.max(...along) - Math.min(...along)) * plane.slope;
}

function leastDimension(
  input: RoofInput,
  planes: readonly Plane[],
): { readonly value: number; readonly narrowest?: number; readonly reading: string } {
  if (input.form === 'joined')
    return {
      value: Math.min(input.main.width, input.main.length),
      narrowest: Math.min(input.main.width, input.main.length, input.wing.width),
      reading:
        'Least horizontal dimension for the edge strip: that of the main part, for wing and main part alike, which gives the wider strip; h over the least dimension takes the wing (L and T plans are not in the figures).',
    };
  if (input.form !== 'planes')
    return {
      value: Math.min(input.length, input.width),
      reading: 'Least horizontal dimension: the smaller side of the building, without overhangs.',
    };
  const points = planes.flatMap((plane) => plane.outline);
  const width = (pick: (p: Point) => number) => Math.max(...points.map(pick)) - Math.min(...points.map(pick));
  return {
    value: Math.min(
      width((p) => p.x),
      width((p) => p.y),
    ),
    reading:
      'Least horizontal dimension: the smaller side of the rectangle around the drawn planes, overhangs not deducted.',
  };
}
