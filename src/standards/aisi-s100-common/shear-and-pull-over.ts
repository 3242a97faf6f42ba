/**
 * J4.5.1: shear and pull-over together, V/Pnv + 0.71 T/Pnov <= 1.10/Ω, or 1.10 φ. Gives the left side over the
 * right: 1 or less holds. V and T are of the method's load level, and each must also hold alone.
 * Limits (published): t1 0.0285 to 0.0445 in, #12 and #14 self-drilling screws, dw <= 3/4 in, Fu1 <= 70 ksi,
 * t2/t1 >= 2.5. Panels of 26 and 24 gauge are outside. Factors Ω 2.35 and φ 0.65 published, LSD 0.55 recalled.
 * Here dw is the larger of head and washer as it is, not the effective diameter of J4.4.2.
 */
import { inch, type Lbf, type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { type Equation, equation } from '../../trace/equation.ts';
import { type Outcome, refuse } from '../../trace/refusal.ts';
import { note, taken } from '../../trace/step.ts';
import { pullShare, pulls } from './pull-over-diameter.ts';
import { type Document, methodInput } from './screw-terms.ts';

export const shearAndPullOverInputs = {
  V: needs('lbf', 'shear on one screw', { min: 0 }),
  T: needs('lbf', 'tension on one screw', { min: 0 }),
  t1: needs('in', 'base metal thickness of the sheet under the head', { min: 0.0285, max: 0.0445 }),
  t2: needs('in', 'base metal thickness of the other sheet', { above: 0 }),
  d: needs('in', 'nominal diameter of a #12 or #14 self-drilling screw', { min: 0.216, max: 0.25 }),
  dw: needs('in', 'larger diameter of head and washer', { min: 0.3125, max: 0.75 }),
  Fu1: needs('psi', 'tensile strength of the sheet under the head', { above: 0, max: 70_000 }),
  pull: oneOf(pulls, 'a pull on one side of the head counts half'),
};

/** Right side of the check before 1.10: 1/Ω, or φ. */
const factors = { ASD: 2.35, LRFD: 0.65, LSD: 0.55 } as const;

/** What the pull-over strength of this check is made from. */
export const pullOverSymbols = { t1: 'in', dw: 'in', Fu1: 'psi', share: '1' } as const;

/** The edition says what pull-over strength enters, and what it cannot confirm. */
export function makeShearAndPullOver(
  document: Document,
  pullOver: Equation<typeof pullOverSymbols, 'lbf'>,
  remark?: string,
) {
  const cites = `${document.name} J4.5.1`;
  const bearing = equation({
    clause: cites,
    gives: 'Pnv',
    unit: 'lbf',
    from: { t1: 'in', d: 'in', Fu1: 'psi' },
    is: '2.7 * t1 * d * Fu1',
  });
  const loads = { V: 'lbf', T: 'lbf', Pnv: 'lbf', Pnov: 'lbf' } as const;
  const byASD = equation({
    clause: cites,
    gives: 'ratio',
    unit: '1',
    from: { ...loads, Ω: '1' },
    is: '(V / Pnv + 0.71 * T / Pnov) / (1.10 / Ω)',
  });
  const byFactor = equation({
    clause: cites,
    gives: 'ratio',
    unit: '1',
    from: { ...loads, φ: '1' },
    is: '(V / Pnv + 0.71 * T / Pnov) / (1.10 * φ)',
  });
  return clause({
    id: `${document.id}/j4.5.1-shear-and-pull-over`,
    title: 'shear and pull-over together, as a share of the limit',
    cites,
    inputs: { ...shearAndPullOverInputs, method: methodInput },
    gives: { symbol: 'ratio', unit: '1' },
    compute: ({ V, T, t1, t2, d, dw, Fu1, pull, method }, trace): Outcome<Ratio> => {
      if (t2 < 2.5 * t1)
        return refuse(cites, 't2', t2, `t2 of at least 2.5 t1 = ${inch(2.5 * t1).toFixed(4)} in`);
      if (remark) note(trace, cites, remark);
      note(trace, cites, 'shear and tension must each hold alone as well');
      const Pnv: Lbf = bearing({ t1, d, Fu1 }, trace);
      const Pnov = pullOver({ t1, dw, Fu1, share: ratio(pullShare[pull]) }, trace);
      const because = method === 'LSD' ? 'recalled, not seen' : 'interaction factor of this clause';
      const symbol = method === 'ASD' ? 'Ω' : 'φ';
      const factor = taken(trace, { clause: cites, symbol, unit: '1', because }, ratio(factors[method]));
      return method === 'ASD'
        ? byASD({ V, T, Pnv, Pnov, Ω: factor }, trace)
        : byFactor({ V, T, Pnv, Pnov, φ: factor }, trace);
    },
  });
}
