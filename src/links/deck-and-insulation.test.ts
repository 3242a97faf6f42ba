import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { WoodPly } from '../connections/ply.ts';
import { basisOf } from '../job/basis.ts';
import { supportInput } from '../job/cover-input.ts';
import { job } from '../job/job.ts';
import type { ItemOf } from '../shelf/item.ts';
import { readShelf } from '../shelf/read-shelf.ts';
import { nds2018 } from '../standards/nds-2018/edition.ts';
import { deckToFrame } from './deck-to-frame.ts';
import { holdingCapacity } from './holding.ts';
import { insulationCapacity } from './insulation-bearing.ts';
import { linkContext } from './link-context.ts';

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../demo/${name}.json`, import.meta.url), 'utf8'));
const shelf = readShelf(read('shelf'));
const items = shelf.ok ? shelf.value.items : [];
const deck = (nail: string, edge: string, field: string, more: object = {}) =>
  deckToFrame({
    support: supportInput.parse({
      kind: 'plywood',
      thickness: '7/16 in',
      specificGravity: 0.42,
      nailing: { nail, edge, field, framing: '24 in', framingSpecies: 'Spruce-Pine-Fir' },
      ...more,
    }),
    items,
    wood: nds2018,
    method: 'ASD',
  });

describe('deck to frame', () => {
  // 8d common (0.131 in) in SPF through 7/16 in: W = 1380 · 0.42^2.5 · 0.131 = 20.67 lb/in (AWC example E2.1a prints 20.67),
  // penetration 2.0625 in, C_D 1.6: 68.2 lb; at 6 in on framing 24 in apart (1 ft²) 68.2 psf. Computed by hand.
  test('8d common nails at 6 in and 6 in on 24 in framing hold 68 psf', () => {
    expect(deck('NC08', '6 in', '6 in')?.value).toBeCloseTo(1380 * 0.42 ** 2.5 * 0.131 * 2.0625 * 1.6, 1);
    expect(deck('NC08', '6 in', '6 in')?.value).toBeCloseTo(68.2, 0);
  });
  test('at 6 in and 12 in the field spacing decides: half as much', () => {
    expect(
      (deck('NC08', '6 in', '6 in')?.value ?? 0) / (deck('NC08', '6 in', '12 in')?.value ?? 1),
    ).toBeCloseTo(2, 9);
    expect(deck('NC08', '6 in', '12 in')?.area_ft2).toBeCloseTo(2, 9);
  });
  // Ring shank counts its ring length only, 1.5 in of 2.0625: 1800 · 0.42² · 0.131 · 1.5 · 1.6 = 99.8 lb against pull-through
  // of a 0.281 in head through 7/16 in of panel with G 0.42: 690 π 0.281 · 0.42² · 0.4375 · 1.6 = 75.2 lb. Computed by hand.
  test('a ring-shank nail is held by its head, not by its shank', () => {
    expect(deck('NR03', '6 in', '6 in')?.value).toBeCloseTo(
      690 * Math.PI * 0.281 * 0.42 ** 2 * 0.4375 * 1.6,
      6,
    );
  });
  test('a ring-shank nail without much ring in the frame is held by its shank', () => {
    // -01: 0.113 in, 1.5 in of ring: 1800 · 0.42² · 0.113 · 1.5 · 1.6 = 86.1 lb; through 23/32 in panel the head holds 123 lb.
    expect(deck('NR01', '6 in', '6 in', { thickness: '23/32 in' })?.value).toBeCloseTo(
      1800 * 0.42 ** 2 * 0.113 * 1.5 * 1.6,
      6,
    );
  });
  test('nails are not asked for on purlins', () => {
    expect(
      deckToFrame({
        support: supportInput.parse({
          kind: 'wood purlins',
          depth: '1.5 in',
          species: 'SPF',
          spacing: '24 in',
        }),
        items,
        wood: nds2018,
        method: 'ASD',
      }),
    ).toBeUndefined();
  });
  test('a nail thinner than the standard covers is unproven with its limit', () => {
    const thin = items.map((one) =>
      one.id === 'NC08' && one.kind === 'nail' ? { ...one, diameter: 0.05 as never } : one,
    );
    const found = deckToFrame({
      support: supportInput.parse({
        kind: 'plywood',
        thickness: '7/16 in',
        specificGravity: 0.42,
        nailing: { nail: 'NC08', edge: '6 in', field: '6 in', framing: '24 in', framingSpecies: 'SPF' },
      }),
      items: thin,
      wood: nds2018,
      method: 'ASD',
    });
    expect([found?.value, found?.because]).toEqual([undefined, expect.stringContaining('0.092')]);
  });
});

describe('insulation under a plate', () => {
  const document = job.parse(read('d-reroof'));
  const plate = items.find((one): one is ItemOf<'plate'> => one.id === 'BP46');
  const context = (withPlate: boolean) =>
    linkContext(
      document,
      basisOf(document),
      { clip: undefined, plate: withPlate ? plate : undefined },
      items,
    );
  test('a third of 20 psi under a 4 by 6 in plate carries 160 lb: 60 psf on 2 2/3 ft²', () => {
    expect(insulationCapacity(context(true), 16 / 6)?.value).toBeCloseTo(60, 9);
  });
  test('without a plate is unproven', () =>
    expect(insulationCapacity(context(false), 2)?.value).toBeUndefined());
});

test('wood that is wet in service holds a screw at 0.7', () => {
  const document = job.parse(read('c-farm'));
  const context = linkContext(document, basisOf(document), { clip: undefined, plate: undefined }, items);
  const screw = items.find((one): one is ItemOf<'screw'> => one.id === 'PW10-150K') as ItemOf<'screw'>;
  const wood = (moisture: 'dry' | 'wet'): WoodPly => ({
    kind: 'wood',
    role: 'purlin',
    name: 'purlin',
    product: 'lumber',
    thickness_in: 1.5,
    specificGravity: 0.42,
    moisture,
    treatment: 'none',
  });
  const value = (moisture: 'dry' | 'wet') =>
    holdingCapacity(screw, { plies: [wood(moisture)], holding: 0 }, context).value as number;
  expect(value('wet') / value('dry')).toBeCloseTo(0.7, 9);
});
