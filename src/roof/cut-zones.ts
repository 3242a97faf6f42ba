/**
 * Cuts the planes of a roof into wind zones. The rules come from the standard as data, in the order they are
 * tried; a piece of roof belongs to the first rule it meets. Every piece is cut from what is left of its plane,
 * so the pieces of a plane add up to the plane by construction.
 */
import type { Band, ZoneRule } from '../standards/asce-7-curves/zone-rule.ts';
import { stripOf } from './bands.ts';
import { areaOf, type Region } from './point.ts';
import { intersect, split, unite } from './region.ts';
import type { OutsideEdge, Plane, Roof } from './roof.ts';

export interface ZoneMeasures {
  /** Edge strip width a, in plan inches. */
  readonly a: number;
  /** Mean roof height, in inches. */
  readonly h: number;
}

export interface ZonePiece {
  readonly plane: Plane;
  /** Name in the standard. */
  readonly zone: string;
  /** On an overhang, where wind presses from below too. */
  readonly overhang: boolean;
  readonly region: Region;
  readonly planArea_ft2: number;
}

/** Pieces below this are snapping dust, in square inches. */
const DUST = 0.5;

export function cutZones(
  roof: Roof,
  rulesOf: (plane: Plane) => readonly ZoneRule[],
  measures: ZoneMeasures,
): ZonePiece[] {
  return roof.planes.flatMap((plane) => {
    const overhang = overhangOf(plane);
    return zonesOfPlane(plane, roof, rulesOf(plane), measures).flatMap(({ zone, region }) =>
      splitOverhang(plane, zone, region, overhang),
    );
  });
}

function zonesOfPlane(plane: Plane, roof: Roof, rules: readonly ZoneRule[], measures: ZoneMeasures) {
  let left: Region = plane.region;
  const pieces: { zone: string; region: Region }[] = [];
  for (const rule of rules) {
    if (areaOf(left) < DUST) break;
    if (rule.where.length === 0) return [...pieces, { zone: rule.zone, region: left }];
    const { within, outside } = split(
      left,
      unite(rule.where.map((bands) => allOf(bands, plane, roof, measures))),
    );
    if (areaOf(within) < DUST) continue;
    pieces.push({ zone: rule.zone, region: within });
    left = outside;
  }
  return pieces;
}

function splitOverhang(plane: Plane, zone: string, region: Region, overhang: Region): ZonePiece[] {
  const piece = (part: Region, over: boolean): ZonePiece[] => {
    const area = areaOf(part);
    return area < DUST ? [] : [{ plane, zone, overhang: over, region: part, planArea_ft2: area / 144 }];
  };
  if (overhang.length === 0) return piece(region, false);
  const { within, outside } = split(region, overhang);
  return [...piece(outside, false), ...piece(within, true)];
}

function overhangOf(plane: Plane): Region {
  return unite(plane.edges.map((edge) => stripOf(edge, edge.overhang)));
}

/** Where every band of a group holds at once. Bands marked as a corner must meet in one outside corner. */
function allOf(bands: readonly Band[], plane: Plane, roof: Roof, measures: ZoneMeasures): Region {
  const [first, second] = bands;
  if (first?.corner && second?.corner)
    return cornersOf(roof, widthOf(first, measures), widthOf(second, measures));
  return bands
    .map((band) => bandRegion(band, plane, roof, widthOf(band, measures)))
    .reduce((a, b) => intersect(a, b));
}

const widthOf = (band: Band, measures: ZoneMeasures): number => band.within * measures[band.measure];

function bandRegion(band: Band, plane: Plane, roof: Roof, width: number): Region {
  if (band.edge === 'outside') return unite(roof.outside.map((edge) => stripOf(edge, width)));
  const tags: readonly string[] = band.edge === 'hip or ridge' ? ['hip', 'ridge'] : [band.edge];
  return unite(plane.edges.filter((edge) => tags.includes(edge.tag)).map((edge) => stripOf(edge, width)));
}

/** At each outward corner of the border: within the one distance of one edge and the other of the next, either way. */
function cornersOf(roof: Roof, one: number, other: number): Region {
  const legs = roof.outside.flatMap((edge) => {
    const next = edge.next === undefined ? undefined : roof.outside[edge.next];
    if (!next || edge.reentrant.to) return [];
    const meet = (a: OutsideEdge, b: OutsideEdge) => intersect(stripOf(a, one), stripOf(b, other));
    return [meet(edge, next), meet(next, edge)];
  });
  return unite(legs);
}
