/** Head, washer, hole, head room, metals and colour: what shows before anything is driven. */
import type { Duty } from '../connections/connection.ts';
import type { Ply } from '../connections/ply.ts';
import { metalFinding, treatedWoodFinding } from '../links/metal-rules.ts';
import type { Screw } from '../shelf/item.ts';
import type { Ruling } from './rejection.ts';
import { inches, type Setting } from './setting.ts';

const flatHeads: readonly Screw['head']['form'][] = ['pancake', 'low profile'];
const flatDuties: readonly Duty[] = ['clip', 'flange', 'concealed trim'];
const sealedDuties: readonly Duty[] = ['panel', 'stitch', 'trim'];

export function byHead(screw: Screw, { connection: { duty } }: Setting): Ruling | undefined {
  const isFlat = flatHeads.includes(screw.head.form);
  if (flatDuties.includes(duty) && !isFlat)
    return {
      rule: 'head',
      because: `a ${screw.head.form} head stands too proud under a ${duty === 'clip' ? 'seam' : 'sheet'}; a flat bearing head is needed`,
    };
  if (!flatDuties.includes(duty) && isFlat)
    return {
      rule: 'head',
      because: `a ${screw.head.form} head seals nothing; an exposed joint takes a hex washer head`,
    };
  return undefined;
}

export function byWasher(screw: Screw, { connection: { duty } }: Setting): Ruling | undefined {
  if (sealedDuties.includes(duty) && screw.washer?.rubber !== 'EPDM')
    return { rule: 'washer', because: 'an exposed screw needs a bonded EPDM washer' };
  if (flatDuties.includes(duty) && screw.washer)
    return { rule: 'washer', because: 'a bonded washer does not fit under a seam' };
  return undefined;
}

export function byHole(screw: Screw, { connection, clip }: Setting): Ruling | undefined {
  if (connection.duty !== 'clip' || !clip) return undefined;
  if (!clip.screwSize.includes(screw.size))
    return {
      rule: 'hole',
      because: `the holes of clip ${clip.id} take ${clip.screwSize.join(' or ')} screws, this is ${screw.size}`,
    };
  if (screw.head.height > clip.headRoom)
    return {
      rule: 'head room',
      because: `its head is ${inches(screw.head.height)} high; under the seam there is ${inches(clip.headRoom)}`,
    };
  return undefined;
}

/** Only plies the head side touches and wood that is treated; deck and purlin steel under the panel stay dry. */
export function byMetal(screw: Screw, { connection, surroundings }: Setting): Ruling | undefined {
  for (const ply of connection.buildUp.plies) {
    const finding = plyFinding(screw, ply, surroundings);
    if (finding?.kind === 'ruled out')
      return { rule: ply.kind === 'wood' ? 'treated wood' : 'metal', because: finding.because };
  }
  return undefined;
}

/** Plies the head side touches; deck and purlin steel under the panel stay dry. */
export const touchedByHead: readonly Ply['role'][] = ['panel', 'trim', 'clip base', 'second sheet'];

function plyFinding(screw: Screw, ply: Ply, surroundings: Setting['surroundings']) {
  if (ply.kind === 'wood') return treatedWoodFinding(screw, ply.treatment);
  return ply.kind === 'sheet' && touchedByHead.includes(ply.role)
    ? metalFinding(screw, ply.metal, surroundings)
    : undefined;
}

export function byColour(screw: Screw, { connection: { duty }, colour }: Setting): Ruling | undefined {
  if (!colour || !sealedDuties.includes(duty) || screw.colours.includes(colour)) return undefined;
  return { rule: 'colour', because: `it is not stocked in ${colour}` };
}
