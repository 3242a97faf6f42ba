import { describe, expect, test } from 'vitest';
import { inch, perInch, psi } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { available as available2015 } from '../adm-2015/available.ts';
import { adm2015 } from '../adm-2015/edition.ts';
import { available } from './available.ts';
import { adm2010 } from './edition.ts';
import { pullOver } from './j.5.5.2-pull-over.ts';

const ksi = (value: number) => psi(value * 1000);

describe('pull-over, ADM 2010 J.5.5.2 (memory)', () => {
  // Computed from the recalled formula by an independent program; to 0.1 lb.
  for (const { alloy, place, t1, Dws, Dh, Ftu, Rn, ASD } of [
    { alloy: '3003-H14', place: 'valley', t1: 0.032, Dws: 0.5, Dh: 0.216, Ftu: 20, Rn: 181.8, ASD: 60.6 },
    { alloy: '3003-H14', place: 'crest', t1: 0.032, Dws: 0.5, Dh: 0.216, Ftu: 20, Rn: 127.2, ASD: 42.4 },
    { alloy: '3004-H34', place: 'crest', t1: 0.04, Dws: 0.625, Dh: 0.25, Ftu: 32, Rn: 336, ASD: 112 },
    {
      alloy: '3105-H25, 3/4 in washer',
      place: 'valley',
      t1: 0.04,
      Dws: 0.75,
      Dh: 0.25,
      Ftu: 23,
      Rn: 345,
      ASD: 115,
    },
  ] as const)
    test(`${alloy}, ${place}: ${Rn} lb`, () => {
      const sheet = { place, t1: inch(t1), Dh: inch(Dh), Ftu1: ksi(Ftu) };
      expect(Math.abs(Number(pullOver({ ...sheet, Dws: inch(Dws) })) - Rn)).toBeLessThanOrEqual(0.06);
      const value = adm2010.pullOver({ ...sheet, Dw: inch(Dws), Fty1: ksi(17) }, 'ASD');
      expect(Math.abs(Number(value) - ASD)).toBeLessThanOrEqual(0.06);
    });

  const sheet = { t1: inch(0.032), Dw: inch(0.5), Dh: inch(0.216), Ftu1: ksi(20), Fty1: ksi(17) };
  test('a place that is not stated is taken as the crest', () => {
    expect(adm2010.pullOver(sheet, 'ASD')).toBe(adm2010.pullOver({ ...sheet, place: 'crest' }, 'ASD'));
  });
  test('a head no wider than its hole, or a sheet without thickness, is refused', () => {
    const head = adm2010.pullOver({ ...sheet, Dw: inch(0.216) }, 'ASD');
    const none = adm2010.pullOver({ ...sheet, t1: inch(0) }, 'ASD');
    expect([isRefusal(head) && head.input, isRefusal(none) && none.input]).toEqual(['Dws', 't1']);
  });

  test('pull-out and shear read as in 2015 but cite 2010', () => {
    const trace: Trace = [];
    const member = { Le: inch(0.125), Fty2: ksi(25), Ftu2: ksi(30) };
    const screw = { D: inch(0.216), n: perInch(14), ...member };
    expect(adm2010.pullOut(screw, 'ASD', trace)).toBe(adm2015.pullOut(screw, 'ASD'));
    expect(adm2010.pullOut({ ...screw, D: inch(0.25), n: perInch(20) }, 'ASD', trace)).toBeCloseTo(312.5, 9);
    const lap = { t1: inch(0.05), t2: inch(0.05), D: inch(0.25), Ftu1: ksi(31), Ftu2: ksi(31) };
    expect(adm2010.shear(lap, 'ASD', trace)).toBe(adm2015.shear(lap, 'ASD'));
    expect(trace.length).toBeGreaterThan(6);
    expect(trace.filter((step) => !step.clause.startsWith('ADM 2010'))).toEqual([]);
  });

  test('a strength of 2010 does not compile into the factors of 2015', () => {
    const nominal = pullOver({
      place: 'valley',
      t1: inch(0.032),
      Dws: inch(0.5),
      Dh: inch(0.216),
      Ftu1: ksi(20),
    });
    if (isRefusal(nominal)) throw new Error('refused');
    // @ts-expect-error ADM 2010 strength, ADM 2015 factor
    expect(available2015(nominal, 'ASD')).toBe(available(nominal, 'ASD'));
  });
});
