/**
 * ADM 2010 J.5.5.2 (2005: 5.4.2.2): aluminium sheet pulled over a head or washer, C t1 Ftu1 (Dws - Dh). C is 1.0 for
 * a screw in the valley, 0.7 at the crest. Dws, the larger of head and washer, counts to 5/8 in; Dh is the hole.
 * The 2015 edition has another form: see adm-2015. Recalled, not seen.
 */
import { inch, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { taken } from '../../trace/step.ts';
import { RECALLED } from '../adm-2015/factors.ts';
import type { Nominal } from './nominal.ts';

const cites = 'ADM 2010 J.5.5.2';

const counted = equation({
  clause: cites,
  gives: 'Dws',
  unit: 'in',
  from: { Dws: 'in', cap: 'in' },
  is: 'min(Dws, cap)',
});
const strength = equation({
  clause: cites,
  gives: 'Rn',
  unit: 'lbf',
  from: { C: '1', t1: 'in', Ftu1: 'psi', Dws: 'in', Dh: 'in' },
  is: 'C * t1 * Ftu1 * (Dws - Dh)',
});

export const pullOver = clause({
  id: 'adm-2010/j.5.5.2-pull-over',
  title: 'aluminium sheet pulled over the head or washer of one screw, nominal',
  cites,
  inputs: {
    place: oneOf(['valley', 'crest'], 'where the screw passes the ribbed sheet; a flat sheet is a valley'),
    t1: needs('in', 'thickness of the sheet under the head', { above: 0 }),
    Dws: needs('in', 'larger diameter of head and washer', { above: 0 }),
    Dh: needs('in', 'hole; the nominal screw diameter for a screw that drills its own', { above: 0 }),
    Ftu1: needs('psi', 'tensile ultimate strength of the sheet under the head', { above: 0 }),
  },
  gives: { symbol: 'Rn', unit: 'lbf' },
  compute: ({ place, t1, Dws: full, Dh, Ftu1 }, trace) => {
    const Dws = counted({ Dws: full, cap: inch(0.625) }, trace);
    if (Dws <= Dh) return refuse(cites, 'Dws', full, `a head or washer larger than the hole of ${Dh} in`);
    const because = `screw in the ${place}; ${RECALLED}`;
    const C = taken(
      trace,
      { clause: cites, symbol: 'C', unit: '1', because },
      ratio(place === 'crest' ? 0.7 : 1),
    );
    return strength({ C, t1, Ftu1, Dws, Dh }, trace) as Nominal<'pull-over'>;
  },
});
