/**
 * J4.3.1 end distance by J6.1: shear rupture of the sheet between a screw and the end the force points at,
 * Pnv = 0.6 Fu Anv with Anv = 2 n t e_net. Recalled, not seen (the form since the 2010 supplement). e_net is read
 * conservatively: from the end of the sheet to the edge of a hole of the nominal screw diameter.
 */
import { type Lbf, ratio } from '../../quantities/quantity.ts';
import { clause, mayNeed, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { note } from '../../trace/step.ts';
import { type Document, screwDiameter } from './screw-terms.ts';

export const endTearOutInputs = {
  t: needs('in', 'base metal thickness of the sheet whose end is near', { above: 0 }),
  e: needs('in', 'from the screw centre to the end, in the line of force', { above: 0 }),
  d: needs('in', 'nominal screw diameter', screwDiameter),
  Fu: needs('psi', 'tensile strength of that sheet, reduced for low ductility', { above: 0 }),
  n: mayNeed('1', 'screws side by side across the force; one when left out', { min: 1, whole: true }),
};

export function makeEndTearOut<N extends Lbf>(document: Document) {
  const cites = `${document.name} J6.1`;
  const netLength = equation({
    clause: cites,
    gives: 'enet',
    unit: 'in',
    from: { e: 'in', d: 'in' },
    is: 'e - d / 2',
  });
  const area = equation({
    clause: cites,
    gives: 'Anv',
    unit: 'in²',
    from: { n: '1', t: 'in', enet: 'in' },
    is: '2 * n * t * enet',
  });
  const strength = equation({
    clause: cites,
    gives: 'Pnv',
    unit: 'lbf',
    from: { Fu: 'psi', Anv: 'in²' },
    is: '0.6 * Fu * Anv',
  });
  return clause({
    id: `${document.id}/j4.3.1-end-tear-out`,
    title: 'tear-out of screws towards the end of a sheet, nominal',
    cites,
    inputs: endTearOutInputs,
    gives: { symbol: 'Pnv', unit: 'lbf' },
    compute: ({ t, e, d, Fu, n = ratio(1) }, trace) => {
      if (e < 1.5 * d)
        return refuse(`${document.name} J4.2`, 'e', e, `at least 1.5 d = ${Number((1.5 * d).toFixed(4))} in`);
      note(
        trace,
        cites,
        'recalled form, not seen; the net length is taken to the edge of a hole of diameter d',
      );
      const enet = netLength({ e, d }, trace);
      return strength({ Fu, Anv: area({ n, t, enet }, trace) }, trace) as N;
    },
  });
}
