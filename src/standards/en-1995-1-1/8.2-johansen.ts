/**
 * EN 1995-1-1:2004+A1:2008 8.2: one fastener in single shear, timber to timber (8.6) and thin or thick steel sheet
 * on timber (8.9, 8.10), with the rope effect limited by kind of fastener. N, mm, MPa, characteristic.
 * Roof sheet is always thin: at most half the fastener diameter. The fit of a thick plate is not checked here.
 */
import { type Newton, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Trace, taken } from '../../trace/step.ts';

const at = 'EN 1995-1-1:2004+A1:2008';
/** 8.2.2(2): most the rope effect may add, as a part of the Johansen value. */
const ropeLimits = {
  'smooth nail': 0.15,
  'square nail': 0.25,
  'other nail': 0.5,
  screw: 1,
  bolt: 0.25,
  dowel: 0,
} as const;
export const ropeKinds = Object.keys(ropeLimits) as readonly (keyof typeof ropeLimits)[];

const rope = equation({
  clause: `${at} 8.2.2(2)`,
  gives: 'Fv',
  unit: 'N',
  from: { J: 'N', Fax: 'N', limit: '1' },
  is: 'J + min(Fax / 4, limit * J)',
});
const limitOf = (kind: keyof typeof ropeLimits, trace?: Trace) =>
  taken(
    trace,
    { clause: `${at} 8.2.2(2)`, symbol: 'limit', unit: '1', because: kind },
    ratio(ropeLimits[kind]),
  );

const two = { fh1: 'MPa', t1: 'mm', d: 'mm' } as const;
const mode = <const F extends Readonly<Record<string, 'MPa' | 'mm' | '1' | 'N·mm'>>>(
  gives: string,
  from: F,
  is: string,
) => equation({ clause: `${at} 8.2.2 (8.6)`, gives, unit: 'N', from, is });
const β = equation({
  clause: `${at} (8.8)`,
  gives: 'β',
  unit: '1',
  from: { fh1: 'MPa', fh2: 'MPa' },
  is: 'fh2 / fh1',
});
const a = mode('a', two, 'fh1 * t1 * d');
const b = mode('b', { fh2: 'MPa', t2: 'mm', d: 'mm' }, 'fh2 * t2 * d');
const c = mode(
  'c',
  { ...two, t2: 'mm', β: '1' },
  'fh1 * t1 * d / (1 + β) * (sqrt(β + 2 * β^2 * (1 + t2 / t1 + (t2 / t1)^2) + β^3 * (t2 / t1)^2) - β * (1 + t2 / t1))',
);
const dd = mode(
  'd',
  { ...two, β: '1', My: 'N·mm' },
  '1.05 * fh1 * t1 * d / (2 + β) * (sqrt(2 * β * (1 + β) + 4 * β * (2 + β) * My / (fh1 * d * t1^2)) - β)',
);
const e = mode(
  'e',
  { fh1: 'MPa', t2: 'mm', d: 'mm', β: '1', My: 'N·mm' },
  '1.05 * fh1 * t2 * d / (1 + 2 * β) * (sqrt(2 * β^2 * (1 + β) + 4 * β * (1 + 2 * β) * My / (fh1 * d * t2^2)) - β)',
);
const f = mode(
  'f',
  { fh1: 'MPa', d: 'mm', β: '1', My: 'N·mm' },
  '1.15 * sqrt(2 * β / (1 + β)) * sqrt(2 * My * fh1 * d)',
);

const above = { above: 0 } as const;
const shared = {
  d: needs('mm', 'diameter, of a screw the effective one', { above: 0, max: 30 }),
  My: needs('N·mm', 'yield moment', above),
  Fax: needs('N', 'axial resistance, for the rope effect; 0 leaves it out', { min: 0 }),
  kind: oneOf(ropeKinds, 'kind of fastener'),
};
const gives = { symbol: 'FvRk', unit: 'N' } as const;

const least = (clauseText: string, modes: Readonly<Record<string, Newton>>, trace?: Trace): Newton => {
  const [name, value] = Object.entries(modes).reduce((low, next) => (next[1] < low[1] ? next : low));
  return taken(
    trace,
    { clause: clauseText, symbol: 'FvRk', unit: 'N', because: `least of the modes: ${name}` },
    value,
  );
};

/** Timber or panel on timber, single shear. */
export const timberShear = clause({
  id: 'en-1995-1-1/8.2.2-timber-shear',
  title: 'one fastener between timber members in single shear, characteristic',
  cites: `${at} 8.2.2`,
  inputs: {
    ...shared,
    fh1: needs('MPa', 'embedment strength, head side', above),
    fh2: needs('MPa', 'embedment strength, point side', above),
    t1: needs('mm', 'head-side thickness', above),
    t2: needs('mm', 'penetration, point side', above),
  },
  gives,
  compute: ({ d, My, Fax, kind, fh1, fh2, t1, t2 }, trace) => {
    const ratioOf = β({ fh1, fh2 }, trace);
    const limit = limitOf(kind, trace);
    const roped = (J: Newton) => rope({ J, Fax, limit }, trace);
    const modes = {
      a: a({ fh1, t1, d }, trace),
      b: b({ fh2, t2, d }, trace),
      c: roped(c({ fh1, t1, d, t2, β: ratioOf }, trace)),
      d: roped(dd({ fh1, t1, d, β: ratioOf, My }, trace)),
      e: roped(e({ fh1, t2, d, β: ratioOf, My }, trace)),
      f: roped(f({ fh1, d, β: ratioOf, My }, trace)),
    };
    return least(`${at} 8.2.2`, modes, trace);
  },
});

const steelMode = (number: string, from: typeof steelFrom, is: string) =>
  equation({ clause: `${at} 8.2.3 (${number})`, gives: 'J', unit: 'N', from, is });
const steelFrom = { fh: 'MPa', t1: 'mm', d: 'mm', My: 'N·mm' } as const;
const thinBearing = equation({
  clause: `${at} 8.2.3 (8.9)`,
  gives: 'a',
  unit: 'N',
  from: { fh: 'MPa', t1: 'mm', d: 'mm' },
  is: '0.4 * fh * t1 * d',
});
const thinHinge = equation({
  clause: `${at} 8.2.3 (8.9)`,
  gives: 'b',
  unit: 'N',
  from: { fh: 'MPa', d: 'mm', My: 'N·mm' },
  is: '1.15 * sqrt(2 * My * fh * d)',
});
const thickBearing = equation({
  clause: `${at} 8.2.3 (8.10)`,
  gives: 'c',
  unit: 'N',
  from: { fh: 'MPa', t1: 'mm', d: 'mm' },
  is: 'fh * t1 * d',
});
const thickOne = steelMode('8.10', steelFrom, 'fh * t1 * d * (sqrt(2 + 4 * My / (fh * d * t1^2)) - 1)');
const thickTwo = equation({
  clause: `${at} 8.2.3 (8.10)`,
  gives: 'e',
  unit: 'N',
  from: { fh: 'MPa', d: 'mm', My: 'N·mm' },
  is: '2.3 * sqrt(My * fh * d)',
});
const between = equation({
  clause: `${at} 8.2.3(1)`,
  gives: 'FvRk',
  unit: 'N',
  from: { thin: 'N', thick: 'N', ts: 'mm', d: 'mm' },
  is: 'thin + (thick - thin) * (ts - 0.5 * d) / (0.5 * d)',
});

/** Steel sheet or plate on timber, single shear; between thin and thick a straight line. */
export const steelShear = clause({
  id: 'en-1995-1-1/8.2.3-steel-shear',
  title: 'one fastener through steel sheet into timber, characteristic',
  cites: `${at} 8.2.3`,
  inputs: {
    ...shared,
    ts: needs('mm', 'thickness of the steel', above),
    fh: needs('MPa', 'embedment strength of the timber', above),
    t1: needs('mm', 'penetration in the timber', above),
  },
  gives,
  compute: ({ d, My, Fax, kind, ts, fh, t1 }, trace) => {
    const limit = limitOf(kind, trace);
    const roped = (J: Newton) => rope({ J, Fax, limit }, trace);
    const thin = () =>
      least(
        `${at} (8.9)`,
        { a: thinBearing({ fh, t1, d }, trace), b: roped(thinHinge({ fh, d, My }, trace)) },
        trace,
      );
    const thick = () => {
      const modes = {
        d: roped(thickOne({ fh, t1, d, My }, trace)),
        e: roped(thickTwo({ fh, d, My }, trace)),
      };
      return least(`${at} (8.10)`, { c: thickBearing({ fh, t1, d }, trace), ...modes }, trace);
    };
    if (ts <= 0.5 * d) return thin();
    return ts >= d ? thick() : between({ thin: thin(), thick: thick(), ts, d }, trace);
  },
});
