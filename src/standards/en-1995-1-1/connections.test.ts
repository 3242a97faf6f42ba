import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degree, megapascal, millimetre, newton, quantity, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import {
  designResistance,
  modificationFactor,
  partialFactors,
  strengthClassDensities,
} from './3.1-modification.ts';
import { splitting } from './8.1.4-splitting.ts';
import { steelShear, timberShear } from './8.2-johansen.ts';
import { embedment, yieldMoment } from './8.3.1-dowel-strength.ts';
import { smoothNailAxial } from './8.3.2-nail-axial.ts';
import { combinedUse } from './8.3.3-combined.ts';
import { declaredScrewWithdrawal, screwPullThrough, screwWithdrawal } from './8.7.2-screw-axial.ts';

const kgm3 = (value: number) => quantity(value, 'kg/m³');
/** Hand values are given to four or five figures: 0.1 percent. */
const near = (value: unknown, expected: number) =>
  expect(Math.abs(Number(value) / expected - 1)).toBeLessThanOrEqual(0.001);
const refusedInput = (outcome: unknown) => (isRefusal(outcome) ? outcome.input : outcome);

const screw = (d: number, lef: number, ρk: number, α = 90, n = 1, d1 = 0.7 * d) =>
  screwWithdrawal({
    d: millimetre(d),
    d1: millimetre(d1),
    lef: millimetre(lef),
    ρk: kgm3(ρk),
    α: degree(α),
    n: ratio(n),
  });

describe('screws, 8.7.2', () => {
  test.each([
    [6, 40, 350, 90, 2865.8, 'computed'],
    [6, 60, 320, 90, 3842.3, 'computed'],
    [8, 80, 350, 90, 8233.5, 'computed'],
    [8, 100, 380, 90, 10_749.2, 'computed'],
    [10, 100, 350, 90, 11_252.7, 'computed'],
    [12, 120, 420, 90, 16_805.7, 'computed'],
    [8, 80, 350, 30, 7159.6, 'computed'],
    [6, 55, 350, 90, 3817, 'hand value of a worksheet'],
  ] as const)('%d mm, %d mm in %d kg/m³ at %d degrees: %d N (%s)', (d, lef, ρk, α, expected, _origin) => {
    near(screw(d, lef, ρk, α), expected);
  });

  test('a head of 12 mm with 10.5 MPa: 1512 N (hand value of a worksheet)', () => {
    const head = { n: ratio(1), dh: millimetre(12), fhead: megapascal(10.5), ρk: kgm3(350), ρa: kgm3(350) };
    near(screwPullThrough(head), 1512);
  });

  test('four screws count as 4^0.9', () => near(screw(8, 80, 350, 90, 4), 8233.5 * 4 ** 0.9));

  test('20 mm of thread of a 6 mm screw is short of 6 d; axis, diameter and root have their limits', () => {
    expect(refusedInput(screw(6, 20, 350))).toBe('lef');
    expect(refusedInput(screw(6, 36, 350))).toBeGreaterThan(0);
    expect(refusedInput(screw(6, 40, 350, 29))).toBe('α');
    expect(refusedInput(screw(5.9, 40, 350))).toBe('d');
    expect(refusedInput(screw(12.1, 90, 350))).toBe('d');
    expect(refusedInput(screw(8, 80, 350, 90, 1, 4.7))).toBe('d1');
    expect(refusedInput(screw(8, 80, 350, 90, 1, 6.1))).toBe('d1');
    expect(refusedInput(screw(8, 80, 350, 90, 1.5))).toBe('n');
  });

  test('a declared parameter at its own density is taken as declared', () => {
    const declared = {
      d: millimetre(5),
      fax: megapascal(12),
      lef: millimetre(40),
      ρa: kgm3(350),
      α: degree(90),
      n: ratio(1),
    };
    near(declaredScrewWithdrawal({ ...declared, ρk: kgm3(350) }), 12 * 5 * 40);
    expect(refusedInput(declaredScrewWithdrawal({ ...declared, ρk: kgm3(350), lef: millimetre(29) }))).toBe(
      'lef',
    );
  });

  test('more thread and denser timber never hold less', () => {
    const lef = fc.double({ min: 48, max: 200, noNaN: true });
    const ρ = fc.double({ min: 290, max: 500, noNaN: true });
    fc.assert(
      fc.property(
        lef,
        lef,
        ρ,
        ρ,
        (a, b, p, q) =>
          Number(screw(8, Math.min(a, b), Math.min(p, q))) <=
          Number(screw(8, Math.max(a, b), Math.max(p, q))),
      ),
    );
  });
});

describe('smooth nail 3.4 x 90 mm in C24 (hand values of a worksheet)', () => {
  const d = millimetre(3.4);
  const axial = {
    d,
    dh: millimetre(20),
    tpen: millimetre(52),
    t: millimetre(38),
    ρk: kgm3(350),
    duration: 'medium',
  } as const;
  const fh = megapascal(Number(embedment({ material: 'timber', d, ρk: kgm3(350), t: millimetre(38) })));
  const My = quantity(Number(yieldMoment({ shape: 'round', fu: megapascal(600), d })), 'N·mm');

  test('embedment 19.88 MPa, yield moment 4336 N mm, withdrawal 433.2 N', () => {
    near(fh, 19.88);
    near(My, 4336);
    near(smoothNailAxial(axial), 433.2);
  });

  test('988.8 N in single shear, 608.5 N in design with kmod 0.8', () => {
    const lengths = { t1: millimetre(38), t2: millimetre(52) };
    const shear = timberShear({
      ...lengths,
      d,
      My,
      Fax: newton(433.2),
      kind: 'smooth nail',
      fh1: fh,
      fh2: fh,
    });
    near(shear, 988.8);
    near(designResistance({ Rk: newton(Number(shear)), kmod: ratio(0.8), γM: ratio(1.3) }), 608.5);
  });

  test('no long-term pull on smooth nails, none below 8 d, and a weaker head governs when it is small', () => {
    expect(refusedInput(smoothNailAxial({ ...axial, duration: 'permanent' }))).toBe('duration');
    expect(refusedInput(smoothNailAxial({ ...axial, duration: 'long' }))).toBe('duration');
    expect(refusedInput(smoothNailAxial({ ...axial, tpen: millimetre(27) }))).toBe('tpen');
    near(
      smoothNailAxial({ ...axial, dh: millimetre(3.4), t: millimetre(10) }),
      2.45 * 3.4 * 10 + 8.575 * 3.4 ** 2,
    );
  });

  test('wire below 600 MPa has no yield moment here', () => {
    expect(refusedInput(yieldMoment({ shape: 'round', fu: megapascal(500), d }))).toBe('fu');
  });
});

describe('steel sheet on timber, 8.2.3', () => {
  const d = millimetre(4.4);
  const joint = {
    d,
    My: quantity(11_302.9, 'N·mm'),
    fh: megapascal(18.401),
    t1: millimetre(50),
    kind: 'screw',
  } as const;
  const at = (ts: number, Fax = 3503.2) =>
    Number(steelShear({ ...joint, ts: millimetre(ts), Fax: newton(Fax) }));

  test('1 mm sheet, 6 mm screw (effective 4.4): 1619.3 N, the timber bears (computed)', () => {
    near(at(1), 1619.3);
    near(embedment({ material: 'timber', d, ρk: kgm3(350), t: millimetre(50) }), 18.401);
    near(yieldMoment({ shape: 'round', fu: megapascal(800), d }), 11_302.9);
  });

  test('a thick plate and a deep screw: 2.3 sqrt(My fh d), and the rope may double it', () => {
    const deep = { ...joint, t1: millimetre(100), ts: millimetre(5) };
    const bare = 2.3 * Math.sqrt(11_302.9 * 18.401 * 4.4);
    near(steelShear({ ...deep, Fax: newton(0) }), bare);
    near(steelShear({ ...deep, Fax: newton(4000) }), bare + 1000);
    near(steelShear({ ...deep, kind: 'smooth nail', Fax: newton(4000) }), 1.15 * bare);
  });

  test('between thin and thick runs a straight line', () => {
    const [thin, middle, thick] = [at(2.2), at(3.3), at(4.4)];
    expect(middle).toBeCloseTo((thin + thick) / 2, 6);
    expect(thick).toBeGreaterThan(thin);
  });
});

test('splitting of 140 x 300 mm with 100 mm: 24,005 N, 14.77 kN in design (hand value of a worksheet)', () => {
  const F = splitting({ b: millimetre(140), h: millimetre(300), he: millimetre(100) });
  near(F, 24_005);
  near(designResistance({ Rk: newton(Number(F)), kmod: ratio(0.8), γM: ratio(1.3) }), 14_770);
  expect(refusedInput(splitting({ b: millimetre(140), h: millimetre(300), he: millimetre(300) }))).toBe('he');
});

test.each([
  ['1', 'permanent', 0.6, 'published'],
  ['1', 'long', 0.7, 'published'],
  ['1', 'medium', 0.8, 'published'],
  ['1', 'short', 0.9, 'memory'],
  ['1', 'instantaneous', 1.1, 'memory'],
  ['3', 'permanent', 0.5, 'published'],
  ['3', 'long', 0.55, 'published'],
  ['3', 'medium', 0.65, 'published'],
  ['3', 'short', 0.7, 'memory'],
  ['3', 'instantaneous', 0.9, 'memory'],
] as const)('kmod, service class %s, %s: %d (%s)', (serviceClass, duration, kmod, _origin) => {
  expect(modificationFactor({ material: 'solid timber, glulam, plywood', serviceClass, duration })).toBe(
    kmod,
  );
});

test('OSB has no place in service class 3', () => {
  expect(refusedInput(modificationFactor({ material: 'OSB/3', serviceClass: '3', duration: 'short' }))).toBe(
    'serviceClass',
  );
});

test('partial factors and densities are those of the tables (published)', () => {
  expect(partialFactors).toMatchObject({ solidTimber: 1.3, glulam: 1.25, connections: 1.3 });
  expect(strengthClassDensities.map((row) => row.characteristic)).toEqual([
    290, 310, 320, 340, 350, 370, 380, 400, 420,
  ]);
  expect(strengthClassDensities.map((row) => row.mean)).toEqual([
    350, 370, 380, 410, 420, 450, 460, 480, 500,
  ]);
});

test('smooth nails add straight, others by squares', () => {
  const half = { Fax: newton(50), Rax: newton(100), Fv: newton(50), Rv: newton(100) };
  expect([combinedUse({ ...half, kind: 'smooth nail' }), combinedUse({ ...half, kind: 'other' })]).toEqual([
    1, 0.5,
  ]);
});
