/** Load on one place of a connection, from the pressure on what hangs on it. */
export interface Tributary {
  /** Area whose wind load one place (a clip, a screw) takes. */
  readonly place_ft2: number;
  /** The part of it one fastener takes; also its effective wind area. */
  readonly fastener_ft2: number;
}

/**
 * Tributary area of one place in a row. The first place of a row takes the end of the run besides half a spacing:
 * where that is more than a whole spacing, it is the larger one that counts.
 */
export function tributaryOf(width_in: number, spacing_in: number, each: number, endOffset_in = 0): Tributary {
  const along = Math.max(spacing_in, endOffset_in + spacing_in / 2);
  const place = (width_in * along) / 144;
  return { place_ft2: place, fastener_ft2: place / each };
}
