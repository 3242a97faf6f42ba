/**
 * A3.1 (A2.3 up to the 2012 edition): strengths of sheet steel to be used in design.
 * normal: Fu/Fy at least 1.08 and elongation at least 10 % in 2 in, used as specified (published).
 * grade 80 (A653, A792, A875, A1008; elongation not specified): only in roofing, siding and decking, with
 * Fy = min(0.75 Fy, 60 ksi) and Fu = min(0.75 Fu, 62 ksi), whatever a mill certificate says (published).
 * low: specified elongation 3 to 10 %: 0.90 Fy and 0.90 Fu (recalled, 2012 edition on).
 * Most exposed-fastener panels are grade 80: 61.5 ksi, not 82. The reduction goes for pull-over as for shear.
 */
import type { Psi } from '../../quantities/quantity.ts';
import { clause, mayNeed, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Outcome, type Refusal, refuse } from '../../trace/refusal.ts';
import { note, type Trace } from '../../trace/step.ts';
import type { Document } from './screw-terms.ts';

export const ductilities = ['normal', 'grade 80', 'low'] as const;
export type Ductility = (typeof ductilities)[number];

const ductility = oneOf(ductilities, 'class of the grade; low: specified elongation of 3 to 10 %');
const elongation = mayNeed('%', 'specified elongation in 2 in; held to the class when given', { min: 0 });

export const tensileInputs = {
  ductility,
  Fu: needs('psi', 'specified tensile strength', { above: 0 }),
  Fy: mayNeed('psi', 'specified yield strength; Fu/Fy is held to the class when given', { above: 0 }),
  elongation,
};
export const yieldInputs = {
  ductility,
  Fy: needs('psi', 'specified yield strength', { above: 0 }),
  Fu: mayNeed('psi', 'specified tensile strength; Fu/Fy is held to the class when given', { above: 0 }),
  elongation,
};

interface Steel {
  readonly ductility: Ductility;
  readonly Fy?: number | undefined;
  readonly Fu?: number | undefined;
  readonly elongation?: number | undefined;
}

/** The refusal of a steel that does not belong to the class it is said to be of. */
function notOfClass(
  cites: string,
  { ductility: named, Fy, Fu, elongation: given }: Steel,
): Refusal | undefined {
  const share = Fu === undefined || Fy === undefined ? undefined : Fu / Fy;
  if (share !== undefined && share < 1) return refuse(cites, 'Fu/Fy', share, 'at least 1');
  if (named === 'normal' && share !== undefined && share < 1.08)
    return refuse(cites, 'Fu/Fy', share, 'at least 1.08 for steel of normal ductility');
  if (given === undefined || named === 'grade 80') return undefined;
  if (named === 'normal' && given < 10)
    return refuse(cites, 'elongation', given, 'at least 10 % for steel of normal ductility');
  if (named === 'low' && (given < 3 || given >= 10))
    return refuse(cites, 'elongation', given, 'from 3 to below 10 % in this class');
  return undefined;
}

const remarks: Readonly<Partial<Record<Ductility, string>>> = {
  'grade 80': 'steel without specified elongation serves in roofing, siding and decking only',
  low: 'the factor 0.90 is recalled, not seen',
};

function equations(cites: string, symbol: string, cap: number) {
  const at = { clause: cites, gives: symbol, unit: 'psi', from: { F: 'psi' } } as const;
  return {
    normal: equation({ ...at, is: 'F' }),
    low: equation({ ...at, is: '0.90 * F' }),
    // The cap is a stress in psi written as a number.
    'grade 80': equation({ ...at, is: `min(0.75 * F, ${cap})`, fitted: true }),
  };
}

function remark(cites: string, named: Ductility, trace: Trace | undefined): void {
  const text = remarks[named];
  if (text) note(trace, cites, text);
}

export function makeSheetStrength(document: Document) {
  const cites = `${document.name} A3.1`;
  const tensile = equations(cites, 'Fu', 62_000);
  const yielding = equations(cites, 'Fy', 60_000);
  return {
    effectiveTensileStrength: clause({
      id: `${document.id}/a3.1-sheet-strength/tensile`,
      title: 'tensile strength of sheet steel to be used in design',
      cites,
      inputs: tensileInputs,
      gives: { symbol: 'Fu', unit: 'psi' },
      compute: (values, trace): Outcome<Psi> => {
        const refused = notOfClass(cites, values);
        if (refused) return refused;
        remark(cites, values.ductility, trace);
        return tensile[values.ductility]({ F: values.Fu }, trace);
      },
    }),
    effectiveYieldStrength: clause({
      id: `${document.id}/a3.1-sheet-strength/yield`,
      title: 'yield strength of sheet steel to be used in design',
      cites,
      inputs: yieldInputs,
      gives: { symbol: 'Fy', unit: 'psi' },
      compute: (values, trace): Outcome<Psi> => {
        const refused = notOfClass(cites, values);
        if (refused) return refused;
        remark(cites, values.ductility, trace);
        return yielding[values.ductility]({ F: values.Fy }, trace);
      },
    }),
  };
}
