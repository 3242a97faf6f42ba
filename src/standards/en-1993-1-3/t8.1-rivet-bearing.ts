/**
 * EN 1993-1-3 Table 8.1, blind rivets, bearing: Fb,Rd = α fu d t/γM2, at most fu e1 t/(1.2 γM2). t = t1:
 * α = 3.6 (t/d)^0.5, at most 2.1; t1 >= 2.5 t: 2.1; between linear. The 3.6 and the end cap published (an open code
 * library); 2.6 <= d <= 6.4 mm and fu <= 550 MPa recalled. Pull-through of rivets comes from tests: no formula.
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { note } from '../../trace/step.ts';
import { gammaM2, gammaM2Input } from './partial-factor.ts';

const cites = 'EN 1993-1-3:2006 Table 8.1';
const equal = equation({
  clause: cites,
  gives: 'αEqual',
  unit: '1',
  from: { t: 'mm', d: 'mm' },
  is: 'min(3.6 * sqrt(t / d), 2.1)',
});
const between = equation({
  clause: cites,
  gives: 'α',
  unit: '1',
  from: { αEqual: '1', t: 'mm', t1: 'mm' },
  is: 'αEqual + (2.1 - αEqual) * (min(t1 / t, 2.5) - 1) / (2.5 - 1)',
});
const strength = equation({
  clause: cites,
  gives: 'FbRd',
  unit: 'N',
  from: { α: '1', fu: 'MPa', d: 'mm', t: 'mm', e1: 'mm', γM2: '1' },
  is: 'min(α * fu * d * t, fu * e1 * t / 1.2) / γM2',
});

export const rivetBearing = clause({
  id: 'en-1993-1-3/t8.1-rivet-bearing',
  title: 'bearing of one blind rivet on the thinner sheet, design resistance',
  cites,
  inputs: {
    d: needs('mm', 'nominal rivet diameter', { min: 2.6, max: 6.4 }),
    t: needs('mm', 'thickness of the thinner sheet', { above: 0 }),
    t1: needs('mm', 'thickness of the thicker sheet', { above: 0 }),
    e1: needs('mm', 'end distance in the line of force', { above: 0 }),
    fu: needs('MPa', 'tensile strength of the thinner sheet', { above: 0, max: 550 }),
    γM2: gammaM2Input,
  },
  gives: { symbol: 'FbRd', unit: 'N' },
  compute: ({ d, t, t1, e1, fu, γM2: given }, trace) => {
    if (t1 < t) return refuse(cites, 't1', t1, `at least the thinner sheet, ${t} mm`);
    if (e1 < 1.5 * d) return refuse(cites, 'e1', e1, `at least 1.5 d = ${1.5 * d} mm`);
    note(trace, cites, 'the limits of diameter, strength and end distance are recalled, not seen');
    const α = between({ αEqual: equal({ t, d }, trace), t, t1 }, trace);
    return strength({ α, fu, d, t, e1, γM2: gammaM2(cites, given, trace) }, trace);
  },
});
