/**
 * AISI S100-16 K2.1.1 (chapter F1 up to the 2012 edition): resistance and safety factor from n tests of one kind.
 * φ = Cφ Mm Fm Pm exp(-β0 (VM² + VF² + CP VP² + VQ²)^0.5), Ω = 1.6/φ. CP = (1 + 1/n) m/(m - 2), m = n - 1, for four
 * tests and more; 5.7 for three. VP counts as at least 0.065. Equations published (a public reproduction of K2.1.1);
 * Mm, VM, Fm, VF recalled. The nominal strength is the mean of all results; fewer than three give none.
 */
import { type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { note, type Trace, taken } from '../../trace/step.ts';

const cites = 'AISI S100-16 K2.1.1';

const kinds = ['screw connection', 'connection not listed'] as const;

/** Bias and scatter of material and fabrication; recalled. */
const scatter = {
  'screw connection': { Mm: 1.1, VM: 0.1, Fm: 1, VF: 0.1 },
  'connection not listed': { Mm: 1.1, VM: 0.1, Fm: 1, VF: 0.15 },
} as const;

/** Calibration coefficient and target reliability of connections. */
const target = { LRFD: { Cφ: 1.52, β0: 3.5 }, LSD: { Cφ: 1.42, β0: 4 } } as const;

const VQ = ratio(0.21);
const LEAST_VP = ratio(0.065);
const CP_OF_THREE = ratio(5.7);

const inputs = {
  n: needs('1', 'number of tests of one kind', { min: 3, whole: true }),
  Pm: needs('1', 'mean of test over prediction; 1 when the prediction is the mean of the tests', {
    above: 0,
  }),
  VP: needs('1', 'coefficient of variation of test over prediction', { min: 0 }),
  kind: oneOf(kinds, 'what was tested'),
};

const sampleCorrection = equation({
  clause: cites,
  gives: 'CP',
  unit: '1',
  from: { n: '1' },
  is: '(1 + 1 / n) * (n - 1) / (n - 3)',
});
const leastVP = equation({
  clause: cites,
  gives: 'VP',
  unit: '1',
  from: { VP: '1', least: '1' },
  is: 'max(VP, least)',
});
const resistance = equation({
  clause: cites,
  gives: 'φ',
  unit: '1',
  from: {
    Cφ: '1',
    Mm: '1',
    Fm: '1',
    Pm: '1',
    β0: '1',
    VM: '1',
    VF: '1',
    CP: '1',
    VP: '1',
    VQ: '1',
  },
  is: 'Cφ * Mm * Fm * Pm * exp(-β0 * sqrt(VM ^ 2 + VF ^ 2 + CP * VP ^ 2 + VQ ^ 2))',
});
const safety = equation({ clause: cites, gives: 'Ω', unit: '1', from: { φ: '1' }, is: '1.6 / φ' });

function correction(n: Ratio, trace: Trace | undefined): Ratio {
  if (n > 3) return sampleCorrection({ n }, trace);
  return taken(trace, { clause: cites, symbol: 'CP', unit: '1', because: 'three tests' }, CP_OF_THREE);
}

/** Resistance factor φ for LRFD or LSD. */
export const resistanceFactorFromTests = clause({
  id: 'aisi-s100-16/k2.1.1-factor-from-tests/resistance',
  title: 'resistance factor from tests of a connection',
  cites,
  inputs: { ...inputs, method: oneOf(['LRFD', 'LSD'], 'design method') },
  gives: { symbol: 'φ', unit: '1' },
  compute: ({ n, Pm, VP: seen, kind, method }, trace) => {
    note(trace, cites, 'Mm, VM, Fm and VF are recalled, not seen');
    const { Mm, VM, Fm, VF } = scatter[kind];
    const { Cφ, β0 } = target[method];
    const CP = correction(n, trace);
    const VP = leastVP({ VP: seen, least: LEAST_VP }, trace);
    const bias = { Cφ: ratio(Cφ), Mm: ratio(Mm), Fm: ratio(Fm), Pm };
    return resistance({ ...bias, β0: ratio(β0), VM: ratio(VM), VF: ratio(VF), CP, VP, VQ }, trace);
  },
});

/** Safety factor Ω for ASD. */
export const safetyFactorFromTests = clause({
  id: 'aisi-s100-16/k2.1.1-factor-from-tests/safety',
  title: 'safety factor from tests of a connection',
  cites,
  inputs,
  gives: { symbol: 'Ω', unit: '1' },
  compute: (values, trace) => {
    const φ = resistanceFactorFromTests({ ...values, method: 'LRFD' }, trace);
    return isRefusal(φ) ? φ : safety({ φ }, trace);
  },
});
