/**
 * EN 1999-1-4, 8.3.2.1: bearing of a self-tapping screw in aluminium sheet on a metal support. tsup = t:
 * 2.5 fu (t³ d)^0.5, at most 1.5 fu t d (8.9a); tsup >= 2.5 t: 1.5 fu t d (8.9b); between linear. fu above 260 MPa is
 * not counted; where the sheet is thicker than the support, t = tsup. On timber: 1.5 t d fu. d >= 5.5 mm.
 * Origin: published (a stored extract of the clause). Screws in the weather: austenitic stainless or aluminium only.
 */
import { type Millimetre, megapascal } from '../../quantities/quantity.ts';
import { clause, mayNeed, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { gammaM3, gammaM3Input } from './partial-factor.ts';

const cites = 'EN 1999-1-4:2007 8.3.2.1';
const HIGHEST_FU = megapascal(260);

const force = { clause: cites, unit: 'N', from: { fu: 'MPa', t: 'mm', d: 'mm' } } as const;
const counted = equation({
  clause: cites,
  gives: 'fu',
  unit: 'MPa',
  from: { fumin: 'MPa', cap: 'MPa' },
  is: 'min(fumin, cap)',
});
const equal = equation({
  ...force,
  gives: 'FbEqual',
  is: 'min(2.5 * fu * sqrt(t ^ 3 * d), 1.5 * fu * t * d)',
});
const thick = equation({ ...force, gives: 'FbThick', is: '1.5 * fu * t * d' });
const between = equation({
  clause: cites,
  gives: 'Fb',
  unit: 'N',
  from: { FbEqual: 'N', FbThick: 'N', t: 'mm', tsup: 'mm' },
  is: 'FbEqual + (FbThick - FbEqual) * (tsup / t - 1) / (2.5 - 1)',
});
const design = equation({
  clause: cites,
  gives: 'FbRd',
  unit: 'N',
  from: { Fb: 'N', γM3: '1' },
  is: 'Fb / γM3',
});

type Sheet = Parameters<typeof equal>[0];

function characteristic(sheet: Sheet, tsup: Millimetre | undefined, trace: Trace | undefined) {
  if (tsup === undefined || tsup >= 2.5 * sheet.t) return thick(sheet, trace);
  if (tsup <= sheet.t) return equal({ ...sheet, t: tsup }, trace);
  return between({ FbEqual: equal(sheet, trace), FbThick: thick(sheet, trace), t: sheet.t, tsup }, trace);
}

export const screwBearing = clause({
  id: 'en-1999-1-4/8.3.2.1-screw-bearing',
  title: 'bearing of one self-tapping screw in aluminium sheet, design resistance',
  cites,
  inputs: {
    support: oneOf(['metal', 'timber'], 'what the screw stands in'),
    d: needs('mm', 'nominal screw diameter', { min: 5.5 }),
    t: needs('mm', 'thickness of the sheet at the head', { above: 0 }),
    tsup: mayNeed('mm', 'thickness of a metal support', { above: 0 }),
    fumin: needs('MPa', 'lower ultimate strength of sheet and metal support', { above: 0 }),
    γM3: gammaM3Input,
  },
  gives: { symbol: 'FbRd', unit: 'N' },
  compute: ({ support, d, t, tsup, fumin, γM3: given }, trace) => {
    if (support === 'metal' && tsup === undefined)
      return refuse(cites, 'tsup', undefined, 'the thickness of the metal support', 'missing-input');
    const fu = counted({ fumin, cap: HIGHEST_FU }, trace);
    const Fb = characteristic({ fu, t, d }, support === 'timber' ? undefined : tsup, trace);
    return design({ Fb, γM3: gammaM3(cites, given, trace) }, trace);
  },
});
