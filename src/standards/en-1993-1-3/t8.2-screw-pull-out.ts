/**
 * EN 1993-1-3 Table 8.2, self-tapping screws, pull-out: 0.45 d tsup fu,sup/γM2 where the support is thinner than the
 * thread pitch s, else 0.65: a step of 44 % at tsup = s. The 0.65 published (ENV 1993-1-3 has it for all), 0.45
 * recalled (2006 edition). Support of at least 0.9 mm.
 */
import { ratio } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { taken } from '../../trace/step.ts';
import { gammaM2, gammaM2Input } from './partial-factor.ts';

const cites = 'EN 1993-1-3:2006 Table 8.2';

const strength = equation({
  clause: cites,
  gives: 'FoRd',
  unit: 'N',
  from: { k: '1', d: 'mm', tsup: 'mm', fusup: 'MPa', γM2: '1' },
  is: 'k * d * tsup * fusup / γM2',
});

export const screwPullOut = clause({
  id: 'en-1993-1-3/t8.2-screw-pull-out',
  title: 'pull-out of one self-tapping screw from its support, design resistance',
  cites,
  inputs: {
    d: needs('mm', 'nominal screw diameter', { min: 3, max: 8 }),
    tsup: needs('mm', 'thickness of the support', { min: 0.9 }),
    s: needs('mm', 'thread pitch', { above: 0 }),
    fusup: needs('MPa', 'tensile strength of the support', { above: 0 }),
    γM2: gammaM2Input,
  },
  gives: { symbol: 'FoRd', unit: 'N' },
  compute: ({ d, tsup, s, fusup, γM2: given }, trace) => {
    const thin = tsup < s;
    const because = thin
      ? 'support thinner than the pitch (recalled)'
      : 'support at least as thick as the pitch';
    const k = taken(trace, { clause: cites, symbol: 'k', unit: '1', because }, ratio(thin ? 0.45 : 0.65));
    return strength({ k, d, tsup, fusup, γM2: gammaM2(cites, given, trace) }, trace);
  },
});
