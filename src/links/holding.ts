/** Thread in the holding ply: withdrawal from wood, pull-out from sheet. Own test before equation. */
import { type BuildUp, holdingPly, type SheetPly, stackAbove, type WoodPly } from '../connections/ply.ts';
import { inch, psi, ratio } from '../quantities/quantity.ts';
import type { Screw } from '../shelf/item.ts';
import { panelAllowances } from '../standards/nds-common/screw-allowance.ts';
import { isRefusal, type Outcome, refusalText } from '../trace/refusal.ts';
import type { Trace } from '../trace/step.ts';
import type { LinkContext } from './link-context.ts';
import { ownTestCapacity } from './own-test.ts';
import { seatedThread } from './seating.ts';
import { designStrength } from './sheet-strength.ts';
import type { Capacity } from './verdict.ts';

type Known = Pick<Capacity, 'value' | 'evidence' | 'cites' | 'remarks'> & { readonly because?: string };

export function holdingCapacity(
  screw: Screw,
  buildUp: BuildUp,
  context: LinkContext,
  trace?: Trace,
): Capacity {
  const ply = holdingPly(buildUp);
  const link = ply.kind === 'wood' ? 'withdrawal' : 'pull-out';
  const base = { link, of: 'fastener', unit: 'lbf', ...(trace ? { trace } : {}) } as const;
  const tested = ownTestCapacity(screw.tests, 'pull-out', ply, context.method, trace);
  if (tested) return { ...base, ...tested };
  const stack = stackAbove(buildUp);
  if (stack === undefined || ply.thickness_in === undefined)
    return { ...base, ...missing('the thickness of a ply is not known') };
  const byEquation =
    ply.kind === 'wood'
      ? withdrawal(screw, ply, ply.thickness_in, stack, context, trace)
      : pullOut(screw, ply, ply.thickness_in, context, trace);
  return { ...base, ...byEquation };
}

const missing = (because: string, cites = 'no evidence'): Known => ({
  value: undefined,
  evidence: 'assumed',
  cites,
  because,
  remarks: [],
});

function known(outcome: Outcome<number>, cites: string, remarks: readonly string[]): Known {
  return isRefusal(outcome)
    ? missing(refusalText(outcome), outcome.clause)
    : { value: outcome, evidence: 'equation of a standard', cites, remarks };
}

function withdrawal(
  screw: Screw,
  ply: WoodPly,
  thickness: number,
  stack: number,
  { wood, method }: LinkContext,
  trace: Trace | undefined,
): Known {
  if (ply.specificGravity === undefined)
    return missing('the specific gravity of the wood that holds the thread is not known; it enters squared');
  const values = {
    G: ratio(ply.specificGravity),
    D: inch(screw.diameter),
    pt: inch(seatedThread(screw, stack, thickness)),
    member: ply.product,
    // Roof screws are not wood screws of ASME B18.6.1; the clause writes the allowance into the proof.
    screwStandard: 'other than ASME B18.6.1',
    inService: ply.moisture,
    temperature: 'to 100 F',
    method,
    load: 'wind or earthquake',
  } as const;
  const remarks = ply.product === 'lumber' ? [] : [`${ply.name}: ${panelAllowances[ply.product]}`];
  return known(wood.screwWithdrawal(values, trace), `${wood.name} 12.2.2, Eq. 12.2-2`, remarks);
}

function pullOut(
  screw: Screw,
  ply: SheetPly,
  thickness: number,
  context: LinkContext,
  trace: Trace | undefined,
): Known {
  if (ply.family === 'steel') {
    const Fu = designStrength(ply, context, trace);
    if (typeof Fu !== 'number') return missing(Fu.because);
    return known(
      context.steel.pullOut(
        { tc: inch(thickness), d: inch(screw.diameter), Fu2: psi(Fu) },
        context.method,
        trace,
      ),
      `${context.steel.name} J4.4.1`,
      [],
    );
  }
  if (ply.family === 'aluminium') {
    if (ply.Fy_psi === undefined || ply.Fu_psi === undefined)
      return missing('the strength of the aluminium sheet is not known');
    return known(
      context.aluminium.pullOut(
        {
          Le: inch(thickness),
          D: inch(screw.diameter),
          n: screw.threadsPerInch,
          Fty2: psi(ply.Fy_psi),
          Ftu2: psi(ply.Fu_psi),
        },
        context.method,
        trace,
      ),
      `${context.aluminium.name}, pull-out`,
      [],
    );
  }
  return missing(`no standard here covers screws pulling out of ${ply.family} sheet; it needs an own test`);
}
