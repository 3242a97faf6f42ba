/** Every fastener of a connection that stands in the field of a plane: on seams or ribs, free or on supports. */
import { slopeFactor } from '../job/slope.ts';
import { fromFrame } from '../roof/frame.ts';
import type { Plane } from '../roof/roof.ts';
import type { SupportLines } from '../roof/runs.ts';
import { FastenerColumns, type FastenerSet } from './fastener-set.ts';
import { type PlaneZones, stretchesAt } from './line-stretches.ts';
import { placeRow, type RowEnds } from './place-row.ts';
import type { ZoneStretch } from './row-stretches.ts';

/** A line up the slope, in plan inches from the left border of the plane; with its reach where it is not the whole plane. */
export interface FieldLine {
  readonly u: number;
  readonly low?: number;
  readonly high?: number;
  /** Along a border: it holds one side of a sheet only, so its ends are not doubled. */
  readonly border?: true;
}

export interface FieldOrder {
  readonly connection: string;
  readonly plane: Plane;
  readonly zones: PlaneZones;
  readonly lines: readonly FieldLine[];
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
  for (const [index, line] of order.lines.entries())
    for (const whole of stretchesAt(order.zones, line.u, factor, order.spacingOf)) {
      const run = within(
        whole,
        (line.low ?? Number.NEGATIVE_INFINITY) * factor,
        (line.high ?? Number.POSITIVE_INFINITY) * factor,
      );
      if (run.length > 0) addRow(order, run, line, index, factor, columns);
    }
  return columns.done(order.connection, order.plane.id);
}

function addRow(
  order: FieldOrder,
  run: readonly ZoneStretch[],
  { u, border }: FieldLine,
  line: number,
  factor: number,
  columns: FastenerColumns,
): void {
  const places = order.supports
    ? onSupports(run, order.supports, factor, order.ends)
    : along(run, order.ends);
  const last = places.length - 1;
  places.forEach(({ at, zone }, i) => {
    const each = order.eachOf(zone) * (!border && (i === 0 || i === last) ? order.endFactor : 1);
    const p = fromFrame(order.zones.frame, u, at / factor);
    columns.add(p.x, p.y, zone, each, line);
  });
}

/** A run cut to the reach of its line. */
function within(run: readonly ZoneStretch[], low: number, high: number): readonly ZoneStretch[] {
  if (low <= (run[0] as ZoneStretch).from && high >= (run.at(-1) as ZoneStretch).to) return run;
  return run
    .map((part) => ({ ...part, from: Math.max(part.from, low), to: Math.min(part.to, high) }))
    .filter((part) => part.to - part.from > ON);
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

/**
 * On every support the run crosses. Where a run ends farther from its last support than the schedule's tributary
 * length allows (at a hip, a valley, an opening), one more stands at the end, in framing there.
 */
function onSupports(
  run: readonly ZoneStretch[],
  supports: SupportLines,
  factor: number,
  ends: RowEnds,
): Spot[] {
  const spots: Spot[] = [];
  const [start, end] = [(run[0] as ZoneStretch).from, (run.at(-1) as ZoneStretch).to];
  let part = 0;
  for (const v of supports.at) {
    const at = v * factor;
    if (at < start - ON || at > end + ON) continue;
    while (part < run.length - 1 && at > (run[part] as ZoneStretch).to) part++;
    spots.push({ at, zone: (run[part] as ZoneStretch).zone });
  }
  return withEnds(spots, run, supports.overEnd, ends);
}

function withEnds(spots: Spot[], run: readonly ZoneStretch[], overEnd: number, ends: RowEnds): Spot[] {
  const [first, last] = [run[0] as ZoneStretch, run.at(-1) as ZoneStretch];
  const low = { at: Math.min(first.from + ends.first, (first.from + last.to) / 2), zone: first.zone };
  const high = { at: Math.max(last.to - ends.last, (first.from + last.to) / 2), zone: last.zone };
  if (spots.length === 0) return high.at - low.at > ends.first ? [low, high] : [low];
  if ((spots[0] as Spot).at - first.from > overEnd + ON) spots.unshift(low);
  if (last.to - (spots.at(-1) as Spot).at > overEnd + ON) spots.push(high);
  return spots;
}
