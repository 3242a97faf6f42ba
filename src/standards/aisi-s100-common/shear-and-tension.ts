/**
 * J4.5.3: shear and tension in the screw itself, V/Pnvs + T/Pnts <= 1.3/Ω, or 1.3 φ. Gives the left side over the
 * right: 1 or less holds. All of it recalled (2012 edition on), Ω 3.0, φ 0.5, LSD 0.4. Each must also hold alone:
 * at small shear the line lies above the single check.
 */
import { type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { note, taken } from '../../trace/step.ts';
import { screwShearInputs, screwTensionInputs } from './screw-strength.ts';
import { type Document, methodInput } from './screw-terms.ts';

export const shearAndTensionInputs = {
  V: needs('lbf', 'shear on one screw', { min: 0 }),
  T: needs('lbf', 'tension on one screw', { min: 0 }),
  ...screwShearInputs,
  ...screwTensionInputs,
};

const factors = { ASD: 3, LRFD: 0.5, LSD: 0.4 } as const;

export function makeShearAndTension(document: Document, remark?: string) {
  const cites = `${document.name} J4.5.3`;
  const loads = { V: 'lbf', T: 'lbf', Pnvs: 'lbf', Pnts: 'lbf' } as const;
  const byASD = equation({
    clause: cites,
    gives: 'ratio',
    unit: '1',
    from: { ...loads, Ω: '1' },
    is: '(V / Pnvs + T / Pnts) / (1.3 / Ω)',
  });
  const byFactor = equation({
    clause: cites,
    gives: 'ratio',
    unit: '1',
    from: { ...loads, φ: '1' },
    is: '(V / Pnvs + T / Pnts) / (1.3 * φ)',
  });
  return clause({
    id: `${document.id}/j4.5.3-shear-and-tension`,
    title: 'shear and tension in the screw itself together, as a share of the limit',
    cites,
    inputs: { ...shearAndTensionInputs, method: methodInput },
    gives: { symbol: 'ratio', unit: '1' },
    compute: ({ V, T, Pnvs, Pnts, method }, trace): Ratio => {
      if (remark) note(trace, cites, remark);
      note(trace, cites, 'recalled formula, not seen; shear and tension must each hold alone as well');
      const symbol = method === 'ASD' ? 'Ω' : 'φ';
      const because = 'interaction factor of this clause, recalled';
      const factor = taken(trace, { clause: cites, symbol, unit: '1', because }, ratio(factors[method]));
      return method === 'ASD'
        ? byASD({ V, T, Pnvs, Pnts, Ω: factor }, trace)
        : byFactor({ V, T, Pnvs, Pnts, φ: factor }, trace);
    },
  });
}
