/**
 * Speeds of the screw gun by metal and point: habits of the trade, recalled, not tested values. A crew tries them on
 * scrap; the sheet says so beside every number.
 */
import type { Screw } from '../../shelf/item.ts';

export interface SpeedBand {
  readonly from: number;
  readonly to: number;
}

/** Turns a minute. */
export function speedBand(screw: Screw): SpeedBand {
  const stainless = screw.metal.startsWith('stainless 3') || screw.metal.startsWith('bi-metal');
  if (stainless) return { from: 600, to: 1200 };
  if (screw.point.form !== 'drill') return { from: 1000, to: 2500 };
  return (screw.point.number ?? 0) >= 4 ? { from: 1000, to: 1800 } : { from: 1800, to: 2500 };
}
