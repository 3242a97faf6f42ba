/** The sheet under the head pulling over it. A clip tested until its base failed has this link inside its test. */
import type { BuildUp, SheetPly } from '../connections/ply.ts';
import { inch, psi } from '../quantities/quantity.ts';
import type { Screw } from '../shelf/item.ts';
import { isRefusal, type Outcome, refusalText } from '../trace/refusal.ts';
import { note, type Trace } from '../trace/step.ts';
import type { LinkContext } from './link-context.ts';
import { ownTestCapacity } from './own-test.ts';
import { designStrength } from './sheet-strength.ts';
import type { Capacity } from './verdict.ts';

export function pullOverCapacity(
  screw: Screw,
  buildUp: BuildUp,
  oneSided: boolean,
  context: LinkContext,
  trace?: Trace,
): Capacity | undefined {
  const top = buildUp.plies.find((ply): ply is SheetPly => ply.kind === 'sheet');
  if (!top || buildUp.plies.indexOf(top) === buildUp.holding) return undefined;
  if (top.role === 'clip base' && context.parts.clip?.upliftCoversBase) return undefined;
  const base = {
    link: 'pull-over',
    of: 'fastener',
    unit: 'lbf',
    remarks: [],
    ...(trace ? { trace } : {}),
  } as const;
  const tested = ownTestCapacity(screw.tests, 'pull-over', top, context.method, trace);
  if (tested) return { ...base, ...tested };
  const outcome = byEquation(screw, top, oneSided, context, trace);
  if (typeof outcome === 'string')
    return { ...base, value: undefined, evidence: 'assumed', cites: 'no evidence', because: outcome };
  if (isRefusal(outcome.value))
    return {
      ...base,
      value: undefined,
      evidence: 'assumed',
      cites: outcome.value.clause,
      because: refusalText(outcome.value),
    };
  return { ...base, value: outcome.value, evidence: 'equation of a standard', cites: outcome.cites };
}

function byEquation(
  screw: Screw,
  top: SheetPly,
  oneSided: boolean,
  context: LinkContext,
  trace: Trace | undefined,
): { readonly value: Outcome<number>; readonly cites: string } | string {
  const t1 = top.thickness_in;
  if (t1 === undefined) return `the thickness of the ${top.name} is not known`;
  if (top.family === 'steel') {
    const Fu = designStrength(top, context, trace);
    if (typeof Fu !== 'number') return Fu.because;
    return {
      value: overSteel(screw, t1, Fu, oneSided, context, trace),
      cites: `${context.steel.name} J4.4.2`,
    };
  }
  if (top.family === 'aluminium') {
    if (top.Fy_psi === undefined || top.Fu_psi === undefined)
      return 'the strength of the aluminium sheet is not known';
    const Dw = inch(screw.washer?.metalDiameter ?? screw.head.bearingDiameter);
    const value = context.aluminium.pullOver(
      { t1: inch(t1), Dw, Dh: inch(screw.diameter), Ftu1: psi(top.Fu_psi), Fty1: psi(top.Fy_psi) },
      context.method,
      trace,
    );
    return {
      value: oneSided && typeof value === 'number' ? value / 2 : value,
      cites: `${context.aluminium.name}, pull-over`,
    };
  }
  return `no standard here covers ${top.family} sheet pulling over a head; it needs an own test`;
}

/** Under the washer where its metal is thick enough to count on this sheet; else under the head alone. */
function overSteel(
  screw: Screw,
  t1: number,
  Fu: number,
  oneSided: boolean,
  { steel, method }: LinkContext,
  trace: Trace | undefined,
): Outcome<number> {
  const common = {
    d: inch(screw.diameter),
    dh: inch(screw.head.bearingDiameter),
    t1: inch(t1),
    Fu1: psi(Fu),
    pull: oneSided ? ('one side' as const) : ('all round' as const),
  };
  if (screw.washer) {
    const washer = { dw: inch(screw.washer.metalDiameter), tw: inch(screw.washer.metalThickness) };
    const under = steel.pullOver({ bearing: 'domed washer', ...common, ...washer }, method, trace);
    if (!isRefusal(under) || under.input !== 'tw') return under;
    note(trace, under.clause, `${refusalText(under)}; the head alone is counted`);
  }
  return steel.pullOver({ bearing: 'head alone', ...common }, method, trace);
}
