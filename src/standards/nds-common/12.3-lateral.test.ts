import { describe, expect, test } from 'vitest';
import { degree, inch, psi, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { clausesOfNds2018 as nds } from '../nds-2018/clauses.ts';
import { lagCells, nailCells, screwCells, screwEquationRows } from './12.3.1-lateral.table.ts';
import { governingMode, makeYieldModes } from './12.3.1-yield-modes.ts';
import { bearingRows, bendingRows, reductionRows } from './12.3-limits.table.ts';

test('the tables hold their rows', () => {
  expect([bearingRows.length, bendingRows.length, reductionRows.length]).toEqual([9, 14, 6]);
  expect([screwCells.length, screwEquationRows.length, nailCells.length, lagCells.length]).toEqual([
    5, 54, 23, 51,
  ]);
});

const bearing = (G: number, D: number, theta: number, reading: 'tabulated' | 'formula' = 'tabulated') =>
  psi(Number(nds.woodBearing({ G: ratio(G), D: inch(D), θ: degree(theta), reading })));

describe('bearing, bending and reduction', () => {
  for (const { G, D, theta, Fe, unrounded, source, origin } of bearingRows)
    test(`G ${G}, D ${D} in at ${theta} degrees: ${Fe} psi (${source}, ${origin})`, () => {
      expect(bearing(G, D, theta)).toBe(Fe);
      if (unrounded !== undefined)
        expect(Math.abs(bearing(G, D, theta, 'formula') - unrounded)).toBeLessThanOrEqual(0.1);
    });

  test('at 45 degrees 5600 and 3150 psi give 4032 psi (computed from the formula)', () => {
    expect(Math.abs(bearing(0.5, 0.5, 45) - 4032)).toBeLessThanOrEqual(0.1);
  });

  for (const { D, Fyb, source, origin } of bendingRows)
    test(`D ${D} in bends at ${Fyb} psi (${source}, ${origin})`, () => {
      expect(nds.bendingYield({ D: inch(D), steel: 'nail, wood screw or lag' })).toBe(Fyb);
    });

  for (const { Dy, KD, source, origin } of reductionRows)
    test(`K_D of ${Dy} in is ${KD} (${source}, ${origin})`, () => {
      expect(nds.reductionTerm({ D: inch(0.19), Dy: inch(Dy), θ: degree(90), mode: 'II' })).toBeCloseTo(
        KD,
        9,
      );
    });

  test('a full-size dowel takes 4, 3.6 and 3.2 by mode, more across the grain; a 1/4 lag with a thin root takes both', () => {
    const term = (D: number, Dy: number, θ: number, mode: 'I' | 'II' | 'III or IV') =>
      nds.reductionTerm({ D: inch(D), Dy: inch(Dy), θ: degree(θ), mode });
    expect(['I', 'II', 'III or IV'].map((mode) => term(0.5, 0.371, 0, mode as 'I'))).toEqual([4, 3.6, 3.2]);
    expect(term(0.5, 0.371, 90, 'I')).toBe(5);
    expect(term(0.25, 0.173, 90, 'I')).toBeCloseTo(2.23 * 1.25, 9);
  });

  test('hot-rolled A36 bears 87,000 psi; cold-formed Grade 33 61,875 (the table prints 61,850)', () => {
    expect(nds.steelBearing({ Fu: psi(58_000), rolling: 'hot-rolled' })).toBeCloseTo(87_000, 6);
    expect(nds.steelBearing({ Fu: psi(45_000), rolling: 'cold-formed' })).toBeCloseTo(61_875, 6);
  });

  test('panels bear as Table 12.3.3B, up to 1/4 in only (plywood published, OSB recalled)', () => {
    const at = (panel: 'OSB' | 'plywood, other or unknown' | 'plywood Structural I or Marine', D = 0.19) =>
      nds.panelBearing({ panel, D: inch(D) });
    expect([at('plywood Structural I or Marine'), at('plywood, other or unknown'), at('OSB')]).toEqual([
      4650, 3350, 4650,
    ]);
    expect(isRefusal(at('OSB', 0.26))).toBe(true);
  });

  test('hardened nails bend later, within their own bands only', () => {
    const at = (D: number) => nds.bendingYield({ D: inch(D), steel: 'hardened nail' });
    expect([at(0.131), at(0.177), at(0.207)]).toEqual([130_000, 115_000, 100_000]);
    expect([isRefusal(at(0.113)), isRefusal(at(0.25))]).toEqual([true, true]);
  });
});

const shear = (row: {
  D: number;
  Dy: number;
  lm: number;
  ls: number;
  Fem: number;
  Fes: number;
  Fyb: number;
  theta?: number;
}) => {
  const trace: Trace = [];
  const lengths = {
    D: inch(row.D),
    Dy: inch(row.Dy),
    lm: inch(row.lm),
    ls: inch(row.ls),
    θ: degree(row.theta ?? 0),
  };
  const Z = nds.singleShear({ ...lengths, Fem: psi(row.Fem), Fes: psi(row.Fes), Fyb: psi(row.Fyb) }, trace);
  const last = trace.at(-1);
  return {
    Z: Number(Z),
    mode: last?.kind === 'value' ? last.because.replace('least of the modes: ', '') : '',
  };
};

describe('single shear', () => {
  for (const row of screwCells)
    test(`screw ${row.D} in, side ${row.ts} in, G ${row.G}: ${row.Z} lb, mode ${row.mode} (${row.source}, ${row.origin})`, () => {
      const Fem = bearing(row.G, row.D, 0);
      const { Z, mode } = shear({
        D: row.D,
        Dy: row.Dr,
        lm: row.p - row.D,
        ls: row.ts,
        Fem,
        Fes: row.Fes || Fem,
        Fyb: row.Fyb,
      });
      expect(Math.abs(Z - row.Z)).toBeLessThanOrEqual(0.5);
      expect(mode).toBe(row.mode);
    });

  for (const row of screwEquationRows)
    test(`screw ${row.D} in, side ${row.ls} in at ${row.Fes} psi: ${row.Z} lb, mode ${row.mode} (${row.source}, ${row.origin})`, () => {
      const { Z, mode } = shear({ ...row, Dy: row.Dr });
      expect(Math.abs(Z - row.Z)).toBeLessThanOrEqual(0.02);
      expect(mode).toBe(row.mode);
    });

  for (const row of nailCells)
    test(`nail ${row.D} in, side ${row.ts} in, G ${row.G}: ${row.Z} lb, mode ${row.mode} (${row.source}, ${row.origin})`, () => {
      const Fem = bearing(row.G, row.D, 0);
      const { Z, mode } = shear({
        D: row.D,
        Dy: row.D,
        lm: row.p - row.D,
        ls: row.ts,
        Fem,
        Fes: row.Fes || Fem,
        Fyb: row.Fyb,
      });
      expect(Math.abs(Z - row.Z)).toBeLessThanOrEqual(0.5);
      expect(mode).toBe(row.mode);
    });

  for (const row of lagCells)
    test(`lag ${row.D} in, side ${row.ts} in, ${row.main}/${row.side} degrees: ${row.Z} lb (${row.source}, ${row.origin})`, () => {
      const Fem = bearing(row.G, row.D, row.main);
      const Fes = row.Fes || bearing(row.G, row.D, row.side);
      const theta = Math.max(row.main, row.side);
      // Penetration 8 D without the tip, so half the tip bears as well.
      const { Z } = shear({
        D: row.D,
        Dy: row.Dr,
        lm: 8 * row.D + row.E / 2,
        ls: row.ts,
        Fem,
        Fes,
        Fyb: row.Fyb,
        theta,
      });
      expect(Math.abs(Z - row.Z)).toBeLessThanOrEqual(5);
    });

  const modesOf = makeYieldModes({ id: 'nds-2018', name: 'NDS 2018' });
  test('all six modes of an 8d nail, plywood on spruce, as an independent worksheet has them', () => {
    const rd = ratio(2.2);
    const modes = modesOf({
      Dy: inch(0.131),
      lm: inch(1.75),
      ls: inch(0.75),
      Fem: psi(3364.2),
      Fes: psi(4636.7),
      Fyb: psi(100_000),
      RdI: rd,
      RdII: rd,
      RdIII: rd,
    });
    const expected = {
      Im: 350.57,
      Is: 207.07,
      II: 126.29,
      IIIm: 132.95,
      IIIs: 84.38,
      IV: 88.93,
      k1: 0.6099,
      k2: 0.9296,
      k3: 1.5307,
    };
    for (const [name, value] of Object.entries(expected))
      expect(Math.abs(modes[name as keyof typeof modes] - value), name).toBeLessThanOrEqual(
        name.startsWith('k') ? 1e-4 : 0.02,
      );
    expect(governingMode(modes)).toBe('IIIs');
  });

  test('No. 10 in 1/2 in sides, G 0.50: k3 1.67954, IIIs 89.93, IV 116.94 lb (computed beside Table 12L)', () => {
    const rd = ratio(2.2);
    const rest = {
      lm: inch(1.71),
      ls: inch(0.5),
      Fem: psi(4650),
      Fes: psi(4650),
      Fyb: psi(80_000),
      RdI: rd,
      RdII: rd,
      RdIII: rd,
    };
    const modes = modesOf({ Dy: inch(0.152), ...rest });
    expect([modes.IIIs.toFixed(2), modes.IV.toFixed(2)]).toEqual(['89.93', '116.94']);
    // The last digit of the printed k3 is one unit off the equation: 1.679534.
    expect(Math.abs(modes.k3 - 1.67954)).toBeLessThanOrEqual(1e-5);
  });

  test('10d common through 3/4 in, Douglas fir: 105.1 lb with unrounded bearing and the whole penetration', () => {
    const Fe = bearing(0.5, 0.148, 0, 'formula');
    const { Z, mode } = shear({ D: 0.148, Dy: 0.148, lm: 2.25, ls: 0.75, Fem: Fe, Fes: Fe, Fyb: 90_000 });
    expect(Math.abs(Z - 105.1)).toBeLessThanOrEqual(0.1);
    expect(mode).toBe('IIIs');
  });

  test('the root diameter counts: with the nominal one a No. 10 would be 36 percent too strong', () => {
    const row = { D: 0.19, lm: 1.71, ls: 0.5, Fem: 4650, Fes: 4650, Fyb: 80_000 };
    expect(shear({ ...row, Dy: 0.19 }).Z / shear({ ...row, Dy: 0.152 }).Z).toBeCloseTo(1.36, 2);
  });
});

test('No. 10 in double shear, 1.31 in the least side, G 0.55: 254.96 lb, mode IV', () => {
  // Bearing by the formula, not rounded: the tabulated 5550 psi gives 0.56 lb more.
  const Fe = bearing(0.55, 0.19, 0, 'formula');
  const trace: Trace = [];
  const lengths = { D: inch(0.19), Dy: inch(0.152), lm: inch(3), ls: inch(1.31), θ: degree(0) };
  const Z = nds.doubleShear({ ...lengths, Fem: Fe, Fes: Fe, Fyb: psi(80_000) }, trace);
  expect(Math.abs(Number(Z) - 254.96)).toBeLessThanOrEqual(0.05);
  expect(trace.at(-1)).toMatchObject({ because: 'least of the modes: IV' });
});

test('a thin main member between two sides bears out in mode Im, and that value is not doubled', () => {
  const lengths = { D: inch(0.19), Dy: inch(0.152), lm: inch(0.25), ls: inch(1.5), θ: degree(0) };
  const Z = nds.doubleShear({ ...lengths, Fem: psi(3350), Fes: psi(3350), Fyb: psi(80_000) });
  expect(Z).toBeCloseTo((0.152 * 0.25 * 3350) / 2.2, 6);
});

test('mode II does not exist in double shear: thin sides bear out at twice Is though II alone is less', () => {
  const lengths = { D: inch(0.19), Dy: inch(0.152), lm: inch(1), ls: inch(0.3), θ: degree(0) };
  const Z = nds.doubleShear({ ...lengths, Fem: psi(3350), Fes: psi(3350), Fyb: psi(80_000) });
  expect(Z).toBeCloseTo((2 * 0.152 * 0.3 * 3350) / 2.2, 6);
});

test('lengths, diameters and angles outside the equations are refused', () => {
  const good = { D: inch(0.19), Dy: inch(0.152), lm: inch(1.7), ls: inch(0.5), θ: degree(0) };
  const strengths = { Fem: psi(3350), Fes: psi(3350), Fyb: psi(80_000) };
  const bad = [
    { D: inch(1.01) },
    { D: inch(0.09) },
    { Dy: inch(0.06) },
    { lm: inch(0) },
    { ls: inch(-1) },
    { θ: degree(91) },
    { Fyb: psi(Number.NaN) },
  ];
  for (const change of bad) {
    const outcome = nds.singleShear({ ...good, ...strengths, ...change });
    expect(isRefusal(outcome) && outcome.input).toBe(Object.keys(change)[0]);
  }
});
