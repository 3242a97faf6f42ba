/**
 * Boolean operations on plan regions, by an integer clipping library. Coordinates are snapped to a grid of
 * 1/10000 in, so an area of a 100 ft roof is right to about one part in a hundred million. Vertex identity is
 * lost: tags are found again by matching segments to source lines, never by index.
 */
import { Clipper, FillRule, type Path64, type Paths64 } from 'clipper2-ts';
import { areaOf, type Region, type Ring } from './point.ts';

const GRID = 10_000;

const toPath = (ring: Ring): Path64 =>
  ring.map(({ x, y }) => ({ x: Math.round(x * GRID), y: Math.round(y * GRID) })) as Path64;
const toPaths = (region: Region): Paths64 => region.map(toPath) as Paths64;
const toRegion = (paths: Paths64): Region =>
  paths.map((path) => path.map(({ x, y }) => ({ x: x / GRID, y: y / GRID })));

export function intersect(a: Region, b: Region): Region {
  if (a.length === 0 || b.length === 0) return [];
  return toRegion(Clipper.intersect(toPaths(a), toPaths(b), FillRule.NonZero));
}

export function subtract(a: Region, b: Region): Region {
  if (a.length === 0 || b.length === 0) return a;
  return toRegion(Clipper.difference(toPaths(a), toPaths(b), FillRule.NonZero));
}

export function unite(regions: readonly Region[]): Region {
  const paths = regions.flatMap((region) => toPaths(region)) as Paths64;
  return paths.length === 0 ? [] : toRegion(Clipper.union(paths, FillRule.NonZero));
}

/** Square inches by which two parts may miss a whole: corners snap to the grid, which tells on long sides. */
const snapping = (whole: number): number => 1 + whole * 1e-6;

/**
 * A region in two parts, within another and outside it. On rare outlines with many corners the library loses a
 * sliver or a whole corner of a difference (about 1 in 2500 drawn at random), so the parts are added up, and the
 * difference is taken the other way before the parts are given up.
 *
 * @throws when the parts do not add up either way: a wrong area would be a silent loss.
 */
export function split(whole: Region, by: Region): { readonly within: Region; readonly outside: Region } {
  const within = intersect(whole, by);
  const area = areaOf(whole);
  const addsUp = (outside: Region) => Math.abs(areaOf(within) + areaOf(outside) - area) < snapping(area);
  const outside = [by, within].map((part) => subtract(whole, part)).find(addsUp);
  if (!outside)
    throw new Error('the wind zones of a plane do not add up to it; draw the outline with fewer corners');
  return { within, outside };
}
