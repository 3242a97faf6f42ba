/**
 * EN 1995-1-1:2004+A1:2008 8.3.2: axially loaded smooth nails in solid timber, characteristic.
 * Smooth nails carry no permanent or long-term axial load.
 */
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { loadDurations } from './3.1-modification.ts';

const cites = 'EN 1995-1-1:2004+A1:2008 8.3.2';
const fax = equation({
  clause: `${cites} (8.25)`,
  gives: 'fax',
  unit: 'MPa',
  from: { ρk: 'kg/m³' },
  is: '0.00002 * ρk^2',
  fitted: true,
});
const fhead = equation({
  clause: `${cites} (8.26)`,
  gives: 'fhead',
  unit: 'MPa',
  from: { ρk: 'kg/m³' },
  is: '0.00007 * ρk^2',
  fitted: true,
});
const factor = equation({
  clause: `${cites}(7)`,
  gives: 'kpen',
  unit: '1',
  from: { tpen: 'mm', d: 'mm' },
  is: 'min(1, tpen / (4 * d) - 2)',
});
const resistance = equation({
  clause: `${cites} (8.24)`,
  gives: 'FaxRk',
  unit: 'N',
  from: { fax: 'MPa', kpen: '1', d: 'mm', tpen: 'mm', t: 'mm', fhead: 'MPa', dh: 'mm' },
  is: 'min(fax * kpen * d * tpen, fax * d * t + fhead * kpen * dh^2)',
});

/** Withdrawal from the point side, or head pulled through with the shank behind it: the lesser. */
export const smoothNailAxial = clause({
  id: 'en-1995-1-1/8.3.2-smooth-nail',
  title: 'axial resistance of a smooth nail across the grain, characteristic',
  cites,
  inputs: {
    d: needs('mm', 'nail diameter', { above: 0, max: 8 }),
    dh: needs('mm', 'head diameter', { above: 0 }),
    tpen: needs('mm', 'penetration on the point side', { above: 0 }),
    t: needs('mm', 'thickness of the head-side member', { above: 0 }),
    ρk: needs('kg/m³', 'characteristic density', { above: 0, max: 1000 }),
    duration: oneOf(loadDurations, 'class of load duration'),
  },
  gives: { symbol: 'FaxRk', unit: 'N' },
  compute: ({ d, dh, tpen, t, ρk, duration }, trace) => {
    if (duration === 'permanent' || duration === 'long')
      return refuse(`${cites}(1)`, 'duration', duration, 'medium, short or instantaneous', 'outside-scope');
    if (tpen < 8 * d - 1e-9) return refuse(`${cites}(7)`, 'tpen', tpen, `at least 8 d = ${8 * d} mm`);
    const values = { fax: fax({ ρk }, trace), fhead: fhead({ ρk }, trace), kpen: factor({ tpen, d }, trace) };
    return resistance({ ...values, d, dh, tpen, t }, trace);
  },
});
