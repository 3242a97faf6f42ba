/** Hatches of the wind zones: none for the mildest, closer and crossed with severity, level lines on overhangs. */
import type { FieldZone } from '../site/pressure-field.ts';

/** One family of parallel lines: degrees counter-clockwise from level, and the gap in units of the drawing's grain. */
export interface HatchLines {
  readonly angle: number;
  readonly gap: number;
}
export type Hatch = readonly HatchLines[];

/** Never at 45 degrees, where a hip lies in plan: a hatch line would read as a border. */
const ladder: readonly Hatch[] = [
  [],
  [{ angle: 30, gap: 2 }],
  [
    { angle: 30, gap: 2 },
    { angle: 120, gap: 2 },
  ],
  [{ angle: 150, gap: 1.2 }],
  [{ angle: 30, gap: 0.8 }],
  [
    { angle: 30, gap: 1 },
    { angle: 120, gap: 1 },
  ],
  [
    { angle: 90, gap: 0.9 },
    { angle: 30, gap: 1.3 },
  ],
];

const level: HatchLines = { angle: 0, gap: 1 };

/** One hatch for each zone, in the order of the zones; no two alike as long as there are at most seven names. */
export function zoneHatches(zones: readonly FieldZone[]): readonly Hatch[] {
  const names = [...new Set(zones.map((zone) => zone.name))];
  // Few zones take the rungs that differ most to the eye.
  const rungs = names.length <= 3 ? [0, 1, 5] : names.length === 4 ? [0, 1, 2, 5] : [0, 1, 3, 2, 4, 5, 6];
  return zones.map((zone) => {
    const own = ladder[rungs[names.indexOf(zone.name) % rungs.length] ?? 0] ?? [];
    return zone.overhang ? [...own, level] : own;
  });
}
