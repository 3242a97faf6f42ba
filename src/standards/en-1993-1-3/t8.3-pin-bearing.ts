/**
 * EN 1993-1-3 Table 8.3, cartridge fired pins, bearing: 3.2 fu d t/γM2 (published), e1 >= 4.5 d (published). Recalled:
 * 3.7 <= d <= 6.0 mm, fu <= 550 MPa, and the least support: 4 mm at d 3.7, 6 mm at 4.5, 8 mm at 5.2 mm; between these
 * diameters the next larger support is asked for. Pull-through goes as for screws: see pinPullThrough.
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { note } from '../../trace/step.ts';
import { gammaM2, gammaM2Input } from './partial-factor.ts';

const cites = 'EN 1993-1-3:2006 Table 8.3';
const strength = equation({
  clause: cites,
  gives: 'FbRd',
  unit: 'N',
  from: { fu: 'MPa', d: 'mm', t: 'mm', γM2: '1' },
  is: '3.2 * fu * d * t / γM2',
});

function leastSupport(d: number): number {
  if (d <= 3.7) return 4;
  return d <= 4.5 ? 6 : 8;
}

export const pinBearing = clause({
  id: 'en-1993-1-3/t8.3-pin-bearing',
  title: 'bearing of one cartridge fired pin on the sheet, design resistance',
  cites,
  inputs: {
    d: needs('mm', 'nominal pin diameter', { min: 3.7, max: 6 }),
    t: needs('mm', 'thickness of the sheet', { above: 0 }),
    tsup: needs('mm', 'thickness of the support', { above: 0 }),
    e1: needs('mm', 'end distance in the line of force', { above: 0 }),
    fu: needs('MPa', 'tensile strength of the sheet', { above: 0, max: 550 }),
    γM2: gammaM2Input,
  },
  gives: { symbol: 'FbRd', unit: 'N' },
  compute: ({ d, t, tsup, e1, fu, γM2: given }, trace) => {
    if (e1 < 4.5 * d) return refuse(cites, 'e1', e1, `at least 4.5 d = ${4.5 * d} mm`);
    const support = leastSupport(d);
    if (tsup < support) return refuse(cites, 'tsup', tsup, `at least ${support} mm for this pin`);
    note(trace, cites, 'the limits of diameter, strength and support are recalled, not seen');
    return strength({ fu, d, t, γM2: gammaM2(cites, given, trace) }, trace);
  },
});
