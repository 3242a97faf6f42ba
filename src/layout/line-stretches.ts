/** The zones that lines up a plane run through, run by run. */

import { clipUpLine } from '../roof/clip-line.ts';
import { type Frame, frameOf, toFrame } from '../roof/frame.ts';
import type { Region } from '../roof/point.ts';
import type { Plane } from '../roof/roof.ts';
import type { FieldPiece } from '../site/pressure-field.ts';
import type { ZoneStretch } from './row-stretches.ts';

/** A gap wider than this is an opening or the end of the plane, in inches. */
const GAP = 0.05;

export interface PlaneZones {
  readonly frame: Frame;
  readonly pieces: readonly {
    readonly zone: number;
    readonly region: Region;
    readonly low: number;
    readonly high: number;
  }[];
}

export function planeZones(plane: Plane, pieces: readonly FieldPiece[]): PlaneZones {
  const frame = frameOf(plane);
  const own = pieces
    .filter((piece) => piece.plane === plane)
    .map((piece) => {
      const region = toFrame(frame, piece.region);
      const us = region.flatMap((ring) => ring.map((p) => p.x));
      return { zone: piece.index, region, low: Math.min(...us), high: Math.max(...us) };
    });
  return { frame, pieces: own };
}

/**
 * The line at u, as uninterrupted stretches of roof, each a list of zones in order.
 * @param factor slope length over plan length; the result is measured along the slope
 * @param spacingOf greatest spacing in a zone
 */
export function stretchesAt(
  zones: PlaneZones,
  u: number,
  factor: number,
  spacingOf: (zone: number) => number,
): ZoneStretch[][] {
  const all: ZoneStretch[] = [];
  for (const piece of zones.pieces) {
    if (u < piece.low || u > piece.high) continue;
    for (const { from, to } of clipUpLine(piece.region, u))
      all.push({ from: from * factor, to: to * factor, zone: piece.zone, spacing: spacingOf(piece.zone) });
  }
  all.sort((a, b) => a.from - b.from);
  const runs: ZoneStretch[][] = [];
  for (const stretch of all) {
    const run = runs.at(-1);
    const before = run?.at(-1);
    if (!run || !before || stretch.from - before.to > GAP) runs.push([stretch]);
    else if (before.zone === stretch.zone) before.to = stretch.to;
    else run.push({ ...stretch, from: before.to });
  }
  return runs;
}
