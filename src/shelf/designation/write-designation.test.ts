import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Item, item, type Nail, type Rivet, type Screw } from '../item.ts';
import { readShelf } from '../read-shelf.ts';
import { readDesignation } from './read-designation.ts';
import { type DesignationValues, designationValues } from './reading.ts';
import { writeDesignation } from './write-designation.ts';

type Written = Screw | Nail | Rivet;

const shelf = readShelf(
  JSON.parse(readFileSync(new URL('../../../demo/shelf.json', import.meta.url), 'utf8')),
);
const items: readonly Item[] = shelf.ok ? shelf.value.items : [];
const isWritten = (one: Item): one is Written =>
  one.kind === 'screw' || one.kind === 'nail' || one.kind === 'rivet';
const written = items.filter(isWritten);

const washerValues = (washer: Screw['washer']): Partial<DesignationValues> =>
  washer
    ? {
        washer: washer.rubber === 'EPDM' ? 'bonded' : 'metal',
        washerDiameter_in: washer.metalDiameter,
        washerThickness_in: washer.metalThickness,
        washerShape: washer.shape,
        washerMetal: washer.metal,
        washerRubber: washer.rubber,
      }
    : {};

/** What a reading of the item must hold; the name of the diameter is the writer's to choose. */
function fieldsOf(one: Written): Partial<DesignationValues> {
  const common = { metal: one.metal, coating: one.coating, diameter_in: one.diameter };
  if (one.kind === 'nail') return { ...common, length_in: one.length, shank: one.shank };
  if (one.kind === 'rivet')
    return { ...common, gripFrom_in: one.gripFrom, gripTo_in: one.gripTo, sealed: one.sealed };
  return {
    ...common,
    threadsPerInch: one.threadsPerInch,
    length_in: one.length,
    pointForm: one.point.form,
    ...(one.point.number === undefined ? {} : { pointNumber: one.point.number }),
    head: one.head.form,
    drive: one.drive,
    ...washerValues(one.washer),
  };
}

function expectSameFields(one: Written): void {
  const text = writeDesignation(one);
  const read = readDesignation(text);
  const { diameterName, ...values } = designationValues(read);
  expect(values, text).toEqual(fieldsOf(one));
  expect(read.kind).toBe(one.kind);
  expect([...read.doubts, ...read.leftovers.map((piece) => piece.text)], text).toEqual([]);
  expect(diameterName).toBeTypeOf('string');
  if (one.kind === 'screw') expect(diameterName).toBe(one.size);
}

describe('the demonstration shelf', () => {
  test('has screws, nails and rivets to write', () => {
    expect(new Set(written.map((one) => one.kind))).toEqual(new Set(['screw', 'nail', 'rivet']));
    expect(written.length).toBeGreaterThan(150);
  });
  for (const one of written)
    test(`${one.id}: reading what was written gives the same fields back`, () => expectSameFields(one));

  test('descriptions of the maker are read without doubt or leftover', () => {
    const unread = written.flatMap(({ designation }) => {
      const { doubts, leftovers } = readDesignation(designation);
      return doubts.length + leftovers.length > 0 ? [{ designation, doubts, leftovers }] : [];
    });
    expect(unread).toEqual([]);
  });

  test("a maker's description agrees with the item it describes", () => {
    for (const one of written) {
      const { diameterName, gripTo_in, diameter_in, ...values } = designationValues(
        readDesignation(one.designation),
      );
      expect(fieldsOf(one), one.designation).toMatchObject(
        Object.fromEntries(
          Object.entries(values).filter(([name]) =>
            [
              'length_in',
              'threadsPerInch',
              'pointForm',
              'pointNumber',
              'head',
              'shank',
              'metal',
              'coating',
              'washerDiameter_in',
            ].includes(name),
          ),
        ),
      );
      // 5/32 stands on the shelf as 0.1563, rounded to four figures.
      expect(Math.abs((diameter_in ?? 0) - one.diameter), one.designation).toBeLessThanOrEqual(0.00005);
      if (one.kind === 'rivet') expect(gripTo_in).toBe(one.gripTo);
      expect(diameterName).toBeDefined();
    }
  });
});

// Any item the schema takes; sizes as people give them: parts of 1/64 in, or four decimals.
const size = (least: number, most: number) =>
  fc.oneof(
    fc.integer({ min: Math.ceil(least * 64), max: Math.floor(most * 64) }).map((n) => n / 64),
    fc.integer({ min: Math.ceil(least * 10_000), max: Math.floor(most * 10_000) }).map((n) => n / 10_000),
    fc.integer({ min: Math.ceil(least * 254), max: Math.floor(most * 254) }).map((n) => n / 10 / 25.4),
  );
const inches = (value: number): string => `${value} in`;
const metal = fc.constantFrom(...item.options[0].shape.metal.options);
const coating = fc.constantFrom(...item.options[0].shape.coating.options);
const washer = fc.record({
  metalDiameter: size(0.25, 2).map(inches),
  metalThickness: size(0.02, 0.15).map(inches),
  shape: fc.constantFrom('flat', 'domed'),
  metal,
  rubber: fc.constantFrom('EPDM', 'none'),
});
const drive = fc.constantFrom(
  'No. 1 square bit',
  'No. 2 square bit',
  'No. 3 square bit',
  '1/4 in hex socket',
  '5/16 in hex socket',
  '3/8 in hex socket',
  'six-lobe 25 bit',
  'No. 2 cross recess bit',
);
const shared = { id: 'X1', designation: 'any', pack: 1, price: 1, weight: '0.01 lbf' };

const screws = fc
  .record({
    metal,
    coating,
    diameter: size(0.06, 0.9),
    number: fc.option(fc.integer({ min: 0, max: 16 }), { nil: undefined }),
    threads: fc.oneof(fc.integer({ min: 8, max: 40 }), size(8, 40)),
    length: size(0.1, 39),
    form: fc.constantFrom('drill', 'sharp', 'gimlet', 'type 17', 'chip-free'),
    pointNumber: fc.integer({ min: 1, max: 5 }),
    head: fc.constantFrom('pancake', 'low profile', 'hex washer', 'flat', 'round washer', 'pan'),
    washer: fc.option(washer, { nil: undefined }),
    drive,
  })
  .map((of) => ({
    ...shared,
    kind: 'screw',
    metal: of.metal,
    coating: of.coating,
    size: of.number === undefined ? 'own' : `#${of.number}`,
    diameter: inches(of.number === undefined ? of.diameter : Math.round(60 + 13 * of.number) / 1000),
    rootDiameter: '0.05 in',
    threadsPerInch: `${of.threads} tpi`,
    length: inches(of.length),
    threadLength: '0.1 in',
    point: {
      form: of.form,
      ...(of.form === 'drill' ? { number: of.pointNumber } : {}),
      length: '0.1 in',
      drillsFrom: '0 in',
      drillsTo: '0.1 in',
    },
    head: { form: of.head, bearingDiameter: '0.4 in', height: '0.1 in' },
    ...(of.washer ? { washer: of.washer } : {}),
    drive: of.drive,
  }));
const nails = fc
  .record({
    metal,
    coating,
    diameter: size(0.05, 0.3),
    length: size(0.5, 10),
    shank: fc.constantFrom('smooth', 'ring'),
  })
  .map((of) => ({
    ...shared,
    ...of,
    kind: 'nail',
    diameter: inches(of.diameter),
    length: inches(of.length),
    ringLength: '0 in',
    headDiameter: '0.3 in',
  }));
const rivets = fc
  .record({
    metal,
    coating,
    diameter: size(0.06, 0.4),
    gripFrom: size(0, 0.5),
    more: size(0.01, 1),
    sealed: fc.boolean(),
  })
  .map((of) => ({
    ...shared,
    kind: 'rivet',
    metal: of.metal,
    coating: of.coating,
    sealed: of.sealed,
    diameter: inches(of.diameter),
    gripFrom: inches(of.gripFrom),
    gripTo: inches(of.gripFrom + of.more),
    hole: { from: '0.1 in', to: '0.2 in', drill: 'No. 30' },
    headDiameter: '0.3 in',
  }));

describe('any item the catalogue takes', () => {
  for (const [name, any] of [
    ['screw', screws],
    ['nail', nails],
    ['rivet', rivets],
  ] as const)
    test(`a ${name} comes back with the same fields`, () => {
      fc.assert(
        fc.property(any, (document) => {
          const one = item.parse(document);
          if (!isWritten(one)) throw new Error('not one of the three');
          const text = writeDesignation(one);
          const read = readDesignation(text);
          const { diameterName: _name, ...values } = designationValues(read);
          expect(values, text).toEqual(fieldsOf(one));
          expect([...read.doubts, ...read.leftovers.map((piece) => piece.text)], text).toEqual([]);
        }),
        { numRuns: 400, seed: 11 },
      );
    });
});
