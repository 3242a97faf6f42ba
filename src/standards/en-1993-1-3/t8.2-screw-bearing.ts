/**
 * EN 1993-1-3 Table 8.2, self-tapping screws, bearing: Fb,Rd = α fu d t/γM2, t the thinner sheet, t1 the thicker.
 * t = t1: α = 3.2 (t/d)^0.5, at most 2.1. t1 >= 2.5 t: the same α where t is below 1.0 mm, else 2.1. Between: linear.
 * The 3.2 belongs to screws, 3.6 to rivets. Origin: published (an open code library); ENV 1993-1-3 agrees.
 */
import { type Millimetre, type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { type Trace, taken } from '../../trace/step.ts';
import { gammaM2, gammaM2Input } from './partial-factor.ts';

const cites = 'EN 1993-1-3:2006 Table 8.2';
const at = { clause: cites, gives: 'α', unit: '1' } as const;
const equal = equation({ ...at, from: { t: 'mm', d: 'mm' }, is: 'min(3.2 * sqrt(t / d), 2.1)' });
const between = equation({
  ...at,
  from: { αEqual: '1', αThick: '1', t: 'mm', t1: 'mm' },
  is: 'αEqual + (αThick - αEqual) * (t1 / t - 1) / (2.5 - 1)',
});
const strength = equation({
  clause: cites,
  gives: 'FbRd',
  unit: 'N',
  from: { α: '1', fu: 'MPa', d: 'mm', t: 'mm', γM2: '1' },
  is: 'α * fu * d * t / γM2',
});

interface Sheets {
  readonly t: Millimetre;
  readonly t1: Millimetre;
  readonly d: Millimetre;
}

function alpha({ t, t1, d }: Sheets, trace: Trace | undefined): Ratio {
  const αEqual = equal({ t, d }, trace);
  if (t < 1 || t1 === t) return αEqual;
  const because = 'sheet of 1.0 mm and more on one at least 2.5 times as thick';
  const αThick = taken(trace, { clause: cites, symbol: 'αThick', unit: '1', because }, ratio(2.1));
  return t1 >= 2.5 * t ? αThick : between({ αEqual, αThick, t, t1 }, trace);
}

export const screwBearing = clause({
  id: 'en-1993-1-3/t8.2-screw-bearing',
  title: 'bearing of one self-tapping screw on the thinner sheet, design resistance',
  cites,
  inputs: {
    d: needs('mm', 'nominal screw diameter', { min: 3, max: 8 }),
    t: needs('mm', 'thickness of the thinner sheet', { above: 0 }),
    t1: needs('mm', 'thickness of the thicker sheet', { above: 0 }),
    fu: needs('MPa', 'tensile strength of the thinner sheet', { above: 0 }),
    γM2: gammaM2Input,
  },
  gives: { symbol: 'FbRd', unit: 'N' },
  compute: ({ d, t, t1, fu, γM2: given }, trace) => {
    if (t1 < t) return refuse(cites, 't1', t1, `at least the thinner sheet, ${t} mm`);
    return strength({ α: alpha({ t, t1, d }, trace), fu, d, t, γM2: gammaM2(cites, given, trace) }, trace);
  },
});

const netStrength = equation({
  clause: cites,
  gives: 'FnRd',
  unit: 'N',
  from: { Anet: 'mm²', fu: 'MPa', γM2: '1' },
  is: 'Anet * fu / γM2',
});

/** The same for screws, rivets and pins: Tables 8.1 to 8.3. */
export const netSection = clause({
  id: 'en-1993-1-3/t8.2-screw-bearing/net-section',
  title: 'net section of the sheet at a row of fasteners, design resistance',
  cites,
  inputs: {
    Anet: needs('mm²', 'net area of the sheet', { above: 0 }),
    fu: needs('MPa', 'tensile strength of the sheet', { above: 0 }),
    γM2: gammaM2Input,
  },
  gives: { symbol: 'FnRd', unit: 'N' },
  compute: ({ Anet, fu, γM2: given }, trace) =>
    netStrength({ Anet, fu, γM2: gammaM2(cites, given, trace) }, trace),
});
