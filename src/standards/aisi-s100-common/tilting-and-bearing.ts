/**
 * J4.3.1: shear of one screw limited by tilting and bearing of the two sheets.
 * t1, Fu1 is the sheet in contact with the head, t2, Fu2 the other; swapping them changes the mode.
 * t2/t1 <= 1: least of tilting and both bearings. t2/t1 >= 2.5: least of both bearings. Between: linear in t2/t1
 * between the two minima (not term by term). Origin: published (handbook, textbook, AISI D110-16 values).
 */
import type { Lbf } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Document, screwDiameter } from './screw-terms.ts';

export const shearInputs = {
  t1: needs('in', 'base metal thickness of the sheet touching the head', { above: 0 }),
  t2: needs('in', 'base metal thickness of the sheet not touching the head', { above: 0 }),
  d: needs('in', 'nominal screw diameter', screwDiameter),
  Fu1: needs('psi', 'tensile strength of the sheet of t1, reduced for low ductility', { above: 0 }),
  Fu2: needs('psi', 'tensile strength of the sheet of t2, reduced for low ductility', { above: 0 }),
};

/** N is the edition's own nominal strength of this limit state. */
export function makeTiltingAndBearing<N extends Lbf>(document: Document) {
  const cites = `${document.name} J4.3.1`;
  const at = { clause: cites, unit: 'lbf' } as const;
  const sheet1 = { t1: 'in', d: 'in', Fu1: 'psi' } as const;
  const sheet2 = { t2: 'in', d: 'in', Fu2: 'psi' } as const;
  const tilting = equation({ ...at, gives: 'Ptilt', from: sheet2, is: '4.2 * sqrt(t2 ^ 3 * d) * Fu2' });
  const bearing1 = equation({ ...at, gives: 'Pb1', from: sheet1, is: '2.7 * t1 * d * Fu1' });
  const bearing2 = equation({ ...at, gives: 'Pb2', from: sheet2, is: '2.7 * t2 * d * Fu2' });
  const leastOfThree = equation({
    ...at,
    gives: 'Pnv',
    from: { Ptilt: 'lbf', Pb1: 'lbf', Pb2: 'lbf' },
    is: 'min(Ptilt, Pb1, Pb2)',
  });
  const leastOfTwo = equation({ ...at, gives: 'Pnv', from: { Pb1: 'lbf', Pb2: 'lbf' }, is: 'min(Pb1, Pb2)' });
  const between = equation({
    ...at,
    gives: 'Pnv',
    from: { PnvAt1: 'lbf', PnvAt25: 'lbf', t1: 'in', t2: 'in' },
    is: 'PnvAt1 + (PnvAt25 - PnvAt1) * (t2 / t1 - 1) / (2.5 - 1)',
  });
  return clause({
    id: `${document.id}/j4.3.1-tilting-and-bearing`,
    title: 'shear of one screw by tilting and bearing of the sheets, nominal',
    cites,
    inputs: shearInputs,
    gives: { symbol: 'Pnv', unit: 'lbf' },
    compute: ({ t1, t2, d, Fu1, Fu2 }, trace) => {
      const Pb1 = bearing1({ t1, d, Fu1 }, trace);
      const Pb2 = bearing2({ t2, d, Fu2 }, trace);
      if (t2 >= 2.5 * t1) return leastOfTwo({ Pb1, Pb2 }, trace) as N;
      const thin = leastOfThree({ Ptilt: tilting({ t2, d, Fu2 }, trace), Pb1, Pb2 }, trace);
      if (t2 <= t1) return thin as N;
      return between({ PnvAt1: thin, PnvAt25: leastOfTwo({ Pb1, Pb2 }, trace), t1, t2 }, trace) as N;
    },
  });
}
