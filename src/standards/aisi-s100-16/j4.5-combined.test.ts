import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inch, lbf, psi } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { shearAndPullOut, shearAndPullOver, shearAndTension } from './j4.5-combined.ts';

// Left and right sides are printed to 0.0001 (each rounded), so their quotient is good to about 0.0003 of itself.
const share = (value: unknown, left: number, right: number): void =>
  expect(Math.abs(Number(value) / (left / right) - 1)).toBeLessThanOrEqual(0.0005);

describe('shear and pull-over, S100-16 J4.5.1', () => {
  const rows = [
    {
      method: 'ASD',
      V: 100,
      T: 150,
      t1: 0.0299,
      d: 0.216,
      dw: 0.415,
      Fu1: 65_000,
      left: 0.1763,
      right: 0.4681,
    },
    { method: 'ASD', V: 250, T: 200, t1: 0.0359, d: 0.25, dw: 0.5, Fu1: 65_000, left: 0.2399, right: 0.4681 },
    {
      method: 'ASD',
      V: 50,
      T: 400,
      t1: 0.0418,
      d: 0.216,
      dw: 0.415,
      Fu1: 45_000,
      left: 0.2881,
      right: 0.4681,
    },
    {
      method: 'LRFD',
      V: 200,
      T: 100,
      t1: 0.0299,
      d: 0.25,
      dw: 0.75,
      Fu1: 65_000,
      left: 0.1849,
      right: 0.715,
    },
  ] as const;
  const values = (row: (typeof rows)[number]) => ({
    method: row.method,
    V: lbf(row.V),
    T: lbf(row.T),
    t1: inch(row.t1),
    t2: inch(2.5 * row.t1),
    d: inch(row.d),
    dw: inch(row.dw),
    Fu1: psi(row.Fu1),
    pull: 'all round' as const,
  });
  for (const row of rows)
    test(`${row.method} V ${row.V} T ${row.T} in ${row.t1} in (computed; formula and limits published)`, () => {
      share(shearAndPullOver(values(row)), row.left, row.right);
    });

  const base = values(rows[0]);
  for (const [name, change, input] of [
    ['24 ga sheet', { t1: inch(0.0239) }, 't1'],
    ['sheet of 0.0284 in', { t1: inch(0.0284) }, 't1'],
    ['sheet of 0.0446 in', { t1: inch(0.0446), t2: inch(0.2) }, 't1'],
    ['a #10 screw', { d: inch(0.19) }, 'd'],
    ['a 5/16 in screw', { d: inch(0.3125) }, 'd'],
    ['a washer above 3/4 in', { dw: inch(0.76) }, 'dw'],
    ['sheet above 70 ksi', { Fu1: psi(70_001) }, 'Fu1'],
    ['a support less than 2.5 times as thick', { t2: inch(2.49 * 0.0299) }, 't2'],
    ['negative shear', { V: lbf(-1) }, 'V'],
  ] as const)
    test(`${name} is refused`, () => {
      const outcome = shearAndPullOver({ ...base, ...change });
      expect(isRefusal(outcome) && outcome.input).toBe(input);
    });
  test('its ends are in: 0.0285 and 0.0445 in, 70 ksi, 3/4 in', () => {
    const ends = { t2: inch(0.2), dw: inch(0.75), Fu1: psi(70_000) };
    for (const t1 of [0.0285, 0.0445])
      expect(isRefusal(shearAndPullOver({ ...base, ...ends, t1: inch(t1) }))).toBe(false);
  });
  test('a pull on one side counts twice in the tension part', () => {
    const tension = { ...base, V: lbf(0) };
    const all = Number(shearAndPullOver(tension));
    expect(shearAndPullOver({ ...tension, pull: 'one side' })).toBeCloseTo(2 * all, 12);
  });
});

describe('shear and pull-out, S100-16 J4.5.2', () => {
  const rows = [
    { V: 100, T: 80, t2: 0.0346, d: 0.19, Fu2: 45_000, Fy2: 33_000, left: 0.5068, right: 0.451 },
    { V: 200, T: 150, t2: 0.0566, d: 0.216, Fu2: 65_000, Fy2: 50_000, left: 0.3391, right: 0.451 },
    { V: 120, T: 60, t2: 0.0451, d: 0.164, Fu2: 45_000, Fy2: 33_000, left: 0.3758, right: 0.451 },
  ] as const;
  const values = (row: (typeof rows)[number]) => ({
    method: 'ASD' as const,
    V: lbf(row.V),
    T: lbf(row.T),
    t2: inch(row.t2),
    tc: inch(row.t2),
    d: inch(row.d),
    Fu2: psi(row.Fu2),
    Fy2: psi(row.Fy2),
  });
  for (const row of rows)
    test(`ASD V ${row.V} T ${row.T} in ${row.t2} in (computed; form published, limits recalled)`, () => {
      share(shearAndPullOut(values(row)), row.left, row.right);
    });

  const base = values(rows[0]);
  for (const [name, change, input] of [
    ['sheet of 0.0296 in', { t2: inch(0.0296), tc: inch(0.0296) }, 't2'],
    ['sheet of 0.0725 in', { t2: inch(0.0725) }, 't2'],
    ['more penetration than sheet', { tc: inch(0.04) }, 'tc'],
    ['a #6 screw', { d: inch(0.138) }, 'd'],
    ['sheet above 121 ksi', { Fu2: psi(121_001), Fy2: psi(121_000) }, 'Fu2'],
    ['Fu/Fy above 1.62', { Fy2: psi(27_000) }, 'Fu2/Fy2'],
    ['Fu below Fy', { Fy2: psi(46_000) }, 'Fu2/Fy2'],
  ] as const)
    test(`${name} is refused`, () => {
      const outcome = shearAndPullOut({ ...base, ...change });
      expect(isRefusal(outcome) && outcome.input).toBe(input);
    });
  test('LRFD and LSD use 0.60 and 0.50 of the same line', () => {
    const by = (method: 'LRFD' | 'LSD') => Number(shearAndPullOut({ ...base, method }));
    expect(by('LSD') / by('LRFD')).toBeCloseTo(0.6 / 0.5, 12);
    expect(by('LRFD') / Number(shearAndPullOut(base))).toBeCloseTo(1 / 2.55 / 0.6, 12);
  });
});

describe('shear and tension in the screw, S100-16 J4.5.3', () => {
  for (const { method, V, T, Pnvs, Pnts, left, right } of [
    { method: 'ASD', V: 400, T: 300, Pnvs: 1644, Pnts: 1158, left: 0.5024, right: 0.4333 },
    { method: 'ASD', V: 500, T: 900, Pnvs: 2330, Pnts: 2325, left: 0.6017, right: 0.4333 },
    { method: 'LRFD', V: 1000, T: 1200, Pnvs: 3048, Pnts: 3201, left: 0.703, right: 0.65 },
  ] as const)
    test(`${method} V ${V} T ${T} (recalled formula, computed)`, () => {
      const values = { V: lbf(V), T: lbf(T), Pnvs: lbf(Pnvs), Pnts: lbf(Pnts), d: inch(0.19), method };
      share(shearAndTension(values), left, right);
    });
  test('more load of either kind never lowers the share, and no load is none', () => {
    const load = fc.double({ min: 0, max: 5000, noNaN: true });
    fc.assert(
      fc.property(load, load, load, (V, T, more) => {
        const at = (shear: number, tension: number) =>
          Number(
            shearAndTension({
              V: lbf(shear),
              T: lbf(tension),
              Pnvs: lbf(1644),
              Pnts: lbf(1158),
              method: 'ASD',
            }),
          );
        expect(at(V + more, T)).toBeGreaterThanOrEqual(at(V, T));
        expect(at(V, T + more)).toBeGreaterThanOrEqual(at(V, T));
        expect(at(0, 0)).toBe(0);
      }),
    );
  });
  test('a screw of unknown strength is refused', () => {
    const values = { V: lbf(1), T: lbf(1), Pnvs: lbf(0), Pnts: lbf(1158), method: 'ASD' } as const;
    const outcome = shearAndTension(values);
    expect(isRefusal(outcome) && outcome.input).toBe('Pnvs');
  });
});
