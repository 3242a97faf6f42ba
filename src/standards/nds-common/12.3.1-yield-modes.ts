/**
 * NDS 12.3.1: lateral value by the yield modes, Eq. 12.3-1 to 12.3-10, single and double shear.
 * D in the equations is the diameter that yields (root of a wood screw). Faces must touch: with insulation or
 * battens between the members the equations do not hold. Thin steel on the head side has to pass bearing, tilting
 * and pull-over of the sheet by the cold-formed standard as well.
 */
import type { Inch, Lbf, Psi, Ratio } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal, type Outcome, type Refusal } from '../../trace/refusal.ts';
import { type Trace, taken } from '../../trace/step.ts';
import { makeReductionTerm } from './12.3.1-yield-limits.ts';
import { citation, type NdsEdition } from './edition.ts';

export interface YieldValues {
  readonly Dy: Inch;
  readonly lm: Inch;
  readonly ls: Inch;
  readonly Fem: Psi;
  readonly Fes: Psi;
  readonly Fyb: Psi;
  readonly RdI: Ratio;
  readonly RdII: Ratio;
  readonly RdIII: Ratio;
}

export interface YieldModes {
  readonly k1: Ratio;
  readonly k2: Ratio;
  readonly k3: Ratio;
  readonly Im: Lbf;
  readonly Is: Lbf;
  readonly II: Lbf;
  readonly IIIm: Lbf;
  readonly IIIs: Lbf;
  readonly IV: Lbf;
}

/** The six single-shear modes, all of them, as the equations stand. */
export function makeYieldModes(edition: NdsEdition) {
  const of = (number: string) => citation(edition, `12.3.1 Eq. ${number}`);
  const mode = { Dy: 'in', Rd: '1' } as const;
  const coefficient = { clause: of('12.3-1 to 12.3-6'), unit: '1' } as const;
  const eq = {
    Re: equation({ ...coefficient, gives: 'Re', from: { Fem: 'psi', Fes: 'psi' }, is: 'Fem / Fes' }),
    Rt: equation({ ...coefficient, gives: 'Rt', from: { lm: 'in', ls: 'in' }, is: 'lm / ls' }),
    k1: equation({
      ...coefficient,
      gives: 'k1',
      from: { Re: '1', Rt: '1' },
      is: '(sqrt(Re + 2 * Re^2 * (1 + Rt + Rt^2) + Rt^2 * Re^3) - Re * (1 + Rt)) / (1 + Re)',
    }),
    k2: equation({
      ...coefficient,
      gives: 'k2',
      from: { Re: '1', Fyb: 'psi', Dy: 'in', Fem: 'psi', lm: 'in' },
      is: '-1 + sqrt(2 * (1 + Re) + 2 * Fyb * (1 + 2 * Re) * Dy^2 / (3 * Fem * lm^2))',
    }),
    k3: equation({
      ...coefficient,
      gives: 'k3',
      from: { Re: '1', Fyb: 'psi', Dy: 'in', Fem: 'psi', ls: 'in' },
      is: '-1 + sqrt(2 * (1 + Re) / Re + 2 * Fyb * (2 + Re) * Dy^2 / (3 * Fem * ls^2))',
    }),
    Im: equation({
      clause: of('12.3-1'),
      gives: 'Z_Im',
      unit: 'lbf',
      from: { ...mode, lm: 'in', Fem: 'psi' },
      is: 'Dy * lm * Fem / Rd',
    }),
    Is: equation({
      clause: of('12.3-2'),
      gives: 'Z_Is',
      unit: 'lbf',
      from: { ...mode, ls: 'in', Fes: 'psi' },
      is: 'Dy * ls * Fes / Rd',
    }),
    II: equation({
      clause: of('12.3-3'),
      gives: 'Z_II',
      unit: 'lbf',
      from: { ...mode, k1: '1', ls: 'in', Fes: 'psi' },
      is: 'k1 * Dy * ls * Fes / Rd',
    }),
    IIIm: equation({
      clause: of('12.3-4'),
      gives: 'Z_IIIm',
      unit: 'lbf',
      from: { ...mode, k2: '1', lm: 'in', Fem: 'psi', Re: '1' },
      is: 'k2 * Dy * lm * Fem / ((1 + 2 * Re) * Rd)',
    }),
    IIIs: equation({
      clause: of('12.3-5'),
      gives: 'Z_IIIs',
      unit: 'lbf',
      from: { ...mode, k3: '1', ls: 'in', Fem: 'psi', Re: '1' },
      is: 'k3 * Dy * ls * Fem / ((2 + Re) * Rd)',
    }),
    IV: equation({
      clause: of('12.3-6'),
      gives: 'Z_IV',
      unit: 'lbf',
      from: { ...mode, Fem: 'psi', Fyb: 'psi', Re: '1' },
      is: 'Dy^2 / Rd * sqrt(2 * Fem * Fyb / (3 * (1 + Re)))',
    }),
  } as const;
  return ({ Dy, lm, ls, Fem, Fes, Fyb, RdI, RdII, RdIII }: YieldValues, trace?: Trace): YieldModes => {
    const Re = eq.Re({ Fem, Fes }, trace);
    const k1 = eq.k1({ Re, Rt: eq.Rt({ lm, ls }, trace) }, trace);
    const k2 = eq.k2({ Re, Fyb, Dy, Fem, lm }, trace);
    const k3 = eq.k3({ Re, Fyb, Dy, Fem, ls }, trace);
    return {
      k1,
      k2,
      k3,
      Im: eq.Im({ Dy, lm, Fem, Rd: RdI }, trace),
      Is: eq.Is({ Dy, ls, Fes, Rd: RdI }, trace),
      II: eq.II({ k1, Dy, ls, Fes, Rd: RdII }, trace),
      IIIm: eq.IIIm({ k2, Dy, lm, Fem, Re, Rd: RdIII }, trace),
      IIIs: eq.IIIs({ k3, Dy, ls, Fem, Re, Rd: RdIII }, trace),
      IV: eq.IV({ Dy, Fem, Fyb, Re, Rd: RdIII }, trace),
    };
  };
}

export const modeNames = ['Im', 'Is', 'II', 'IIIm', 'IIIs', 'IV'] as const;
export type ModeName = (typeof modeNames)[number];

/** The mode with the least value; of equal ones the first in the order of the equations. */
export function governingMode(modes: YieldModes): ModeName {
  return modeNames.reduce((least, name) => (modes[name] < modes[least] ? name : least));
}

const positive = { above: 0 } as const;
const inputs = {
  D: needs('in', 'nominal diameter', { min: 0.092, max: 1 }),
  Dy: needs('in', 'diameter that yields: root of a screw, shank of a nail', { min: 0.07, max: 1 }),
  lm: needs('in', 'bearing length in the main member', positive),
  ls: needs('in', 'bearing length in the side member', positive),
  Fem: needs('psi', 'dowel bearing strength of the main member', positive),
  Fes: needs('psi', 'dowel bearing strength of the side member', positive),
  Fyb: needs('psi', 'bending yield strength of the fastener', positive),
  θ: needs('deg', 'largest angle of load to grain in any member', { min: 0, max: 90 }),
};

/** Both shear clauses of an edition. */
export function makeLateralReference(edition: NdsEdition) {
  const modesOf = makeYieldModes(edition);
  const reductionTerm = makeReductionTerm(edition);
  const terms = (at: { D: Inch; Dy: Inch; θ: Parameters<typeof reductionTerm>[0]['θ'] }, trace?: Trace) => {
    const RdI = reductionTerm({ ...at, mode: 'I' }, trace);
    const RdII = reductionTerm({ ...at, mode: 'II' }, trace);
    const RdIII = reductionTerm({ ...at, mode: 'III or IV' }, trace);
    const refusal = [RdI, RdII, RdIII].find(isRefusal);
    return refusal ?? ({ RdI, RdII, RdIII } as Pick<YieldValues, 'RdI' | 'RdII' | 'RdIII'>);
  };
  const single = citation(edition, '12.3.1 Eq. 12.3-1 to 12.3-6');
  const double = citation(edition, '12.3.1 Eq. 12.3-7 to 12.3-10');
  const twice = equation({ clause: double, gives: 'Z', unit: 'lbf', from: { Z_s: 'lbf' }, is: '2 * Z_s' });
  const governs = (clauseText: string, name: ModeName, value: Lbf, trace?: Trace) =>
    taken(
      trace,
      { clause: clauseText, symbol: 'Z', unit: 'lbf', because: `least of the modes: ${name}` },
      value,
    );
  const gives = { symbol: 'Z', unit: 'lbf' } as const;
  return {
    singleShear: clause({
      id: `${edition.id}/12.3.1-single-shear`,
      title: 'lateral value of one fastener in single shear, reference',
      cites: single,
      inputs,
      gives,
      compute: (values, trace): Outcome<Lbf> => {
        const rd: ReturnType<typeof terms> | Refusal = terms(
          { D: values.D, Dy: values.Dy, θ: values.θ },
          trace,
        );
        if (isRefusal(rd)) return rd;
        const modes = modesOf({ ...values, ...rd }, trace);
        const name = governingMode(modes);
        return governs(single, name, modes[name], trace);
      },
    }),
    /** lm is the main member between the two sides; ls the lesser bearing length of the sides, of like strength. */
    doubleShear: clause({
      id: `${edition.id}/12.3.1-double-shear`,
      title: 'lateral value of one fastener in double shear, reference',
      cites: double,
      inputs,
      gives,
      compute: (values, trace): Outcome<Lbf> => {
        const rd: ReturnType<typeof terms> | Refusal = terms(
          { D: values.D, Dy: values.Dy, θ: values.θ },
          trace,
        );
        if (isRefusal(rd)) return rd;
        const modes = modesOf({ ...values, ...rd }, trace);
        const sides = (['Is', 'IIIs', 'IV'] as const).reduce((a, b) => (modes[b] < modes[a] ? b : a));
        const Z = twice({ Z_s: modes[sides] }, trace);
        return Z < modes.Im ? governs(double, sides, Z, trace) : governs(double, 'Im', modes.Im, trace);
      },
    }),
  };
}
