/**
 * EN 1995-1-1:2004+A1:2008 8.7.2: axially loaded screws, characteristic values in N, mm and kg/m³.
 * Read in public worksheets and reproduced; the second-generation standard has other formulas and is another folder.
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';

const cites = 'EN 1995-1-1:2004+A1:2008 8.7.2';
const nef = equation({
  clause: `${cites} (8.41)`,
  gives: 'nef',
  unit: '1',
  from: { n: '1' },
  is: 'n^0.9',
  fitted: true,
});
const strength = equation({
  clause: `${cites} (8.39)`,
  gives: 'fax',
  unit: 'MPa',
  from: { d: 'mm', lef: 'mm', ρk: 'kg/m³' },
  is: '0.52 * d^-0.5 * lef^-0.1 * ρk^0.8',
  fitted: true,
});
const kd = equation({
  clause: `${cites} (8.40)`,
  gives: 'kd',
  unit: '1',
  from: { d: 'mm' },
  is: 'min(d / 8, 1)',
  fitted: true,
});
const resistance = equation({
  clause: `${cites} (8.38)`,
  gives: 'FaxRk',
  unit: 'N',
  from: { nef: '1', fax: 'MPa', d: 'mm', lef: 'mm', kd: '1', α: 'deg' },
  is: 'nef * fax * d * lef * kd / (1.2 * cos(α)^2 + sin(α)^2)',
});
const declared = equation({
  clause: `${cites} (8.40a)`,
  gives: 'FaxRk',
  unit: 'N',
  from: { nef: '1', fax: 'MPa', d: 'mm', lef: 'mm', ρk: 'kg/m³', ρa: 'kg/m³', α: 'deg' },
  is: 'nef * fax * d * lef * (ρk / ρa)^0.8 / (1.2 * cos(α)^2 + sin(α)^2)',
});

const density = needs('kg/m³', 'characteristic density of the timber', { above: 0, max: 1000 });
const common = {
  d: needs('mm', 'outer thread diameter', { min: 6, max: 12 }),
  lef: needs('mm', 'thread in the point-side member', { above: 0 }),
  ρk: density,
  α: needs('deg', 'angle of the screw axis to the grain', { min: 30, max: 90 }),
  n: needs('1', 'screws acting together', { min: 1, whole: true }),
};
const gives = { symbol: 'FaxRk', unit: 'N' } as const;
const sixDiameters = ({ d, lef }: { readonly d: number; readonly lef: number }) =>
  lef < 6 * d - 1e-9 ? refuse(`${cites}(3)`, 'lef', lef, `at least 6 d = ${6 * d} mm`) : undefined;

/** Withdrawal of screws with 6 ≤ d ≤ 12 mm and root 0.6 to 0.75 of the outer diameter. */
export const screwWithdrawal = clause({
  id: 'en-1995-1-1/8.7.2-screw-withdrawal',
  title: 'withdrawal of screws, characteristic',
  cites,
  inputs: { ...common, d1: needs('mm', 'inner thread diameter', { above: 0 }) },
  gives,
  compute: ({ d, d1, lef, ρk, α, n }, trace) => {
    if (d1 / d < 0.6 || d1 / d > 0.75)
      return refuse(`${cites}(4)`, 'd1', d1, `${0.6 * d} to ${0.75 * d} mm; else a declared value`);
    const short = sixDiameters({ d, lef });
    if (short) return short;
    const values = { nef: nef({ n }, trace), fax: strength({ d, lef, ρk }, trace), kd: kd({ d }, trace) };
    return resistance({ ...values, d, lef, α }, trace);
  },
});

/** Withdrawal of other screws by the declared parameter. */
export const declaredScrewWithdrawal = clause({
  id: 'en-1995-1-1/8.7.2-declared-withdrawal',
  title: 'withdrawal of screws by a declared parameter, characteristic',
  cites,
  inputs: {
    ...common,
    d: needs('mm', 'outer thread diameter', { above: 0, max: 24 }),
    fax: needs('MPa', 'declared withdrawal parameter', { above: 0 }),
    ρa: needs('kg/m³', 'density the parameter was declared for', { above: 0 }),
  },
  gives,
  compute: ({ n, ...values }, trace) =>
    sixDiameters(values) ?? declared({ ...values, nef: nef({ n }, trace) }, trace),
});

const through = equation({
  clause: `${cites} (8.40b)`,
  gives: 'FaxRk',
  unit: 'N',
  from: { nef: '1', fhead: 'MPa', dh: 'mm', ρk: 'kg/m³', ρa: 'kg/m³' },
  is: 'nef * fhead * dh^2 * (ρk / ρa)^0.8',
});

/** Heads pulled through, by the declared parameter. */
export const screwPullThrough = clause({
  id: 'en-1995-1-1/8.7.2-pull-through',
  title: 'pull-through of screw heads, characteristic',
  cites,
  inputs: {
    n: common.n,
    dh: needs('mm', 'diameter of the head', { above: 0 }),
    fhead: needs('MPa', 'declared pull-through parameter', { above: 0 }),
    ρk: density,
    ρa: needs('kg/m³', 'density the parameter was declared for', { above: 0 }),
  },
  gives,
  compute: ({ n, ...values }, trace) => through({ ...values, nef: nef({ n }, trace) }, trace),
});
