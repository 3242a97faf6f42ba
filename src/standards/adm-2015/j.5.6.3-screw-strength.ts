/**
 * ADM J.5: strength of the screw itself, in shear or tension: the maker's or tested strength over 1.25.
 * Recalled, not seen.
 */
import type { Lbf } from '../../quantities/quantity.ts';
import { clause, mayNeed, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { note } from '../../trace/step.ts';
import { type Document, RECALLED, screwDiameter } from './factors.ts';
import { document, type Nominal } from './nominal.ts';

export const screwStrengthInputs = {
  D: mayNeed('in', 'nominal screw diameter; held to the range of the section when given', screwDiameter),
  P: needs('lbf', 'shear or tensile strength of the screw by its maker or by tests', { above: 0 }),
};

export function makeScrewStrength<N extends Lbf>(of: Document) {
  const cites = `${of.name} J.5`;
  const reduced = equation({ clause: cites, gives: 'Rn', unit: 'lbf', from: { P: 'lbf' }, is: 'P / 1.25' });
  return clause({
    id: `${of.id}/j.5.6.3-screw-strength`,
    title: 'shear or tension of the screw itself in an aluminium joint, nominal',
    cites,
    inputs: screwStrengthInputs,
    gives: { symbol: 'Rn', unit: 'lbf' },
    compute: ({ P }, trace) => {
      note(trace, cites, RECALLED);
      return reduced({ P }, trace) as N;
    },
  });
}

export const screwStrength = makeScrewStrength<Nominal<'screw'>>(document);
