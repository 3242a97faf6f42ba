/** Fasteners along one line: first and last in place, equal intervals within a zone, none doubled at a border. */
import { settleStretches, type ZoneStretch } from './row-stretches.ts';

/** Receives each fastener of a row: its place along the slope and the zone whose spacing set it. */
export type Place = (at: number, zone: number) => void;

/** Guards a length that is a whole number of spacings against the last bit of a double. */
const BIT = 1e-9;

/**
 * @param stretches zones along one uninterrupted stretch of the line, in order and touching
 * @param endOffset of the first and last fastener from the ends
 */
export function placeRow(stretches: readonly ZoneStretch[], endOffset: number, place: Place): void {
  const start = (stretches[0] as ZoneStretch).from;
  const end = (stretches.at(-1) as ZoneStretch).to;
  if (end - start <= 2 * endOffset) {
    const tightest = stretches.reduce((a, b) => (b.spacing < a.spacing ? b : a));
    place((start + end) / 2, tightest.zone);
    return;
  }
  const [first, last] = [start + endOffset, end - endOffset];
  let lastZone = 0;
  const settled = stretches.length === 1 ? stretches : settleStretches(stretches);
  for (const { from, to, zone, spacing } of settled) {
    const low = Math.max(from, first);
    const length = Math.min(to, last) - low;
    if (length <= BIT) continue;
    const intervals = Math.max(1, Math.ceil(length / spacing - BIT));
    for (let i = 0; i < intervals; i++) place(low + (length * i) / intervals, zone);
    lastZone = zone;
  }
  place(last, lastZone);
}
