/**
 * J4.3.2 and J4.4.3: strength of the screw itself. The section has no formula: the nominal strength is the maker's
 * or comes from tests (AISI S904). A factor found by tests (K2.1) may be used with a margin of 1.25 over the sheet:
 * 1.25 Ω, at most 3.0, or φ/1.25, at least 0.5 (LSD 0.4). Published for φ and 0.5; the rest recalled.
 */
import { type Lbf, type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, mayNeed, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { taken } from '../../trace/step.ts';
import { type Document, methodInput, screwDiameter } from './screw-terms.ts';

const d = mayNeed('in', 'nominal screw diameter; held to the range of the section when given', screwDiameter);

export const screwShearInputs = {
  d,
  Pnvs: needs('lbf', 'nominal shear strength of the screw, by its maker or by tests', { above: 0 }),
};
export const screwTensionInputs = {
  d,
  Pnts: needs('lbf', 'nominal tensile strength of the screw, by its maker or by tests', { above: 0 }),
};

export function makeScrewShear<N extends Lbf>(document: Document) {
  const cites = `${document.name} J4.3.2`;
  const because = 'as the maker states it or as tested';
  return clause({
    id: `${document.id}/j4.3.2-screw-shear`,
    title: 'shear of the screw itself, nominal',
    cites,
    inputs: screwShearInputs,
    gives: { symbol: 'Pnvs', unit: 'lbf' },
    compute: ({ Pnvs }, trace) =>
      taken(trace, { clause: cites, symbol: 'Pnvs', unit: 'lbf', because }, Pnvs) as N,
  });
}

export function makeScrewTension<N extends Lbf>(document: Document) {
  const cites = `${document.name} J4.4.3`;
  const because = 'as the maker states it or as tested';
  return clause({
    id: `${document.id}/j4.4.3-screw-tension`,
    title: 'tension of the screw itself, nominal',
    cites,
    inputs: screwTensionInputs,
    gives: { symbol: 'Pnts', unit: 'lbf' },
    compute: ({ Pnts }, trace) =>
      taken(trace, { clause: cites, symbol: 'Pnts', unit: 'lbf', because }, Pnts) as N,
  });
}

/** Bounds of a test-based factor of the screw itself: recalled but for LRFD. */
const bound = { ASD: 3, LRFD: 0.5, LSD: 0.4 } as const;

export function makeScrewTestFactor(document: Document) {
  const cites = `${document.name} J4.3.2, J4.4.3`;
  const safety = equation({
    clause: cites,
    gives: 'Ω',
    unit: '1',
    from: { tested: '1', bound: '1' },
    is: 'min(1.25 * tested, bound)',
  });
  const resistance = equation({
    clause: cites,
    gives: 'φ',
    unit: '1',
    from: { tested: '1', bound: '1' },
    is: 'max(tested / 1.25, bound)',
  });
  return clause({
    id: `${document.id}/j4.3.2-screw-shear/test-factor`,
    title: 'factor of the screw itself when found by tests',
    cites,
    inputs: {
      tested: needs('1', 'Ω (ASD) or φ (LRFD, LSD) found by K2.1', { above: 0 }),
      method: methodInput,
    },
    gives: { symbol: 'Ω or φ', unit: '1' },
    compute: ({ tested, method }, trace): Ratio => {
      const values = { tested, bound: ratio(bound[method]) };
      return method === 'ASD' ? safety(values, trace) : resistance(values, trace);
    },
  });
}
