/** In which zones a connection occurs, how much of it, and which spacings it may take. */
import { type Connection, isPieceMeal, type PieceMeal } from '../connections/connection.ts';
import type { Plane } from '../roof/roof.ts';
import { supportLines } from '../roof/runs.ts';
import { zonesAlong } from '../site/edge-zones.ts';
import type { Design } from './design.ts';

export interface Occurrence {
  readonly zone: number;
  /** Length of rows in this zone, in inches; or, for pieces, their number. */
  readonly amount: number;
  /** Largest spacing the supports force, when fasteners stand on supports. */
  readonly supportSpacing: number | undefined;
}

export function occurrences(connection: Connection, design: Design): Occurrence[] {
  const { placement } = connection;
  if (placement.by === 'edge') return alongEdges(design, placement.tag, placement.rows);
  if (isPieceMeal(placement)) return onPlane(design, placement);
  const forced =
    placement.by === 'field' && placement.along === 'supports' ? largestSupportSpacing(design) : undefined;
  return design.field.zones.map((zone, index) => ({
    zone: index,
    amount: (zone.slopeArea_ft2 * 144) / placement.pitch_in,
    supportSpacing: forced,
  }));
}

function alongEdges({ roof, field }: Design, tag: string, rows: number): Occurrence[] {
  const lengths = new Map<number, number>();
  for (const plane of roof.planes)
    for (const edge of plane.edges) {
      if (edge.tag !== tag) continue;
      for (const { zone, from, to } of zonesAlong(edge, plane, field.pieces))
        lengths.set(zone, (lengths.get(zone) ?? 0) + (to - from) * rows);
    }
  return [...lengths]
    .sort(([a], [b]) => a - b)
    .map(([zone, amount]) => ({ zone, amount, supportSpacing: undefined }));
}

/** Checked in the severest zone of the plane they may lie in; how many, near enough to compare items by. */
function onPlane({ roof, field }: Design, placement: PieceMeal): Occurrence[] {
  const own = field.pieces.filter((piece) => piece.plane.id === placement.plane);
  const edges = placement.by === 'trim joints' && own.some((piece) => piece.overhang);
  const zones = [...new Set(own.filter((piece) => edges || !piece.overhang).map((piece) => piece.index))];
  const severest = zones.sort((a, b) => (field.zones[b]?.severity ?? 0) - (field.zones[a]?.severity ?? 0))[0];
  const plane = roof.planes.find((one) => one.id === placement.plane);
  if (severest === undefined || !plane) return [];
  return [{ zone: severest, amount: roughPieces(placement, plane), supportSpacing: undefined }];
}

function roughPieces(placement: PieceMeal, plane: Plane): number {
  if (placement.by === 'piece') return placement.pieces;
  const edges = plane.edges.reduce((sum, edge) => sum + edge.length, 0);
  if (placement.by === 'trim joints') return edges / placement.every_in;
  return (plane.slopeArea_ft2 * 144) / (placement.pitch_in * placement.every_in);
}

export function supportsOf(design: Pick<Design, 'job'>, plane: Plane) {
  const { support } = design.job;
  return 'spacing' in support
    ? supportLines(plane, support.spacing, support.firstOffset, support.lastOffset)
    : undefined;
}

function largestSupportSpacing(design: Design): number {
  return Math.max(...design.roof.planes.map((plane) => supportsOf(design, plane)?.tributary ?? 0));
}

/** Spacings a crew can chalk, widest first, in inches. */
const chalkableUs = [48, 36, 30, 24, 20, 18, 16, 15, 12, 10, 9, 8, 6, 5, 4, 3];
const chalkableSi = [1200, 900, 750, 600, 500, 450, 400, 375, 300, 250, 225, 200, 150, 125, 100, 75].map(
  (mm) => mm / 25.4,
);

export function chalkable(units: 'US' | 'SI'): readonly number[] {
  return units === 'US' ? chalkableUs : chalkableSi;
}
