import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inch, lbf, perInch, psi } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { adm2010Clauses } from '../adm-2010/clause-list.ts';
import { available } from './available.ts';
import { adm2015Clauses } from './clause-list.ts';
import { adm2015 } from './edition.ts';
import { minimumEdgeDistance, minimumSpacing } from './j.5.1-spacing.ts';
import { pullOutSpaced } from './j.5.5.1-pull-out-spaced.ts';
import { machineThread, pullOutUNC } from './j.5.5.1-pull-out-unc.ts';
import { pullOver, pullOverCountersunk } from './j.5.5.2-pull-over.ts';
import { screwStrength } from './j.5.6.3-screw-strength.ts';
import { shear } from './j.5.6-shear.ts';
import { threadStrippingArea } from './tir-a9-thread-area.ts';

/** Printed to 0.1 lb. */
const within = (value: unknown, printed: number): void =>
  expect(Math.abs(Number(value) - printed)).toBeLessThanOrEqual(0.06);
const ksi = (value: number) => psi(value * 1000);

// All formulas of J.5 are recalled; the numbers are computed from them by an independent program.
describe('pull-out, spaced threads, ADM 2015 J.5.5.1 (memory)', () => {
  const rows = [
    { alloy: '6063-T5', D: 0.216, n: 14, Le: 0.063, Fty: 16, Ftu: 22, Rn: 219.9, ASD: 73.3 },
    { alloy: '6063-T6', D: 0.216, n: 14, Le: 0.125, Fty: 25, Ftu: 30, Rn: 810, ASD: 270 },
    { alloy: '6061-T6', D: 0.25, n: 14, Le: 0.125, Fty: 35, Ftu: 42, Rn: 1312.5, ASD: 437.5 },
    { alloy: '6063-T6', D: 0.25, n: 14, Le: 0.1875, Fty: 25, Ftu: 30, Rn: 1828.1, ASD: 609.4 },
    { alloy: '6063-T6', D: 0.25, n: 14, Le: 0.3125, Fty: 25, Ftu: 30, Rn: 3820.3, ASD: 1273.4 },
    { alloy: '3003-H14', D: 0.19, n: 16, Le: 0.05, Fty: 17, Ftu: 20, Rn: 163.1, ASD: 54.4 },
    { alloy: '5052-H32', D: 0.216, n: 14, Le: 0.08, Fty: 23, Ftu: 31, Rn: 476.9, ASD: 159 },
  ];
  for (const row of rows)
    test(`${row.alloy}, ${row.D} in screw, ${row.Le} in engaged: ${row.Rn} lb`, () => {
      const member = { Le: inch(row.Le), Fty2: ksi(row.Fty), Ftu2: ksi(row.Ftu) };
      const values = { D: inch(row.D), n: perInch(row.n), ...member };
      within(pullOutSpaced(values), row.Rn);
      within(adm2015.pullOut(values, 'ASD'), row.ASD);
    });

  const screw = { D: inch(0.25), n: perInch(14), Le: inch(0.125), Fty2: ksi(25), Ftu2: ksi(30) };
  test('it does not jump at 2/n and hardly at 4/n', () => {
    for (const Le of [2 / 14, 4 / 14]) {
      const at = (length: number) => Number(pullOutSpaced({ ...screw, Le: inch(length) }));
      expect(Math.abs(at(Le * (1 + 1e-9)) / at(Le * (1 - 1e-9)) - 1)).toBeLessThan(1e-6);
    }
  });
  test('more thread engaged never holds less', () => {
    const Le = fc.double({ min: 0.038, max: 0.375, noNaN: true });
    fc.assert(
      fc.property(Le, Le, (a, b) => {
        const at = (length: number) => Number(pullOutSpaced({ ...screw, Le: inch(length) }));
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)) * (1 - 1e-12));
      }),
    );
  });
  for (const [name, change, input] of [
    ['0.0379 in engaged', { Le: inch(0.0379) }, 'Le'],
    ['0.376 in engaged', { Le: inch(0.376) }, 'Le'],
    ['a #6 screw', { D: inch(0.138) }, 'D'],
    ['a 5/16 in screw', { D: inch(0.3125) }, 'D'],
    ['24 threads per inch', { n: perInch(24) }, 'n'],
    ['no yield strength', { Fty2: ksi(0) }, 'Fty2'],
  ] as const)
    test(`${name} is refused`, () => {
      const outcome = pullOutSpaced({ ...screw, ...change });
      expect(isRefusal(outcome) && outcome.input).toBe(input);
    });
});

describe('pull-out, machine threads, ADM 2015 J.5.5.1 (memory)', () => {
  for (const { alloy, Le, Fty, Ftu, Rn, ASD } of [
    { alloy: '6063-T6', Le: 0.125, Fty: 25, Ftu: 30, Rn: 937.5, ASD: 312.5 },
    { alloy: '6063-T6', Le: 0.1875, Fty: 25, Ftu: 30, Rn: 1641.1, ASD: 547 },
    { alloy: '6061-T6', Le: 0.25, Fty: 35, Ftu: 42, Rn: 3282.5, ASD: 1094.2 },
  ])
    test(`${alloy}, 1/4-20, ${Le} in engaged: ${Rn} lb`, () => {
      const member = { Le: inch(Le), Fty2: ksi(Fty), Ftu2: ksi(Ftu) };
      within(pullOutUNC({ thread: '1/4-20', ...member }), Rn);
      within(adm2015.pullOut({ D: inch(0.25), n: perInch(20), ...member }, 'ASD'), ASD);
    });
  test('an edition knows machine threads by diameter and pitch', () => {
    expect([machineThread(0.19, 24), machineThread(0.216, 24), machineThread(0.25, 20)]).toEqual([
      '10-24',
      '12-24',
      '1/4-20',
    ]);
    expect([machineThread(0.19, 16), machineThread(0.25, 14), machineThread(0.138, 20)]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
  test('0.0599 and 0.376 in engaged are refused', () => {
    for (const Le of [0.0599, 0.376]) {
      const outcome = pullOutUNC({ thread: '10-24', Le: inch(Le), Fty2: ksi(25), Ftu2: ksi(30) });
      expect(isRefusal(outcome) && outcome.input).toBe('Le');
    }
  });
  // AAMA TIR-A9 area formula published; limits of thread class 2 put in; 0.02695 in² a thread, 0.539 an inch.
  test('the stripping area of 1/4-20 is that of the area formula of AAMA TIR-A9 (computed)', () => {
    const area = threadStrippingArea({ DSmin: inch(0.2408), ENmax: inch(0.2224), N: perInch(20) });
    expect(Math.abs(Number(area) - 0.02695)).toBeLessThanOrEqual(0.000006);
    expect(Math.abs(20 * Number(area) - 0.539)).toBeLessThanOrEqual(0.0006);
  });
});

describe('pull-over, ADM 2015 J.5.5.2 (memory)', () => {
  for (const { alloy, t1, Dw, Fty, Rn, ASD } of [
    { alloy: '3003-H14', t1: 0.032, Dw: 0.415, Fty: 17, Rn: 255.4, ASD: 85.1 },
    { alloy: '3003-H14', t1: 0.04, Dw: 0.415, Fty: 17, Rn: 328.4, ASD: 109.5 },
    { alloy: '5052-H32', t1: 0.05, Dw: 0.5, Fty: 23, Rn: 672.8, ASD: 224.2 },
    { alloy: '3004-H34', t1: 0.04, Dw: 0.625, Fty: 25, Rn: 693, ASD: 231 },
    { alloy: '3105-H25', t1: 0.032, Dw: 0.5, Fty: 19, Rn: 337.1, ASD: 112.4 },
    { alloy: '6063-T6', t1: 0.0625, Dw: 0.4, Fty: 25, Rn: 791, ASD: 263.7 },
  ])
    test(`${alloy} ${t1} in under ${Dw} in: ${Rn} lb`, () => {
      const sheet = { t1: inch(t1), Dw: inch(Dw), Fty1: ksi(Fty) };
      within(pullOver({ ...sheet, D: inch(0.216) }), Rn);
      within(adm2015.pullOver({ ...sheet, Dh: inch(0.216), Ftu1: ksi(Fty) }, 'ASD'), ASD);
    });
  const values = { t1: inch(0.04), Dw: inch(0.625), D: inch(0.25), Fty1: ksi(19) };
  test('a washer above 5/8 in counts as 5/8 in, the cap of the editions before', () => {
    expect(pullOver({ ...values, Dw: inch(0.9) })).toBe(pullOver(values));
  });
  test('a head no wider than the screw, and sheet thicker than half the head, are refused', () => {
    const small = pullOver({ ...values, Dw: inch(0.25) });
    const thick = pullOver({ ...values, t1: inch(0.32) });
    expect([isRefusal(small) && small.input, isRefusal(thick) && thick.input]).toEqual(['Dw', 't1/Dw']);
  });
  test('a countersunk head: (0.27 + 1.45 t1/D) D t1 Fty1 inside its limits only', () => {
    const sunk = (t1: number, D = 0.25) => pullOverCountersunk({ t1: inch(t1), D: inch(D), Fty1: ksi(25) });
    expect(sunk(0.1)).toBeCloseTo((0.27 + 0.58) * 0.25 * 0.1 * 25_000, 9);
    for (const [t1, D, input] of [
      [0.0599, 0.25, 't1'],
      [0.19, 0.25, 't1'],
      [0.185, 0.164, 't1/D'],
    ] as const) {
      const outcome = sunk(t1, D);
      expect(isRefusal(outcome) && outcome.input).toBe(input);
    }
  });
});

describe('shear, ADM 2015 J.5.6 (memory)', () => {
  for (const { t1, t2, D, Ftu1, Ftu2, Rn, by } of [
    { t1: 0.04, t2: 0.063, D: 0.216, Ftu1: 20, Ftu2: 22, Rn: 345.6, by: 'bearing under the head' },
    { t1: 0.05, t2: 0.05, D: 0.25, Ftu1: 31, Ftu2: 31, Rn: 727.8, by: 'tilting' },
    { t1: 0.125, t2: 0.063, D: 0.25, Ftu1: 30, Ftu2: 22, Rn: 693, by: 'bearing away from the head' },
  ])
    test(`${t1} in on ${t2} in: ${Rn} lb, ${by}`, () => {
      const values = { t1: inch(t1), t2: inch(t2), D: inch(D), Ftu1: ksi(Ftu1), Ftu2: ksi(Ftu2) };
      within(shear(values), Rn);
      within(adm2015.shear(values, 'LRFD'), Rn / 2);
    });
  const values = { t1: inch(0.04), t2: inch(0.063), D: inch(0.216), Ftu1: ksi(20), Ftu2: ksi(22) };
  test('a near end lowers bearing in proportion, a far one does not raise it', () => {
    expect(shear({ ...values, e1: inch(0.36) })).toBeCloseTo(0.36 * 0.04 * 20_000, 9);
    expect(shear({ ...values, e1: inch(3) })).toBe(shear(values));
  });
  test('an end nearer than 1.5 D is refused', () => {
    for (const e of ['e1', 'e2'] as const) {
      const outcome = shear({ ...values, [e]: inch(0.32) });
      expect(isRefusal(outcome) && outcome.input).toBe(e);
    }
  });
});

describe('the rest of ADM 2015 J.5 (memory)', () => {
  test('1/4 in screw: 5/8 in apart, 3/8 in from an edge', () => {
    expect([minimumSpacing({ D: inch(0.25) }), minimumEdgeDistance({ D: inch(0.25) })]).toEqual([
      0.625, 0.375,
    ]);
    expect(isRefusal(minimumSpacing({ D: inch(0.3) }))).toBe(true);
  });
  test('the screw itself: stated strength over 1.25, then Ω 3 or φ 0.5', () => {
    expect(screwStrength({ P: lbf(2330) })).toBeCloseTo(1864, 9);
    expect(adm2015.screwStrength({ P: lbf(2330) }, 'ASD')).toBeCloseTo(1864 / 3, 9);
    expect(adm2015.screwStrength({ P: lbf(2330) }, 'LRFD')).toBeCloseTo(932, 9);
  });
  test('every strength says that it is recalled', () => {
    const trace: Trace = [];
    const member = { Le: inch(0.1), Fty2: ksi(16), Ftu2: ksi(22) };
    adm2015.pullOut({ D: inch(0.216), n: perInch(14), ...member }, 'ASD', trace);
    expect(trace.some((step) => step.kind === 'note' && step.text.includes('recalled'))).toBe(true);
  });
  test('each clause of an edition is listed once and cites it or the thread table', () => {
    for (const [list, name] of [
      [adm2015Clauses, 'ADM 2015'],
      [adm2010Clauses, 'ADM 2010'],
    ] as const) {
      expect(new Set(list.map(({ about }) => about.id)).size).toBe(list.length);
      const foreign = list.filter(
        ({ about }) => !about.cites.startsWith(name) && !about.cites.startsWith('AAMA'),
      );
      expect(foreign).toEqual([]);
    }
  });
  test('a bare number of pounds does not compile into the factors', () => {
    // @ts-expect-error pounds of no edition
    expect(available(lbf(300), 'ASD')).toBe(100);
  });
});
