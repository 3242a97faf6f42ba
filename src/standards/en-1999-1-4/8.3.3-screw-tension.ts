/**
 * EN 1999-1-4, 8.3.3: aluminium sheet pulled over a screw, 6.1 αL αE αM t fu (dw/22)^0.5 (dw in mm), and pull-out of the
 * screw from its support, 0.95 fu,sup (tsup³ d)^0.5, both over γM3. αM 1.0 steel or stainless washer, 0.8 aluminium;
 * αL (span) and αE (position) come from the tables of the clause, 0.5 to 1.0. Not counted: fu of the sheet above
 * 260 MPa, fu,sup above 250 MPa (aluminium) or 400 MPa (steel), support above 6 mm. All recalled, not seen.
 */
import { megapascal, millimetre, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { note, taken } from '../../trace/step.ts';
import { gammaM3, gammaM3Input } from './partial-factor.ts';

const over = 'EN 1999-1-4:2007 8.3.3.1';
const out = 'EN 1999-1-4:2007 8.3.3.2';
const RECALLED = 'recalled, not seen';

const atMost = (clauseName: string, gives: string) =>
  equation({ clause: clauseName, gives, unit: 'MPa', from: { F: 'MPa', cap: 'MPa' }, is: 'min(F, cap)' });
const sheetStrength = atMost(over, 'fu');
const supportStrength = atMost(out, 'fusup');
const supportThickness = equation({
  clause: out,
  gives: 'tsup',
  unit: 'mm',
  from: { tsup: 'mm', cap: 'mm' },
  is: 'min(tsup, cap)',
});

const pullThrough = equation({
  clause: over,
  gives: 'FpRd',
  unit: 'N',
  from: { αL: '1', αE: '1', αM: '1', t: 'mm', fu: 'MPa', dw: 'mm', γM3: '1' },
  is: '6.1 * αL * αE * αM * t * fu * sqrt(dw / 22) / γM3',
  fitted: true,
});
const pullOut = equation({
  clause: out,
  gives: 'FoRd',
  unit: 'N',
  from: { fusup: 'MPa', tsup: 'mm', d: 'mm', γM3: '1' },
  is: '0.95 * fusup * sqrt(tsup ^ 3 * d) / γM3',
});

export const screwPullThrough = clause({
  id: 'en-1999-1-4/8.3.3-screw-tension/pull-through',
  title: 'aluminium sheet pulled over the washer of one screw, design resistance',
  cites: over,
  inputs: {
    washer: oneOf(['steel', 'aluminium'], 'metal of the washer'),
    αL: needs('1', 'factor of the span of the sheet', { min: 0.5, max: 1 }),
    αE: needs('1', 'factor of the position of the screw', { min: 0.5, max: 1 }),
    t: needs('mm', 'thickness of the sheet', { above: 0 }),
    fu: needs('MPa', 'ultimate strength of the sheet', { above: 0 }),
    dw: needs('mm', 'diameter of the washer', { above: 0 }),
    γM3: gammaM3Input,
  },
  gives: { symbol: 'FpRd', unit: 'N' },
  compute: ({ washer, αL, αE, t, fu: F, dw, γM3: given }, trace) => {
    note(trace, over, RECALLED);
    const fu = sheetStrength({ F, cap: megapascal(260) }, trace);
    const step = { clause: over, symbol: 'αM', unit: '1', because: `${washer} washer` } as const;
    const αM = taken(trace, step, ratio(washer === 'aluminium' ? 0.8 : 1));
    return pullThrough({ αL, αE, αM, t, fu, dw, γM3: gammaM3(over, given, trace) }, trace);
  },
});

export const screwPullOut = clause({
  id: 'en-1999-1-4/8.3.3-screw-tension/pull-out',
  title: 'pull-out of one screw from its support, design resistance',
  cites: out,
  inputs: {
    support: oneOf(['aluminium', 'steel'], 'metal of the support'),
    d: needs('mm', 'nominal screw diameter', { min: 5.5 }),
    tsup: needs('mm', 'thickness of the support', { above: 0 }),
    fusup: needs('MPa', 'ultimate strength of the support', { above: 0 }),
    γM3: gammaM3Input,
  },
  gives: { symbol: 'FoRd', unit: 'N' },
  compute: ({ support, d, tsup: full, fusup: F, γM3: given }, trace) => {
    note(trace, out, RECALLED);
    const fusup = supportStrength({ F, cap: megapascal(support === 'steel' ? 400 : 250) }, trace);
    const tsup = supportThickness({ tsup: full, cap: millimetre(6) }, trace);
    return pullOut({ fusup, tsup, d, γM3: gammaM3(out, given, trace) }, trace);
  },
});
