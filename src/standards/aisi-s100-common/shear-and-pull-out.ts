/**
 * J4.5.2: shear and pull-out together, V/Pnv + T/Pnot <= 1.15/Ω, or 1.15 φ. Gives the left side over the right:
 * 1 or less holds. V and T are of the method's load level, and each must also hold alone.
 * Pnv is tilting of the holding sheet. Form, 1.15, Ω 2.55 and φ 0.60 published (2012 edition on); LSD 0.50 and the
 * limits recalled: t2 0.0297 to 0.0724 in, #8 to #14 screws, Fu2 <= 121 ksi, 1.0 <= Fu2/Fy2 <= 1.62.
 */
import { type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { type Equation, equation } from '../../trace/equation.ts';
import { type Outcome, refuse } from '../../trace/refusal.ts';
import { note, taken } from '../../trace/step.ts';
import { type Document, methodInput } from './screw-terms.ts';

export const shearAndPullOutInputs = {
  V: needs('lbf', 'shear on one screw', { min: 0 }),
  T: needs('lbf', 'tension on one screw', { min: 0 }),
  t2: needs('in', 'base metal thickness of the sheet not touching the head', { min: 0.0297, max: 0.0724 }),
  tc: needs('in', 'lesser of thread penetration and t2', { above: 0 }),
  d: needs('in', 'nominal diameter of a #8 to #14 screw', { min: 0.164, max: 0.25 }),
  Fu2: needs('psi', 'tensile strength of the sheet of t2', { above: 0, max: 121_000 }),
  Fy2: needs('psi', 'yield strength of the sheet of t2', { above: 0 }),
};

/** Right side of the check before 1.15: 1/Ω, or φ. */
const factors = { ASD: 2.55, LRFD: 0.6, LSD: 0.5 } as const;

/** What the pull-out strength of this check is made from. */
export const pullOutSymbols = { tc: 'in', d: 'in', Fu2: 'psi' } as const;

export function makeShearAndPullOut(
  document: Document,
  pullOut: Equation<typeof pullOutSymbols, 'lbf'>,
  remark?: string,
) {
  const cites = `${document.name} J4.5.2`;
  const tilting = equation({
    clause: cites,
    gives: 'Pnv',
    unit: 'lbf',
    from: { t2: 'in', d: 'in', Fu2: 'psi' },
    is: '4.2 * sqrt(t2 ^ 3 * d) * Fu2',
  });
  const loads = { V: 'lbf', T: 'lbf', Pnv: 'lbf', Pnot: 'lbf' } as const;
  const byASD = equation({
    clause: cites,
    gives: 'ratio',
    unit: '1',
    from: { ...loads, Ω: '1' },
    is: '(V / Pnv + T / Pnot) / (1.15 / Ω)',
  });
  const byFactor = equation({
    clause: cites,
    gives: 'ratio',
    unit: '1',
    from: { ...loads, φ: '1' },
    is: '(V / Pnv + T / Pnot) / (1.15 * φ)',
  });
  return clause({
    id: `${document.id}/j4.5.2-shear-and-pull-out`,
    title: 'shear and pull-out together, as a share of the limit',
    cites,
    inputs: { ...shearAndPullOutInputs, method: methodInput },
    gives: { symbol: 'ratio', unit: '1' },
    compute: ({ V, T, t2, tc, d, Fu2, Fy2, method }, trace): Outcome<Ratio> => {
      if (tc > t2) return refuse(cites, 'tc', tc, `at most t2 = ${t2} in`);
      if (Fu2 < Fy2 || Fu2 > 1.62 * Fy2)
        return refuse(cites, 'Fu2/Fy2', Fu2 / Fy2, 'a ratio of tensile to yield strength of 1.0 to 1.62');
      if (remark) note(trace, cites, remark);
      note(
        trace,
        cites,
        'shear and tension must each hold alone as well; the limits of this clause are recalled',
      );
      const Pnv = tilting({ t2, d, Fu2 }, trace);
      const Pnot = pullOut({ tc, d, Fu2 }, trace);
      const because = method === 'LSD' ? 'recalled, not seen' : 'interaction factor of this clause';
      const symbol = method === 'ASD' ? 'Ω' : 'φ';
      const factor = taken(trace, { clause: cites, symbol, unit: '1', because }, ratio(factors[method]));
      return method === 'ASD'
        ? byASD({ V, T, Pnv, Pnot, Ω: factor }, trace)
        : byFactor({ V, T, Pnv, Pnot, φ: factor }, trace);
    },
  });
}
