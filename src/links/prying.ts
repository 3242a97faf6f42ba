/**
 * Prying of a one-sided clip, by statics of the clip itself: the seam pulls at a distance from the screw line, the
 * base turns about its toe on the other side, and the screws pull more than the seam does.
 *
 *     T (all screws) = P (e + b) / b      e seam to screw line, b screw line to toe
 */

import { inch, type Ratio } from '../quantities/quantity.ts';
import type { Clip } from '../shelf/item.ts';
import { equation } from '../trace/equation.ts';
import type { Trace } from '../trace/step.ts';

const pryingFactor = equation({
  clause: 'statics of the clip',
  gives: 'Q',
  unit: '1',
  from: { e: 'in', b: 'in' },
  is: '(e + b) / b',
});

/** Screw tension over seam pull; nothing while the clip's lever arms are not known. */
export function pryingOf(clip: Clip, trace?: Trace): Ratio | undefined {
  if (!clip.lever) return undefined;
  return pryingFactor({ e: inch(clip.lever.seamToScrew), b: inch(clip.lever.screwToToe) }, trace);
}
