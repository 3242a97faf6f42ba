import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BuildUp, SheetPly, WoodPly } from '../connections/ply.ts';
import { basisOf } from '../job/basis.ts';
import { job } from '../job/job.ts';
import type { ItemOf } from '../shelf/item.ts';
import { readShelf } from '../shelf/read-shelf.ts';
import { clipUplift, rivetTension, screwTension } from './fastener-strength.ts';
import { holdingCapacity } from './holding.ts';
import { type LinkContext, linkContext } from './link-context.ts';
import { pryingOf } from './prying.ts';
import { pullOverCapacity } from './pull-over.ts';
import { seatedThread } from './seating.ts';

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../demo/${name}.json`, import.meta.url), 'utf8'));
const shelf = readShelf(read('shelf'));
const items = shelf.ok ? shelf.value.items : [];
const item = <K extends 'screw' | 'clip' | 'rivet'>(kind: K, id: string): ItemOf<K> =>
  items.find((one): one is ItemOf<K> => one.kind === kind && one.id === id) as ItemOf<K>;
const context = (basis: object): LinkContext => {
  const document = job.parse({ ...read('b-long-hall'), basis });
  return linkContext(document, basisOf(document), { clip: undefined, plate: undefined }, items);
};
const asd = context({ codeYear: 'IBC 2021' });
const lrfd = context({ codeYear: 'IBC 2021', method: 'LRFD' });
const newer = context({ codeYear: 'IBC 2024' });

const steel = (thickness: number): SheetPly => ({
  kind: 'sheet',
  role: 'purlin',
  name: 'purlin',
  family: 'steel',
  metal: 'galvanized steel',
  thickness_in: thickness,
  Fu_psi: 65_000,
  Fy_psi: 50_000,
  ductility: 'normal',
  punched: false,
});
const base: SheetPly = { ...steel(0.0566), role: 'clip base', punched: true };
const on = (holding: SheetPly | WoodPly): BuildUp => ({ plies: [base, holding], holding: 1 });
const spf: WoodPly = {
  kind: 'wood',
  role: 'purlin',
  name: 'wood purlin',
  product: 'lumber',
  thickness_in: 1.5,
  specificGravity: 0.42,
  moisture: 'dry',
  treatment: 'none',
};

describe('prying of a one-sided clip', () => {
  test('is (e + b) / b from its own dimensions', () => {
    expect(pryingOf(item('clip', 'CL200TW'))).toBeCloseTo((0.45 + 1.4) / 1.4, 12);
  });
  test('is not known, and not 1, when the dimensions are not', () => {
    expect(pryingOf(item('clip', 'CL300T'))).toBeUndefined();
  });
});

describe('thread in the holding ply', () => {
  test('a 7/16 in deck never counts more than 7/16 in', () => {
    for (const length of [1, 2, 5])
      expect(
        seatedThread(
          { length: length as never, threadLength: length as never, point: { length: 0.2 } as never },
          0.05,
          0.4375,
        ),
      ).toBeLessThanOrEqual(0.4375);
  });
  test('the unthreaded tip and the unthreaded shank do not count', () => {
    // 2 in screw, 1 in of thread from the tip, tip 0.2 in, under 0.5 in of plies: thread lies from 1.0 to 1.8 in, wood from 0.5 to 2.0.
    expect(
      seatedThread(
        { length: 2 as never, threadLength: 1 as never, point: { length: 0.2 } as never },
        0.5,
        1.5,
      ),
    ).toBeCloseTo(0.8, 12);
  });
  test('number 10 in 54 mil of 65 ksi steel, S100-16: 594.2 / 3 = 198 lb (association table, computed)', () => {
    expect(holdingCapacity(item('screw', 'CS10-125K'), on(steel(0.0566)), asd).value).toBeCloseTo(198, 0);
  });
  test('LRFD is half the nominal, ASD a third', () => {
    const [a, l] = [asd, lrfd].map(
      (one) => holdingCapacity(item('screw', 'CS10-125K'), on(steel(0.0566)), one).value as number,
    );
    expect((l as number) / (a as number)).toBeCloseTo(1.5, 9);
  });
  test('the 2022 supplement changes the value as its factor and safety factor say', () => {
    const [old, recent] = [asd, newer].map(
      (one) => holdingCapacity(item('screw', 'CS10-125K'), on(steel(0.0566)), one).value as number,
    );
    expect((recent as number) / (old as number)).toBeCloseTo((1.63 * 0.0566 ** 0.18 * 3) / 2.8, 3);
  });
  test('number 10, an inch and a quarter of thread in SPF: 2850 G² D × 1.6 × p', () => {
    const screw = item('screw', 'CW10-150K');
    const p = seatedThread(screw, 0.0566, 1.5);
    expect(holdingCapacity(screw, on(spf), asd).value).toBeCloseTo(2850 * 0.42 ** 2 * 0.19 * 1.6 * p, 6);
  });
  test('an own test in the very substrate goes before the equation', () => {
    const ply: WoodPly = { ...spf, product: 'plywood', role: 'deck', thickness_in: 0.46875 };
    const capacity = holdingCapacity(item('screw', 'CW10-150K'), on(ply), asd);
    expect([capacity.evidence, capacity.value]).toEqual(['own test', 306 / 4]);
    expect(holdingCapacity(item('screw', 'CW10-150K'), on({ ...ply, thickness_in: 0.5 }), asd).evidence).toBe(
      'equation of a standard',
    );
  });
  test('a scattered test is reduced by its statistics, a test of two pulls is not used', () => {
    const ply: WoodPly = { ...spf, product: 'plywood', role: 'deck', thickness_in: 0.46875 };
    const screw = item('screw', 'CW10-150K');
    const [own] = screw.tests;
    const withTest = (change: object) =>
      holdingCapacity({ ...screw, tests: [{ ...own, ...change }] as never }, on(ply), asd);
    expect(withTest({ coefficientOfVariation: 0.5 }).value as number).toBeLessThan(306 / 4);
    expect(withTest({ safetyFactor: 1 }).value as number).toBeLessThan(306 / 1.6);
    expect(withTest({ n: 2 }).evidence).toBe('equation of a standard');
  });
  test('thicker steel never holds less, in either edition', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.018, max: 0.19, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        fc.constantFrom(asd, newer),
        (t, more, one) => {
          const [thin, thick] = [t, t + more].map(
            (thickness) =>
              holdingCapacity(item('screw', 'CS10-200K'), on(steel(thickness)), one).value as number,
          );
          expect(thick).toBeGreaterThanOrEqual((thin as number) - 1e-9);
        },
      ),
    );
  });
  test('wood of unknown gravity, and steel of unknown strength, hold nothing known', () => {
    expect(
      holdingCapacity(item('screw', 'CW10-150K'), on({ ...spf, specificGravity: undefined }), asd).because,
    ).toContain('specific gravity');
    expect(
      holdingCapacity(item('screw', 'CS10-125K'), on({ ...steel(0.0566), Fu_psi: undefined }), asd).because,
    ).toContain('not known');
  });
  test('copper and zinc sheet have no standard here: unproven', () => {
    expect(
      holdingCapacity(item('screw', 'CS10-125K'), on({ ...steel(0.03), family: 'copper' }), asd).value,
    ).toBeUndefined();
  });
});

describe('head over sheet', () => {
  const panel = (thickness: number, ductility: SheetPly['ductility'], Fu: number): BuildUp => ({
    plies: [{ ...steel(thickness), role: 'panel', Fu_psi: Fu, ductility }, spf],
    holding: 1,
  });
  test('a pull on one side of the head counts half', () => {
    const [round, half] = [false, true].map(
      (oneSided) =>
        pullOverCapacity(item('screw', 'PW12-150K'), panel(0.0239, 'normal', 65_000), oneSided, asd)
          ?.value as number,
    );
    expect(half).toBeCloseTo((round as number) / 2, 9);
  });
  test('a washer too thin for the sheet does not count; the head alone does', () => {
    // A 0.04 in washer counts on sheet up to 0.027 in, not on 22 gauge: 1.5 · 0.0299 · 0.384 · 65000 / 3.
    const value = pullOverCapacity(
      item('screw', 'PW10-150K'),
      panel(0.0299, 'normal', 65_000),
      false,
      asd,
    )?.value;
    expect(value).toBeCloseTo((1.5 * 0.0299 * 0.384 * 65_000) / 3, 6);
  });
  test('grade 80 counts 61.5 ksi, not 82', () => {
    const [full, reduced] = [
      ['normal', 82_000],
      ['grade 80', 82_000],
    ].map(
      ([ductility, Fu]) =>
        pullOverCapacity(
          item('screw', 'PW12-150K'),
          panel(0.0135, ductility as 'normal', Fu as number),
          false,
          asd,
        )?.value as number,
    );
    expect((reduced as number) / (full as number)).toBeCloseTo(61.5 / 82, 9);
  });
});

describe('strength of the parts themselves', () => {
  test('screw in tension: nominal over 3', () =>
    expect(screwTension(item('screw', 'CS10-125K'), asd).value).toBeCloseTo(1158 / 3, 9));
  test('a screw without a strength is unproven', () => {
    const { tension: _, ...bare } = item('screw', 'CS10-125K');
    expect(screwTension(bare, asd).value).toBeUndefined();
  });
  test('clip: tested strength over its factor; no clip and no test are unproven', () => {
    expect(clipUplift(item('clip', 'CL200TW'), asd).value).toBeCloseTo(1480 / 2.5, 9);
    expect(clipUplift(undefined, asd).value).toBeUndefined();
    expect(clipUplift(item('clip', 'CL100C'), asd).value).toBeUndefined();
  });
  test('rivet: least tension over 3', () =>
    expect(rivetTension(item('rivet', 'RV43S'), asd).value).toBeCloseTo(530 / 3, 9));
});
