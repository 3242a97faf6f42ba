/** Fasteners by connection and zone: laid out ones counted one by one, pieces by their number. */
import type { ConnectionChoice } from '../choose/schedule.ts';
import type { FastenerSet } from '../layout/fastener-set.ts';
import type { CountByZone } from './takeoff.ts';

export interface ConnectionCount {
  readonly connection: string;
  /** Places: clips, brackets, single screws. */
  readonly places: number;
  /** Fasteners: places times what stands at each. */
  readonly fasteners: number;
  readonly zones: readonly CountByZone[];
}

export function countFasteners(choice: ConnectionChoice, layout: readonly FastenerSet[]): ConnectionCount {
  const { id, placement } = choice.connection;
  // Pieces without a drawn place are counted by their number; all others one by one.
  if (placement.by === 'piece') {
    const fasteners = placement.pieces * placement.perPiece;
    return {
      connection: id,
      places: placement.pieces,
      fasteners,
      zones: choice.lines.map((line) => ({ zone: line.zone, count: fasteners })),
    };
  }
  const byZone = new Map<number, number>();
  let places = 0;
  let fasteners = 0;
  for (const set of layout) {
    if (set.connection !== id) continue;
    places += set.count;
    for (let i = 0; i < set.count; i++) {
      const each = set.each[i] as number;
      fasteners += each;
      byZone.set(set.zone[i] as number, (byZone.get(set.zone[i] as number) ?? 0) + each);
    }
  }
  return {
    connection: id,
    places,
    fasteners,
    zones: [...byZone].sort(([a], [b]) => a - b).map(([zone, count]) => ({ zone, count })),
  };
}

/** Pieces to order: waste first, rounded up to a whole piece, then to whole packs. */
export function packsFor(
  count: number,
  waste: number,
  pack: number,
): { readonly withWaste: number; readonly packs: number; readonly ordered: number } {
  const withWaste = Math.ceil(count * (1 + waste) - 1e-9);
  const packs = Math.ceil(withWaste / pack);
  return { withWaste, packs, ordered: packs * pack };
}
