/**
 * Boolean operations on plan regions, by an integer clipping library. Coordinates are snapped to a grid of
 * 1/10000 in, so an area of a 100 ft roof is right to about one part in a hundred million. Vertex identity is
 * lost: tags are found again by matching segments to source lines, never by index.
 */
import { Clipper, FillRule, type Path64, type Paths64 } from 'clipper2-ts';
import type { Region, Ring } from './point.ts';

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
