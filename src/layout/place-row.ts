/** Fasteners along one line: first and last in place, equal intervals within a zone, none doubled at a border. */
import { settleStretches, type ZoneStretch } from './row-stretches.ts';

/** Receives each fastener of a row: its place along the slope and the zone whose spacing set it. */
export type Place = (at: number, zone: number) => void;

/** Guards a length that is a whole number of spacings against the last bit of a double. */
const BIT = 1e-9;

/** How a row begins and ends. */
export interface RowEnds {
  /** Of the first fastener from the low end, and of the last from the high end. */
  readonly first: number;
  readonly last: number;
  /** Other fasteners stand at both ends already: the row has intervals there, but no fastener of its own. */
  readonly held?: boolean;
}

/** @param stretches zones along one uninterrupted stretch of the line, in order and touching */
export function placeRow(stretches: readonly ZoneStretch[], ends: RowEnds, place: Place): void {
  const start = (stretches[0] as ZoneStretch).from + ends.first;
  const end = (stretches.at(-1) as ZoneStretch).to - ends.last;
  if (end <= start) {
    if (!ends.held) placeAlone(stretches, place);
    return;
  }
  let lastZone = 0;
  const settled = stretches.length === 1 ? stretches : settleStretches(stretches);
  for (const { from, to, zone, spacing } of settled) {
    const low = Math.max(from, start);
    const length = Math.min(to, end) - low;
    if (length <= BIT) continue;
    const intervals = Math.max(1, Math.ceil(length / spacing - BIT));
    const skip = ends.held && low === start ? 1 : 0;
    for (let i = skip; i < intervals; i++) place(low + (length * i) / intervals, zone);
    lastZone = zone;
  }
  if (!ends.held) place(end, lastZone);
}

/** Too short for two: one in the middle, in the tightest zone. */
function placeAlone(stretches: readonly ZoneStretch[], place: Place): void {
  const tightest = stretches.reduce((a, b) => (b.spacing < a.spacing ? b : a));
  place(((stretches[0] as ZoneStretch).from + (stretches.at(-1) as ZoneStretch).to) / 2, tightest.zone);
}
