/**
 * ADM 2015 J.5.5.2: aluminium sheet pulled over a head or washer: (1.0 + 1.7 t1/Dw) Dw t1 Fty1; this edition goes by
 * the yield strength and has no crest factor. Countersunk heads: (0.27 + 1.45 t1/D) D t1 Fty1 for
 * 0.06 <= t1 < 0.19 in and t1/D <= 1.1. Recalled, not seen. Kept on the safe side: Dw counts to 5/8 in, the cap of the
 * editions before, and t1/Dw above 0.5 is refused.
 */
import { inch } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { note } from '../../trace/step.ts';
import { RECALLED, screwDiameter } from './factors.ts';
import type { Nominal } from './nominal.ts';

const cites = 'ADM 2015 J.5.5.2';

const counted = equation({
  clause: cites,
  gives: 'Dw',
  unit: 'in',
  from: { Dw: 'in', cap: 'in' },
  is: 'min(Dw, cap)',
});
const at = { clause: cites, gives: 'Rn', unit: 'lbf' } as const;
const flat = equation({
  ...at,
  from: { t1: 'in', Dw: 'in', Fty1: 'psi' },
  is: '(1.0 + 1.7 * t1 / Dw) * Dw * t1 * Fty1',
});
const sunk = equation({
  ...at,
  from: { t1: 'in', D: 'in', Fty1: 'psi' },
  is: '(0.27 + 1.45 * t1 / D) * D * t1 * Fty1',
});

export const pullOver = clause({
  id: 'adm-2015/j.5.5.2-pull-over',
  title: 'aluminium sheet pulled over the head or washer of one screw, nominal',
  cites,
  inputs: {
    t1: needs('in', 'thickness of the sheet under the head', { above: 0 }),
    Dw: needs('in', 'larger diameter of head and washer', { above: 0 }),
    D: needs('in', 'nominal screw diameter', screwDiameter),
    Fty1: needs('psi', 'tensile yield strength of the sheet under the head', { above: 0 }),
  },
  gives: { symbol: 'Rn', unit: 'lbf' },
  compute: ({ t1, Dw: full, D, Fty1 }, trace) => {
    if (full <= D) return refuse(cites, 'Dw', full, `more than the screw diameter ${D} in`);
    const Dw = counted({ Dw: full, cap: inch(0.625) }, trace);
    if (t1 / Dw > 0.5) return refuse(cites, 't1/Dw', t1 / Dw, 'at most 0.5');
    note(trace, cites, `${RECALLED}; the 5/8 in cap of the editions before is kept`);
    return flat({ t1, Dw, Fty1 }, trace) as Nominal<'pull-over'>;
  },
});

export const pullOverCountersunk = clause({
  id: 'adm-2015/j.5.5.2-pull-over/countersunk',
  title: 'aluminium sheet pulled over a countersunk head, nominal',
  cites,
  inputs: {
    t1: needs('in', 'thickness of the sheet under the head', { min: 0.06 }),
    D: needs('in', 'nominal screw diameter', screwDiameter),
    Fty1: needs('psi', 'tensile yield strength of the sheet under the head', { above: 0 }),
  },
  gives: { symbol: 'Rn', unit: 'lbf' },
  compute: ({ t1, D, Fty1 }, trace) => {
    if (t1 >= 0.19) return refuse(cites, 't1', t1, 'below 0.19 in');
    if (t1 / D > 1.1) return refuse(cites, 't1/D', t1 / D, 'at most 1.1');
    note(trace, cites, RECALLED);
    return sunk({ t1, D, Fty1 }, trace) as Nominal<'pull-over'>;
  },
});
