import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { megapascal, millimetre, newton, quantity, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { en199313Clauses } from './clause-list.ts';
import { rivetBearing } from './t8.1-rivet-bearing.ts';
import { netSection, screwBearing } from './t8.2-screw-bearing.ts';
import { screwCombined } from './t8.2-screw-combined.ts';
import { finnishScrewShear, leastScrewShear, leastScrewTension } from './t8.2-screw-own-strength.ts';
import { screwPullOut } from './t8.2-screw-pull-out.ts';
import { pinPullThrough, screwPullThrough } from './t8.2-screw-pull-through.ts';
import { pinBearing } from './t8.3-pin-bearing.ts';
import { leastDistance } from './t8-spacing.ts';

const [mm, MPa, N] = [millimetre, megapascal, newton];
/** Printed to whole newtons. */
const within = (value: unknown, printed: number): void =>
  expect(Math.abs(Number(value) - printed)).toBeLessThanOrEqual(0.51);
const refusedInput = (outcome: unknown): string | false => isRefusal(outcome) && outcome.input;

describe('screw bearing, EN 1993-1-3 Table 8.2 (computed; formula published)', () => {
  for (const { d, t, t1, fu, Rk, Rd } of [
    { d: 5.5, t: 0.75, t1: 0.75, fu: 390, Rk: 1901, Rd: 1521 },
    { d: 5.5, t: 0.75, t1: 2, fu: 390, Rk: 1901, Rd: 1521 },
    { d: 6.3, t: 1.25, t1: 1.25, fu: 420, Rk: 4714, Rd: 3772 },
    { d: 4.8, t: 0.6, t1: 0.6, fu: 360, Rk: 1173, Rd: 938 },
    { d: 5.5, t: 1.2, t1: 4, fu: 390, Rk: 5405, Rd: 4324 },
    { d: 6.3, t: 0.63, t1: 1.5, fu: 360, Rk: 1446, Rd: 1157 },
  ])
    test(`${t} on ${t1} mm, ${d} mm: ${Rd} N`, () => {
      const values = { d: mm(d), t: mm(t), t1: mm(t1), fu: MPa(fu) };
      within(screwBearing(values), Rd);
      within(screwBearing({ ...values, γM2: ratio(1) }), Rk);
    });
  const values = { d: mm(5.5), t: mm(0.75), t1: mm(2), fu: MPa(390) };
  test('the thinner sheet comes first; screws of 2.9 and 8.1 mm and γM2 below 1 are refused', () => {
    expect(refusedInput(screwBearing({ ...values, t1: mm(0.7) }))).toBe('t1');
    for (const d of [2.9, 8.1]) expect(refusedInput(screwBearing({ ...values, d: mm(d) }))).toBe('d');
    expect(refusedInput(screwBearing({ ...values, γM2: ratio(0.9) }))).toBe('γM2');
    expect(refusedInput(screwBearing({ ...values, fu: MPa(Number.NaN) }))).toBe('fu');
  });
  test('a thicker support or sheet never lowers it', () => {
    const t = fc.double({ min: 0.3, max: 3, noNaN: true });
    const more = fc.double({ min: 1, max: 4, noNaN: true });
    fc.assert(
      fc.property(t, more, more, (thin, a, b) => {
        const at = (sheet: number, support: number) =>
          Number(screwBearing({ ...values, t: mm(sheet), t1: mm(support) })) * (1 + 1e-12);
        expect(at(thin, thin * a * b)).toBeGreaterThanOrEqual(
          Number(screwBearing({ ...values, t: mm(thin), t1: mm(thin * a) })),
        );
        expect(at(thin * a, thin * a * b)).toBeGreaterThanOrEqual(
          Number(screwBearing({ ...values, t: mm(thin), t1: mm(thin * a * b) })),
        );
      }),
    );
  });
  test('net section: area times strength over γM2', () => {
    expect(netSection({ Anet: quantity(30, 'mm²'), fu: MPa(390) })).toBeCloseTo(9360, 9);
  });
});

describe('screw pull-through, EN 1993-1-3 Table 8.2', () => {
  // Wind value computed from the published formula; static and quarter-point values from recalled ones.
  for (const { dw, t, fu, still, wind, one, both } of [
    { dw: 16, t: 0.63, fu: 360, still: 2903, wind: 1452, one: 1306, both: 1016 },
    { dw: 14, t: 0.5, fu: 360, still: 2016, wind: 1008, one: 907, both: 706 },
    { dw: 16, t: 0.88, fu: 420, still: 4731, wind: 2365, one: 2129, both: 1656 },
  ])
    test(`${dw} mm washer, ${t} mm sheet: ${wind} N in wind`, () => {
      const sheet = { dw: mm(dw), t: mm(t), tsup: mm(1.5), fu: MPa(fu) };
      const at = (
        load: 'static' | 'wind',
        place: 'trough middle' | 'quarter point' | 'both quarter points',
      ) => screwPullThrough({ ...sheet, load, place });
      within(at('static', 'trough middle'), still);
      within(at('wind', 'trough middle'), wind);
      within(at('wind', 'quarter point'), one);
      within(at('wind', 'both quarter points'), both);
    });
  const values = {
    load: 'wind',
    place: 'trough middle',
    dw: mm(16),
    t: mm(0.63),
    tsup: mm(1.5),
    fu: MPa(360),
  } as const;
  test('sheet outside 0.5 to 1.5 mm, support below 0.9 mm or below the sheet are refused', () => {
    for (const t of [0.49, 1.51]) expect(refusedInput(screwPullThrough({ ...values, t: mm(t) }))).toBe('t');
    expect(refusedInput(screwPullThrough({ ...values, tsup: mm(0.89) }))).toBe('tsup');
    expect(refusedInput(screwPullThrough({ ...values, t: mm(1.2), tsup: mm(1) }))).toBe('tsup');
    expect(refusedInput(pinPullThrough({ ...values, tsup: mm(5.9) }))).toBe('tsup');
    expect(pinPullThrough({ ...values, tsup: mm(6) })).toBe(screwPullThrough(values));
  });
});

describe('screw pull-out, EN 1993-1-3 Table 8.2 (0.65 published, 0.45 memory)', () => {
  for (const { d, tsup, s, fu, Rk, Rd } of [
    { d: 5.5, tsup: 1.5, s: 1.8, fu: 390, Rk: 1448, Rd: 1158 },
    { d: 5.5, tsup: 2, s: 1.8, fu: 390, Rk: 2788, Rd: 2231 },
    { d: 6.3, tsup: 2.5, s: 1.8, fu: 420, Rk: 4300, Rd: 3440 },
    { d: 5.5, tsup: 1.79, s: 1.8, fu: 390, Rk: 1728, Rd: 1382 },
    { d: 5.5, tsup: 1.8, s: 1.8, fu: 390, Rk: 2510, Rd: 2008 },
    { d: 6.3, tsup: 5, s: 1.8, fu: 360, Rk: 7371, Rd: 5897 },
  ])
    test(`${d} mm screw in ${tsup} mm, pitch ${s} mm: ${Rd} N`, () => {
      const values = { d: mm(d), tsup: mm(tsup), s: mm(s), fusup: MPa(fu) };
      within(screwPullOut(values), Rd);
      within(screwPullOut({ ...values, γM2: ratio(1) }), Rk);
    });
  test('a support of 0.89 mm and screws outside 3 to 8 mm are refused', () => {
    const values = { d: mm(5.5), tsup: mm(2), s: mm(1.8), fusup: MPa(390) };
    expect(refusedInput(screwPullOut({ ...values, tsup: mm(0.89) }))).toBe('tsup');
    for (const d of [2.9, 8.1]) expect(refusedInput(screwPullOut({ ...values, d: mm(d) }))).toBe('d');
  });
  test('a thicker support never lowers it', () => {
    const tsup = fc.double({ min: 0.9, max: 10, noNaN: true });
    fc.assert(
      fc.property(tsup, tsup, (a, b) => {
        const at = (t: number) =>
          Number(screwPullOut({ d: mm(5.5), tsup: mm(t), s: mm(1.8), fusup: MPa(390) }));
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
      }),
    );
  });
});

describe('the screw itself and its place, EN 1993-1-3 Table 8.2', () => {
  for (const [size, hardened, stainless] of [
    ['4.8', 5200, 4600],
    ['5.5', 7200, 6500],
    ['6.3', 9800, 8500],
    ['8.0', 16_300, 14_300],
  ] as const)
    test(`Finnish annex, ${size} mm: ${hardened} N, stainless ${stainless} N (published)`, () => {
      expect(finnishScrewShear({ size, steel: 'hardened' })).toBe(hardened);
      expect(finnishScrewShear({ size, steel: 'stainless' })).toBe(stainless);
    });
  test('a size that is not tabulated is refused', () => {
    expect(refusedInput(finnishScrewShear({ size: '6.0' as '6.3', steel: 'hardened' }))).toBe('size');
  });
  test('it must outlast the sheet: 1.2 in shear, and both ways of tension', () => {
    expect(leastScrewShear({ FbRd: N(1500), FnRd: N(2000) })).toBe(1800);
    expect(leastScrewTension({ FpRd: N(1452), FoRd: N(2231) })).toBe(2231);
  });
  test('5.5 mm screw: ends and spacing 16.5 mm, edge 8.25 mm (published)', () => {
    const of = (what: 'end' | 'edge' | 'spacing') =>
      leastDistance({ fastener: 'self-tapping screw', of: what, d: mm(5.5) });
    expect([of('end'), of('spacing'), of('edge')]).toEqual([16.5, 16.5, 8.25]);
  });
  test('rivets and pins have their own distances and ranges (memory)', () => {
    expect(leastDistance({ fastener: 'blind rivet', of: 'end', d: mm(4.8) })).toBeCloseTo(7.2, 12);
    expect(leastDistance({ fastener: 'cartridge pin', of: 'end', d: mm(4.5) })).toBe(20.25);
    for (const [fastener, d] of [
      ['self-tapping screw', 2.9],
      ['self-tapping screw', 8.1],
      ['blind rivet', 2.5],
      ['blind rivet', 6.5],
      ['cartridge pin', 3.6],
      ['cartridge pin', 6.1],
    ] as const)
      expect(refusedInput(leastDistance({ fastener, of: 'end', d: mm(d) }))).toBe('d');
  });
  test('tension and shear together add up to the share used (memory)', () => {
    const resistance = { FpRd: N(1452), FoRd: N(2231), FbRd: N(1521), FnRd: N(9360) };
    const share = screwCombined({ ...resistance, FtEd: N(726), FvEd: N(760.5) });
    expect(share).toBeCloseTo(1, 12);
    expect(refusedInput(screwCombined({ ...resistance, FtEd: N(-1), FvEd: N(0) }))).toBe('FtEd');
  });
});

describe('blind rivets, EN 1993-1-3 Table 8.1 (computed; coefficient and end cap published)', () => {
  for (const { d, t, t1, fu, e1, Rk, Rd } of [
    { d: 4.8, t: 0.63, t1: 0.63, fu: 360, e1: 20, Rk: 1420, Rd: 1136 },
    { d: 4, t: 0.5, t1: 0.5, fu: 360, e1: 12, Rk: 916, Rd: 733 },
    { d: 4.8, t: 1, t1: 1.5, fu: 390, e1: 8, Rk: 2600, Rd: 2080 },
  ])
    test(`${d} mm in ${t} on ${t1} mm, end ${e1} mm: ${Rd} N`, () => {
      const values = { d: mm(d), t: mm(t), t1: mm(t1), fu: MPa(fu), e1: mm(e1) };
      within(rivetBearing(values), Rd);
      within(rivetBearing({ ...values, γM2: ratio(1) }), Rk);
    });
  const values = { d: mm(4.8), t: mm(1), t1: mm(3), fu: MPa(390), e1: mm(20) };
  test('on a support 2.5 times as thick it is 2.1 fu d t', () => {
    expect(Number(rivetBearing(values)) * 1.25).toBeCloseTo(2.1 * 390 * 4.8, 9);
  });
  test('outside its range it is refused', () => {
    for (const d of [2.5, 6.5]) expect(refusedInput(rivetBearing({ ...values, d: mm(d) }))).toBe('d');
    expect(refusedInput(rivetBearing({ ...values, fu: MPa(551) }))).toBe('fu');
    expect(refusedInput(rivetBearing({ ...values, e1: mm(7.1) }))).toBe('e1');
    expect(refusedInput(rivetBearing({ ...values, t1: mm(0.9) }))).toBe('t1');
  });
});

describe('cartridge pins, EN 1993-1-3 Table 8.3', () => {
  const values = { d: mm(4.5), t: mm(0.75), tsup: mm(6), fu: MPa(390), e1: mm(20.25) };
  test('bearing 3.2 fu d t/1.25 (formula published)', () => {
    expect(pinBearing(values)).toBeCloseTo((3.2 * 390 * 4.5 * 0.75) / 1.25, 9);
  });
  test('a near end, a thin support and a pin outside 3.7 to 6.0 mm are refused', () => {
    expect(refusedInput(pinBearing({ ...values, e1: mm(20.2) }))).toBe('e1');
    expect(refusedInput(pinBearing({ ...values, tsup: mm(5.9) }))).toBe('tsup');
    expect(refusedInput(pinBearing({ ...values, d: mm(5.2), e1: mm(30), tsup: mm(7.9) }))).toBe('tsup');
    expect(refusedInput(pinBearing({ ...values, d: mm(3.7), tsup: mm(3.9) }))).toBe('tsup');
    for (const d of [3.6, 6.1]) expect(refusedInput(pinBearing({ ...values, d: mm(d) }))).toBe('d');
  });
});

test('each clause is listed once', () => {
  expect(new Set(en199313Clauses.map(({ about }) => about.id)).size).toBe(en199313Clauses.length);
  expect(en199313Clauses.length).toBeGreaterThan(10);
});
