/**
 * EN 1993-1-3, 8.3(8): tension and shear of a screw together, Ft/min(Fp,Rd, Fo,Rd) + Fv/min(Fb,Rd, Fn,Rd) <= 1.
 * Gives the left side: 1 or less holds. Recalled, not seen.
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { note } from '../../trace/step.ts';

const cites = 'EN 1993-1-3:2006 8.3(8)';
const share = equation({
  clause: cites,
  gives: 'ratio',
  unit: '1',
  from: { FtEd: 'N', FvEd: 'N', FpRd: 'N', FoRd: 'N', FbRd: 'N', FnRd: 'N' },
  is: 'FtEd / min(FpRd, FoRd) + FvEd / min(FbRd, FnRd)',
});

export const screwCombined = clause({
  id: 'en-1993-1-3/t8.2-screw-combined',
  title: 'tension and shear of one screw together, as a share of the limit',
  cites,
  inputs: {
    FtEd: needs('N', 'design tension', { min: 0 }),
    FvEd: needs('N', 'design shear', { min: 0 }),
    FpRd: needs('N', 'pull-through resistance', { above: 0 }),
    FoRd: needs('N', 'pull-out resistance', { above: 0 }),
    FbRd: needs('N', 'bearing resistance', { above: 0 }),
    FnRd: needs('N', 'net section resistance', { above: 0 }),
  },
  gives: { symbol: 'ratio', unit: '1' },
  compute: (values, trace) => {
    note(trace, cites, 'recalled, not seen');
    return share(values, trace);
  },
});
