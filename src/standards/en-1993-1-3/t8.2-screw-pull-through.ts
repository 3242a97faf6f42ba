/**
 * EN 1993-1-3 Table 8.2, self-tapping screws, pull-through: static dw t fu/γM2, wind (repeated) half of it. The wind
 * value published (ENV 1993-1-3), the static value recalled. A fastener not in the middle of the trough: 0.9 Fp at a
 * quarter point, 0.7 Fp each at both quarter points (recalled). 0.5 <= t <= 1.5 mm, support at least 0.9 mm; the
 * thinnest sheet lies at the head and the washer must be stiff enough.
 */
import { ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { note, taken } from '../../trace/step.ts';
import { gammaM2, gammaM2Input } from './partial-factor.ts';

const cites = 'EN 1993-1-3:2006 Table 8.2';

const loads = ['static', 'wind'] as const;
const places = ['trough middle', 'quarter point', 'both quarter points'] as const;
const shareOfLoad = { static: 1, wind: 0.5 } as const;
const shareOfPlace = { 'trough middle': 1, 'quarter point': 0.9, 'both quarter points': 0.7 } as const;

const strength = equation({
  clause: cites,
  gives: 'FpRd',
  unit: 'N',
  from: { kLoad: '1', kPlace: '1', dw: 'mm', t: 'mm', fu: 'MPa', γM2: '1' },
  is: 'kLoad * kPlace * dw * t * fu / γM2',
});

/** What the sheet is pulled over: also used for cartridge pins, Table 8.3. */
export const pullThroughInputs = {
  load: oneOf(loads, 'wind, and wind with static loads, is a repeated load'),
  place: oneOf(places, 'place of the fasteners in the trough of the profile'),
  dw: needs('mm', 'diameter of the washer or head', { above: 0 }),
  t: needs('mm', 'thickness of the sheet under the head', { min: 0.5, max: 1.5 }),
  fu: needs('MPa', 'tensile strength of the sheet under the head', { above: 0 }),
  γM2: gammaM2Input,
};

type Fastener = 'screw' | 'pin';

function makePullThrough(fastener: Fastener, from: string, id: string, leastSupport: number) {
  return clause({
    id,
    title: `sheet pulled over the head or washer of one ${fastener}, design resistance`,
    cites: from,
    inputs: {
      ...pullThroughInputs,
      tsup: needs('mm', 'thickness of the support', { min: leastSupport }),
    },
    gives: { symbol: 'FpRd', unit: 'N' },
    compute: ({ load, place, dw, t, tsup, fu, γM2: given }, trace) => {
      if (tsup < t) return refuse(from, 'tsup', tsup, `at least the sheet at the head, ${t} mm`);
      const set = (symbol: string, because: string, value: number) =>
        taken(trace, { clause: from, symbol, unit: '1', because }, ratio(value));
      const kLoad = set('kLoad', load, shareOfLoad[load]);
      const kPlace = set('kPlace', place, shareOfPlace[place]);
      if (load === 'static') note(trace, from, 'the static value is recalled, not seen');
      if (place !== 'trough middle')
        note(trace, from, 'the reduction at quarter points is recalled, not seen');
      return strength({ kLoad, kPlace, dw, t, fu, γM2: gammaM2(from, given, trace) }, trace);
    },
  });
}

export const screwPullThrough = makePullThrough('screw', cites, 'en-1993-1-3/t8.2-screw-pull-through', 0.9);

/** Pins: the support of at least 6 mm for tension is recalled. */
export const pinPullThrough = makePullThrough(
  'pin',
  'EN 1993-1-3:2006 Table 8.3',
  'en-1993-1-3/t8.2-screw-pull-through/pin',
  6,
);
