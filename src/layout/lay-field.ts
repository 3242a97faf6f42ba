/** Every fastener of a connection that stands in the field of a plane: on seams or ribs, free or on supports. */
import { slopeFactor } from '../job/slope.ts';
import { fromFrame } from '../roof/frame.ts';
import type { Plane } from '../roof/roof.ts';
import type { SupportLines } from '../roof/runs.ts';
import { FastenerColumns, type FastenerSet } from './fastener-set.ts';
import { type PlaneZones, stretchesAt } from './line-stretches.ts';
import { placeRow, type RowEnds } from './place-row.ts';
import type { ZoneStretch } from './row-stretches.ts';

export interface FieldOrder {
  readonly connection: string;
  readonly plane: Plane;
  readonly zones: PlaneZones;
  /** Places of the lines across the plane, in plan inches from its left border. */
  readonly lines: readonly number[];
  readonly spacingOf: (zone: number) => number;
  readonly eachOf: (zone: number) => number;
  /** First and last fastener from the ends of a run, along the slope. */
  readonly ends: RowEnds;
  /** Fasteners stand only here, when there are supports. */
  readonly supports: SupportLines | undefined;
  /** How many times as many stand in the first and last row of a run (exposed panels: both sides of a rib). */
  readonly endFactor: number;
}

export function layField(order: FieldOrder): FastenerSet {
  const factor = slopeFactor(order.plane.slope);
  const columns = new FastenerColumns();
  for (const [line, u] of order.lines.entries()) {
    for (const run of stretchesAt(order.zones, u, factor, order.spacingOf)) {
      const places = order.supports ? onSupports(run, order.supports, factor) : along(run, order.ends);
      const last = places.length - 1;
      places.forEach(({ at, zone }, i) => {
        const each = order.eachOf(zone) * (i === 0 || i === last ? order.endFactor : 1);
        const p = fromFrame(order.zones.frame, u, at / factor);
        columns.add(p.x, p.y, zone, each, line);
      });
    }
  }
  return columns.done(order.connection, order.plane.id);
}

interface Spot {
  readonly at: number;
  readonly zone: number;
}

function along(run: readonly ZoneStretch[], ends: RowEnds): Spot[] {
  const spots: Spot[] = [];
  placeRow(run, ends, (at, zone) => spots.push({ at, zone }));
  return spots;
}

/** Keeps a support that lies exactly on the end of a run on it. */
const ON = 0.01;

function onSupports(run: readonly ZoneStretch[], supports: SupportLines, factor: number): Spot[] {
  const spots: Spot[] = [];
  let part = 0;
  const end = (run.at(-1) as ZoneStretch).to + ON;
  for (const v of supports.at) {
    const at = v * factor;
    if (at < (run[0] as ZoneStretch).from - ON || at > end) continue;
    while (part < run.length - 1 && at > (run[part] as ZoneStretch).to) part++;
    spots.push({ at, zone: (run[part] as ZoneStretch).zone });
  }
  return spots;
}
