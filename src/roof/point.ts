/** Plan coordinates in inches. Polygons run counter-clockwise, openings clockwise. */
export interface Point {
  readonly x: number;
  readonly y: number;
}
export type Ring = readonly Point[];

/** A region as rings: outer ones counter-clockwise, holes clockwise (even-odd and signed area agree). */
export type Region = readonly Ring[];

export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const plus = (a: Point, b: Point, by = 1): Point => ({ x: a.x + b.x * by, y: a.y + b.y * by });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

export function unit(a: Point): Point {
  const size = Math.hypot(a.x, a.y);
  return { x: a.x / size, y: a.y / size };
}

/** To the left of a direction: into a counter-clockwise polygon from its side. */
export const leftOf = (a: Point): Point => ({ x: -a.y, y: a.x });

export function signedArea(ring: Ring): number {
  let twice = 0;
  for (let i = 0; i < ring.length; i++)
    twice += cross(ring[i] as Point, ring[(i + 1) % ring.length] as Point);
  return twice / 2;
}

/** Area of a region, holes deducted. */
export const areaOf = (region: Region): number => region.reduce((sum, ring) => sum + signedArea(ring), 0);

/** Sides of a ring, each from corner i to the next. */
export function sidesOf(ring: Ring): readonly (readonly [Point, Point])[] {
  return ring.map((point, i) => [point, ring[(i + 1) % ring.length] as Point] as const);
}
