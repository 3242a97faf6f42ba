/** Where the thread of a driven screw comes to lie. */
import type { Screw } from '../shelf/item.ts';

/**
 * Length of full thread inside the holding ply: the thread, less the unthreaded or tapered tip, that lies between
 * its near and its far face. A 7/16 in sheet never counts more than 7/16 in, whatever the screw's length.
 * @param stack thickness between head and holding ply, in inches
 */
export function seatedThread(
  screw: Pick<Screw, 'length' | 'threadLength' | 'point'>,
  stack: number,
  thickness: number,
): number {
  const threadFrom = screw.length - screw.threadLength;
  const threadTo = screw.length - screw.point.length;
  return Math.max(0, Math.min(threadTo, stack + thickness) - Math.max(threadFrom, stack));
}
