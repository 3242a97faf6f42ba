/**
 * What rules an item out of a connection before any strength is computed. The rules run in the order a specialist
 * would look; the first that bites gives the reason.
 */
import { metalFinding } from '../links/metal-rules.ts';
import type { Item, Rivet, Screw } from '../shelf/item.ts';
import type { Ruling } from './rejection.ts';
import { byColour, byHead, byHole, byMetal, byWasher } from './rule-out-by-head.ts';
import { byDrilling, byPitch, byPoint, byReach } from './rule-out-by-reach.ts';
import { inches, type Setting } from './setting.ts';

const screwRules: readonly ((screw: Screw, setting: Setting) => Ruling | undefined)[] = [
  byHead,
  byWasher,
  byHole,
  byMetal,
  byColour,
  byPoint,
  byDrilling,
  byPitch,
  byReach,
];

/** The first thing that rules the item out, or nothing. */
export function ruleOut(item: Item, setting: Setting): Ruling | undefined {
  const rivets = setting.connection.duty === 'rivet';
  if (item.kind === 'rivet' && rivets) return ruleOutRivet(item, setting);
  if (item.kind !== 'screw' || rivets)
    return { rule: 'kind', because: `this joint takes ${rivets ? 'blind rivets' : 'screws'}` };
  for (const rule of screwRules) {
    const ruling = rule(item, setting);
    if (ruling) return ruling;
  }
  return undefined;
}

function ruleOutRivet(rivet: Rivet, { connection, surroundings, colour }: Setting): Ruling | undefined {
  let grip = 0;
  for (const ply of connection.buildUp.plies) {
    grip += ply.thickness_in ?? 0;
    if (ply.kind !== 'sheet') continue;
    const finding = metalFinding(rivet, ply.metal, surroundings);
    if (finding.kind === 'ruled out') return { rule: 'metal', because: finding.because };
  }
  if (grip < rivet.gripFrom || grip > rivet.gripTo)
    return {
      rule: 'grip',
      because: `it grips ${inches(rivet.gripFrom)} to ${inches(rivet.gripTo)}; the sheets are ${inches(grip)}`,
    };
  if (colour && rivet.colours.length > 0 && !rivet.colours.includes(colour))
    return { rule: 'colour', because: `it is not stocked in ${colour}` };
  return undefined;
}
