/** Point, drilling, thread pitch and length: what decides whether a screw can be driven and gets hold. */
import { type BuildUp, holdingPly, stackAbove } from '../connections/ply.ts';
import { seatedThread } from '../links/seating.ts';
import type { Screw } from '../shelf/item.ts';
import type { Ruling } from './rejection.ts';
import { inches, type Setting } from './setting.ts';

/** Steel the point must drill, all plies together: every sheet not punched for the screw. */
export function drilledSteel(buildUp: BuildUp): number | undefined {
  let sum = 0;
  for (const ply of buildUp.plies) {
    if (ply.kind !== 'sheet' || ply.punched) continue;
    if (ply.thickness_in === undefined) return undefined;
    sum += ply.thickness_in;
  }
  return sum;
}

/** Thickest sheet a point without a drill starts in (common practice, inches). */
const SHARP_STARTS_IN = 0.036;

export function byPoint(screw: Screw, { connection }: Setting): Ruling | undefined {
  const holding = holdingPly(connection.buildUp);
  const { form } = screw.point;
  if (holding.kind === 'wood' && form === 'drill')
    return {
      rule: 'point',
      because: 'a drill point reams the wood its thread should hold in (common practice)',
    };
  const steel = holding.kind === 'sheet' ? holding.thickness_in : undefined;
  if (steel !== undefined && steel > SHARP_STARTS_IN && form !== 'drill')
    return {
      rule: 'point',
      because: `a ${form} point does not start in ${inches(steel)} of metal; a drill point is needed`,
    };
  return undefined;
}

export function byDrilling(screw: Screw, { connection: { buildUp } }: Setting): Ruling | undefined {
  const steel = drilledSteel(buildUp);
  if (steel === undefined || steel === 0) return undefined;
  const { drillsFrom, drillsTo, length, form } = screw.point;
  if (steel > drillsTo)
    return {
      rule: 'drilling',
      because: `its point clears ${inches(drillsTo)}; this build-up has ${inches(steel)} of metal to drill`,
    };
  if (holdingPly(buildUp).kind !== 'sheet' || form !== 'drill') return undefined;
  if (steel < drillsFrom)
    return {
      rule: 'drilling',
      because: `its point is made for ${inches(drillsFrom)} of metal and more; in ${inches(steel)} it would ream the hole`,
    };
  const pass = passLength(buildUp);
  if (pass !== undefined && pass > length)
    return {
      rule: 'drilling',
      because: `its drill point is ${inches(length)} long and must pass ${inches(pass)} of metal and gaps before the thread bites`,
    };
  return undefined;
}

/** From the first to the last ply that is drilled, gaps and soft plies between them included. */
function passLength({ plies }: BuildUp): number | undefined {
  const drilled = plies.map((ply) => ply.kind === 'sheet' && !ply.punched);
  let sum = 0;
  for (const ply of plies.slice(drilled.indexOf(true), drilled.lastIndexOf(true) + 1)) {
    if (ply.thickness_in === undefined) return undefined;
    sum += ply.thickness_in;
  }
  return sum;
}

/** Common practice: coarse thread into wood (13 to the inch for a number 10), finer as steel gets thicker. */
export function byPitch(screw: Screw, { connection }: Setting): Ruling | undefined {
  const holding = holdingPly(connection.buildUp);
  const tpi = screw.threadsPerInch;
  if (holding.kind === 'wood') {
    if (tpi <= 15) return undefined;
    return {
      rule: 'thread pitch',
      because: `${tpi} threads to the inch strip in wood; a coarse thread is wanted (common practice)`,
    };
  }
  const t = holding.thickness_in;
  if (t === undefined) return undefined;
  if (t < 0.03 && tpi > 18)
    return {
      rule: 'thread pitch',
      because: `${tpi} threads to the inch strip in ${inches(t)} sheet (common practice)`,
    };
  if (t >= 0.05 && tpi < 14)
    return {
      rule: 'thread pitch',
      because: `${tpi} threads to the inch do not pull up in ${inches(t)} steel; finer is wanted (common practice)`,
    };
  if (t >= 0.1875 && tpi < 20)
    return {
      rule: 'thread pitch',
      because: `steel of ${inches(t)} wants 20 threads to the inch or more, this has ${tpi} (common practice)`,
    };
  return undefined;
}

/** How far a point may stand out below before a shorter screw does as well, in inches. */
const TOO_FAR_OUT = 2;
/** Longest screw in the lap of two sheets, in inches. */
const LAP_LENGTH = 1.25;

export function byReach(
  screw: Screw,
  { connection: { buildUp, duty }, inView }: Setting,
): Ruling | undefined {
  const stack = stackAbove(buildUp);
  const holding = holdingPly(buildUp);
  if (stack === undefined || holding.thickness_in === undefined) return undefined;
  const past = screw.length - stack - holding.thickness_in;
  const ruling =
    holding.kind === 'sheet'
      ? reachInSheet(screw, stack, past, inView && holding.role === 'deck')
      : reachInWood(screw, stack, holding.thickness_in, holding.product === 'lumber', inView);
  if (ruling) return ruling;
  if (duty === 'stitch' && holding.kind === 'sheet' && screw.length > LAP_LENGTH)
    return { rule: 'too long', because: `${inches(screw.length)} is longer than a lap of two sheets wants` };
  return past > TOO_FAR_OUT
    ? { rule: 'too long', because: `it stands ${inches(past)} out below; a shorter one does` }
    : undefined;
}

/** The drill point and three full threads past the far face of the steel. */
function reachInSheet(screw: Screw, stack: number, past: number, shows: boolean): Ruling | undefined {
  const need = 3 / screw.threadsPerInch + screw.point.length;
  if (past < need)
    return {
      rule: 'reach',
      because: `it reaches ${inches(past)} past the metal; point and three threads need ${inches(need)}`,
    };
  const bare = screw.length - screw.threadLength - stack;
  if (bare > 0)
    return { rule: 'reach', because: `its thread starts ${inches(bare)} past the near face of the metal` };
  return shows
    ? { rule: 'shows below', because: 'its point shows below, and this deck is in view' }
    : undefined;
}

/** Common practice: an inch of thread in lumber; a deck is passed by a quarter inch so that full thread holds. */
function reachInWood(
  screw: Screw,
  stack: number,
  thickness: number,
  lumber: boolean,
  inView: boolean,
): Ruling | undefined {
  const past = screw.length - stack - thickness;
  if (inView && past > 0)
    return {
      rule: 'shows below',
      because: `its point shows ${inches(past)} below, and this deck is in view`,
    };
  const held = seatedThread(screw, stack, thickness);
  if (lumber && held < Math.min(1, thickness - 0.25))
    return {
      rule: 'thread in holding ply',
      because: `${inches(held)} of thread is in the wood; an inch is usual`,
    };
  if (!lumber && !inView && past < 0.25)
    return {
      rule: 'reach',
      because: `its point stands ${inches(past)} past the deck; a quarter inch is wanted so that full thread holds`,
    };
  return held <= 0
    ? { rule: 'thread in holding ply', because: 'no thread is in the holding ply' }
    : undefined;
}
