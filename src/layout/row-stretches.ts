/**
 * A line up the slope crosses several zones. Before fasteners are set, stretches too short to be worth a spacing
 * of their own are settled: one beside a tighter zone joins it; one between wider zones grows to one spacing of
 * its own. Both ways the tighter spacing covers more roof than it must, never less.
 */
export interface ZoneStretch {
  /** Along the slope, in inches from the low side of the plane. */
  from: number;
  to: number;
  /** Index of the zone. */
  readonly zone: number;
  /** Greatest spacing there. */
  readonly spacing: number;
}

/** Half a spacing: shorter than this, both ends of a stretch would get a fastener nearly side by side. */
const SHORT = 0.5;

/** Stretches in order, touching each other; the outer ends stay where they are. */
export function settleStretches(stretches: readonly ZoneStretch[]): ZoneStretch[] {
  const list = stretches.map((stretch) => ({ ...stretch }));
  // Widest first would undo later merges; tightest first lets each grow into wider neighbours once.
  const order = [...list].sort((a, b) => a.spacing - b.spacing);
  for (const stretch of order) {
    const at = list.indexOf(stretch);
    if (at < 0 || list.length === 1 || stretch.to - stretch.from >= SHORT * stretch.spacing) continue;
    const before = list[at - 1];
    const after = list[at + 1];
    const tighter = [before, after].filter(
      (other) => other !== undefined && other.spacing <= stretch.spacing,
    )[0];
    if (tighter) absorb(list, tighter, stretch);
    else grow(list, stretch, before, after);
  }
  return list;
}

function absorb(list: ZoneStretch[], into: ZoneStretch, gone: ZoneStretch): void {
  into.from = Math.min(into.from, gone.from);
  into.to = Math.max(into.to, gone.to);
  list.splice(list.indexOf(gone), 1);
}

function grow(
  list: ZoneStretch[],
  stretch: ZoneStretch,
  before: ZoneStretch | undefined,
  after: ZoneStretch | undefined,
): void {
  const need = stretch.spacing - (stretch.to - stretch.from);
  const roomOf = (other: ZoneStretch | undefined) =>
    other ? other.to - other.from - SHORT * other.spacing : 0;
  const neighbour = roomOf(before) > roomOf(after) ? before : (after ?? before);
  if (!neighbour) return;
  if (roomOf(neighbour) < need) absorb(list, stretch, neighbour);
  else if (neighbour === before) {
    neighbour.to -= need;
    stretch.from = neighbour.to;
  } else {
    neighbour.from += need;
    stretch.to = neighbour.from;
  }
}
