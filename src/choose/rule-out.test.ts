import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Connection, Duty } from '../connections/connection.ts';
import type { Ply, SheetPly, WoodPly } from '../connections/ply.ts';
import type { Screw } from '../shelf/item.ts';
import { readShelf } from '../shelf/read-shelf.ts';
import { ruleOut } from './rule-out.ts';
import type { Setting } from './setting.ts';

const shelf = readShelf(JSON.parse(readFileSync(new URL('../../demo/shelf.json', import.meta.url), 'utf8')));
const items = shelf.ok ? shelf.value.items : [];
const item = (id: string) => {
  const found = items.find((one) => one.id === id);
  if (!found) throw new Error(`${id} is not on the shelf`);
  return found;
};

const plywood: WoodPly = {
  kind: 'wood',
  role: 'deck',
  name: 'plywood deck',
  product: 'plywood',
  thickness_in: 0.59375,
  specificGravity: 0.42,
  moisture: 'dry',
  treatment: 'none',
};
const lumber: WoodPly = {
  ...plywood,
  role: 'purlin',
  name: 'wood purlin',
  product: 'lumber',
  thickness_in: 1.5,
};
const steel = (thickness: number, role: SheetPly['role'] = 'purlin'): SheetPly => ({
  kind: 'sheet',
  role,
  name: role,
  family: 'steel',
  metal: 'galvanized steel',
  thickness_in: thickness,
  Fu_psi: 65_000,
  Fy_psi: 50_000,
  ductility: 'normal',
  punched: false,
});
const base: SheetPly = { ...steel(0.0566, 'clip base'), punched: true };
const panel: SheetPly = steel(0.0239, 'panel');

function setting(duty: Duty, plies: readonly Ply[], more: Partial<Setting> = {}): Setting {
  const connection: Connection = {
    id: 'test',
    duty,
    buildUp: { plies, holding: plies.length - 1 },
    placement: { by: 'side lap', pitch_in: 16 },
    tributaryWidth_in: 16,
    loadRule: '',
    each: 1,
    oneSided: false,
    primary: false,
    practice: { spacing_in: 24, kind: 'common practice', source: '' },
  };
  return {
    connection,
    surroundings: { saltWater_ft: 100_000, place: 'rural' },
    inView: false,
    clip: undefined,
    colour: undefined,
    ...more,
  };
}
const clipOnPly = setting('clip', [base, plywood]);
const clipOnPurlin = setting('clip', [base, steel(0.0566)]);
const panelOnLumber = setting('panel', [panel, lumber]);

const rows: readonly { name: string; item: string; setting: Setting; rule: string; because: string }[] = [
  {
    name: 'a rivet where a screw goes',
    item: 'RV43S',
    setting: clipOnPly,
    rule: 'kind',
    because: 'takes screws',
  },
  {
    name: 'a hex head under a seam',
    item: 'PW10-150K',
    setting: clipOnPly,
    rule: 'head',
    because: 'too proud under a seam',
  },
  {
    name: 'a pancake head in the weather',
    item: 'CW10-150K',
    setting: panelOnLumber,
    rule: 'head',
    because: 'seals nothing',
  },
  {
    name: 'a bracket screw without a washer in the weather',
    item: 'BW12-150K',
    setting: panelOnLumber,
    rule: 'washer',
    because: 'bonded EPDM washer',
  },
  {
    name: 'a size the clip has no hole for',
    item: 'CW12-150K',
    setting: { ...clipOnPly, clip: { ...(item('CL100F') as never as Setting['clip']) } as Setting['clip'] },
    rule: 'hole',
    because: 'take #10 screws, this is #12',
  },
  {
    name: 'plated carbon steel on aluminium',
    item: 'PW10-150K',
    setting: setting('panel', [{ ...panel, family: 'aluminium', metal: 'aluminium' }, lumber]),
    rule: 'metal',
    because: 'aluminium or 300-series stainless',
  },
  {
    name: 'a short-lived finish by the sea on aluminium-zinc sheet',
    item: 'CW10-150Z',
    setting: setting('flange', [{ ...panel, metal: 'aluminium-zinc coated steel', punched: true }, plywood], {
      surroundings: { saltWater_ft: 2000, place: 'rural' },
    }),
    rule: 'metal',
    because: 'short-lived within 3000 ft',
  },
  {
    name: 'plated screws in copper-treated wood',
    item: 'PW10-150K',
    setting: setting('panel', [panel, { ...lumber, treatment: 'copper' }]),
    rule: 'treated wood',
    because: 'hot-dip zinc (ASTM A153) or stainless',
  },
  {
    name: 'a colour that is not stocked',
    item: 'PW10-150K',
    setting: { ...panelOnLumber, colour: 'signal orange' },
    rule: 'colour',
    because: 'not stocked in signal orange',
  },
  {
    name: 'a drill point in plywood',
    item: 'CS10-150K',
    setting: clipOnPly,
    rule: 'point',
    because: 'reams the wood',
  },
  {
    name: 'a sharp point in a purlin',
    item: 'CW10-150K',
    setting: clipOnPurlin,
    rule: 'point',
    because: 'does not start in 0.057 in',
  },
  {
    name: 'more steel than the point clears',
    item: 'CS10-150K',
    setting: setting('clip', [base, steel(0.19)]),
    rule: 'drilling',
    because: 'its point clears 0.1 in; this build-up has 0.19 in of metal to drill',
  },
  {
    name: 'steel too thin for the point',
    item: 'CH12-150K',
    setting: clipOnPurlin,
    rule: 'drilling',
    because: 'made for 0.15 in of metal and more',
  },
  {
    name: 'insulation between two drilled sheets',
    item: 'PS12-200K',
    setting: setting('panel', [
      panel,
      { kind: 'soft', role: 'insulation', name: 'foam', thickness_in: 1, compressiveStrength_psi: undefined },
      steel(0.0713),
    ]),
    rule: 'drilling',
    because: 'must pass 1.095 in of metal and gaps before the thread bites',
  },
  {
    name: 'coarse thread in heavy steel',
    item: 'CT12-150K',
    setting: setting('clip', [base, steel(0.2)]),
    rule: 'thread pitch',
    because: 'wants 20 threads to the inch or more, this has 14',
  },
  {
    name: 'a screw too short for the deck',
    item: 'CW10-100K',
    setting: setting('clip', [base, { ...plywood, thickness_in: 0.9 }]),
    rule: 'reach',
    because: 'a quarter inch is wanted',
  },
  {
    name: 'more sheet than a lap screw clears',
    item: 'LS12-075K',
    setting: setting('stitch', [panel, steel(0.06)], {}),
    rule: 'drilling',
    because: 'its point clears 0.07 in',
  },
  {
    name: 'less than an inch of thread in lumber',
    item: 'PW10-100K',
    setting: panelOnLumber,
    rule: 'thread in holding ply',
    because: 'an inch is usual',
  },
  {
    name: 'a point that would show',
    item: 'CW10-150K',
    setting: { ...clipOnPly, inView: true },
    rule: 'shows below',
    because: 'below, and this deck is in view',
  },
  {
    name: 'a screw far too long',
    item: 'CW10-300K',
    setting: setting('clip', [base, { ...plywood, thickness_in: 0.4 }]),
    rule: 'too long',
    because: 'a shorter one does',
  },
  {
    name: 'a rivet whose grip is too short',
    item: 'RV42A',
    setting: setting('rivet', [steel(0.08, 'trim'), steel(0.08, 'second sheet')]),
    rule: 'grip',
    because: 'it grips 0.02 in to 0.125 in; the sheets are 0.16 in',
  },
];

describe('the first thing that rules an item out, with its numbers', () => {
  for (const row of rows)
    test(row.name, () => {
      const ruling = ruleOut(item(row.item), row.setting);
      expect(ruling?.rule).toBe(row.rule);
      expect(ruling?.because).toContain(row.because);
    });
});

describe('what a specialist would take is not ruled out', () => {
  const good: readonly [string, string, Setting][] = [
    ['a number 10-13 sharp pancake head for clips on plywood', 'CW10-100K', clipOnPly],
    ['a number 10-16 drill point pancake head for clips on light steel', 'CS10-125K', clipOnPurlin],
    ['a number 12-24 for heavy steel', 'CH12-150K', setting('clip', [base, steel(0.25)])],
    ['a type 17 washer screw for panels on lumber', 'PW10-150K', panelOnLumber],
    [
      'stainless by the sea on aluminium',
      'PW10-150S',
      setting('panel', [{ ...panel, family: 'aluminium', metal: 'aluminium' }, lumber], {
        surroundings: { saltWater_ft: 500, place: 'rural' },
      }),
    ],
    [
      'hot-dip zinc in copper-treated wood',
      'PW12-150G',
      setting('panel', [panel, { ...lumber, treatment: 'copper' }]),
    ],
    [
      'a lap screw for two thin sheets',
      'LS12-075K',
      setting('stitch', [panel, { ...panel, role: 'second sheet' }]),
    ],
    [
      'a stainless 4-3 rivet for trims',
      'RV43S',
      setting('rivet', [panel, { ...panel, role: 'second sheet' }]),
    ],
    [
      'a screw through a deck in view that ends in it',
      'CW10-100K',
      setting('clip', [base, { ...plywood, thickness_in: 1.2 }], { inView: true }),
    ],
  ];
  for (const [name, id, at] of good) test(name, () => expect(ruleOut(item(id), at)).toBeUndefined());
});

// Common practice with no source, as the trade states it.
describe('common practice on the shelf', () => {
  const screws = items.filter((one): one is Screw => one.kind === 'screw');
  test('exposed panel screws have hex washer heads with a bonded EPDM washer', () => {
    const exposed = screws.filter(
      (one) =>
        ruleOut(one, panelOnLumber) === undefined ||
        ruleOut(one, setting('panel', [panel, steel(0.06)])) === undefined,
    );
    expect(exposed.length).toBeGreaterThan(5);
    for (const one of exposed) expect([one.head.form, one.washer?.rubber]).toEqual(['hex washer', 'EPDM']);
  });
  test('above number 10, 12 and 14 (about 1/4 in) serve clips', () => {
    expect(
      new Set(
        screws
          .filter((one) => one.head.form === 'pancake' || one.head.form === 'low profile')
          .map((one) => one.size),
      ),
    ).toEqual(new Set(['#10', '#12', '#14', '1/4']));
  });
  test('a small roofing screw breaks at about 70 in-lb; the least for a number 10 is a little lower', () => {
    for (const one of screws.filter(({ size }) => size === '#10')) {
      expect(one.torsion?.value).toBeGreaterThanOrEqual(55);
      expect(one.torsion?.value).toBeLessThan(70);
    }
  });
  test('thicker steel wants finer threads', () => {
    const threads = (thickness: number) =>
      Math.min(
        ...screws
          .filter((one) => ruleOut(one, setting('clip', [base, steel(thickness)])) === undefined)
          .map((one) => one.threadsPerInch),
      );
    expect(threads(0.0566)).toBeLessThan(threads(0.25));
  });
});
