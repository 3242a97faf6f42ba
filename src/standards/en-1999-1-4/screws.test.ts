import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { megapascal, millimetre, quantity, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { screwBearing } from './8.3.2.1-screw-bearing.ts';
import { screwShear } from './8.3.2-screw-shear.ts';
import { screwPullOut, screwPullThrough } from './8.3.3-screw-tension.ts';
import { en199914Clauses } from './clause-list.ts';

const [mm, MPa] = [millimetre, megapascal];
/** Printed to whole newtons. */
const within = (value: unknown, printed: number): void =>
  expect(Math.abs(Number(value) - printed)).toBeLessThanOrEqual(0.51);
const refusedInput = (outcome: unknown): string | false => isRefusal(outcome) && outcome.input;

describe('screw bearing, EN 1999-1-4 8.3.2.1 (computed; formula published)', () => {
  for (const { d, t, tsup, fu, Rk, Rd } of [
    { d: 6.3, t: 0.8, tsup: 0.8, fu: 200, Rk: 898, Rd: 718 },
    { d: 6.3, t: 0.8, tsup: 2, fu: 200, Rk: 1512, Rd: 1210 },
    { d: 5.5, t: 0.7, tsup: 4, fu: 280, Rk: 1502, Rd: 1201 },
    { d: 6.3, t: 1, tsup: 1, fu: 260, Rk: 1631, Rd: 1305 },
  ])
    test(`${t} on ${tsup} mm, ${fu} MPa: ${Rd} N`, () => {
      const values = { support: 'metal', d: mm(d), t: mm(t), tsup: mm(tsup), fumin: MPa(fu) } as const;
      within(screwBearing(values), Rd);
      within(screwBearing({ ...values, γM3: ratio(1) }), Rk);
    });
  const values = { support: 'metal', d: mm(6.3), t: mm(0.8), tsup: mm(2), fumin: MPa(200) } as const;
  test('sheet thicker than its support bears as the support; on timber as on thick metal', () => {
    expect(screwBearing({ ...values, t: mm(3) })).toBe(screwBearing({ ...values, t: mm(2) }));
    const timber = { support: 'timber', d: mm(6.3), t: mm(0.8), fumin: MPa(200) } as const;
    expect(screwBearing(timber)).toBe(screwBearing(values));
  });
  test('a screw below 5.5 mm and a metal support of unknown thickness are refused', () => {
    expect(refusedInput(screwBearing({ ...values, d: mm(5.4) }))).toBe('d');
    const unknown = { support: 'metal', d: mm(6.3), t: mm(0.8), fumin: MPa(200) } as const;
    expect(refusedInput(screwBearing(unknown))).toBe('tsup');
    expect(refusedInput(screwBearing({ ...values, γM3: ratio(0.99) }))).toBe('γM3');
  });
  test('a thicker support never lowers it', () => {
    const t = fc.double({ min: 0.3, max: 6, noNaN: true });
    fc.assert(
      fc.property(t, t, t, (sheet, a, b) => {
        const at = (tsup: number) => Number(screwBearing({ ...values, t: mm(sheet), tsup: mm(tsup) }));
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)) * (1 - 1e-12));
      }),
    );
  });
});

describe('screw tension, EN 1999-1-4 8.3.3 (memory)', () => {
  for (const { washer, αL, αE, t, fu, dw, Rk, Rd } of [
    { washer: 'steel', αL: 1, αE: 1, t: 0.8, fu: 200, dw: 16, Rk: 832, Rd: 666 },
    { washer: 'aluminium', αL: 0.75, αE: 0.9, t: 0.7, fu: 220, dw: 19, Rk: 471, Rd: 377 },
    { washer: 'steel', αL: 1, αE: 0.7, t: 1, fu: 200, dw: 22, Rk: 854, Rd: 683 },
  ] as const)
    test(`pull-through, ${t} mm, ${washer} washer of ${dw} mm: ${Rd} N`, () => {
      const sheet = { t: mm(t), fu: MPa(fu), dw: mm(dw), αL: ratio(αL), αE: ratio(αE), washer };
      within(screwPullThrough(sheet), Rd);
      within(screwPullThrough({ ...sheet, γM3: ratio(1) }), Rk);
    });
  for (const { tsup, fu, Rk, Rd } of [
    { tsup: 2, fu: 200, Rk: 1349, Rd: 1079 },
    { tsup: 1.5, fu: 220, Rk: 964, Rd: 771 },
  ])
    test(`pull-out, 6.3 mm in ${tsup} mm: ${Rd} N`, () => {
      const values = { support: 'aluminium', d: mm(6.3), tsup: mm(tsup), fusup: MPa(fu) } as const;
      within(screwPullOut(values), Rd);
      within(screwPullOut({ ...values, γM3: ratio(1) }), Rk);
    });
  test('strength and support beyond what counts add nothing', () => {
    const out = { support: 'aluminium', d: mm(6.3), tsup: mm(6), fusup: MPa(250) } as const;
    expect(screwPullOut({ ...out, tsup: mm(10), fusup: MPa(300) })).toBe(screwPullOut(out));
    expect(screwPullOut({ ...out, support: 'steel', fusup: MPa(500) })).toBe(
      screwPullOut({ ...out, support: 'steel', fusup: MPa(400) }),
    );
    const over = { washer: 'steel', αL: ratio(1), αE: ratio(1), t: mm(0.8), dw: mm(16) } as const;
    expect(screwPullThrough({ ...over, fu: MPa(300) })).toBe(screwPullThrough({ ...over, fu: MPa(260) }));
  });
  test('factors outside 0.5 to 1 are refused', () => {
    const over = {
      washer: 'steel',
      αL: ratio(1),
      αE: ratio(1),
      t: mm(0.8),
      fu: MPa(200),
      dw: mm(16),
    } as const;
    expect(refusedInput(screwPullThrough({ ...over, αL: ratio(1.1) }))).toBe('αL');
    expect(refusedInput(screwPullThrough({ ...over, αE: ratio(0.4) }))).toBe('αE');
    expect(refusedInput(screwPullOut({ support: 'steel', d: mm(5), tsup: mm(2), fusup: MPa(360) }))).toBe(
      'd',
    );
  });
});

test('screw shear: 380 As/γM3 (formula published)', () => {
  expect(screwShear({ As: quantity(20, 'mm²') })).toBeCloseTo(6080, 9);
  expect(refusedInput(screwShear({ As: quantity(0, 'mm²') }))).toBe('As');
});

test('each clause is listed once', () => {
  expect(new Set(en199914Clauses.map(({ about }) => about.id)).size).toBe(4);
});
