/** EN 1999-1-4, 8.3.2: shear of a steel or stainless screw itself, 380 As/γM3, As in mm². Published (stored extract). */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { gammaM3, gammaM3Input } from './partial-factor.ts';

const cites = 'EN 1999-1-4:2007 8.3.2';
// 380 is a stress in MPa written as a number.
const strength = equation({
  clause: cites,
  gives: 'FvRd',
  unit: 'N',
  from: { As: 'mm²', γM3: '1' },
  is: '380 * As / γM3',
  fitted: true,
});

export const screwShear = clause({
  id: 'en-1999-1-4/8.3.2-screw-shear',
  title: 'shear of a steel or stainless screw itself, design resistance',
  cites,
  inputs: { As: needs('mm²', 'stress area of the screw', { above: 0 }), γM3: gammaM3Input },
  gives: { symbol: 'FvRd', unit: 'N' },
  compute: ({ As, γM3: given }, trace) => strength({ As, γM3: gammaM3(cites, given, trace) }, trace),
});
