/** Tensile strength of a steel sheet that may be used in design: reduced for Grade 80 and other steel of low ductility. */
import type { SheetPly } from '../connections/ply.ts';
import { psi } from '../quantities/quantity.ts';
import { isRefusal, refusalText } from '../trace/refusal.ts';
import type { Trace } from '../trace/step.ts';
import type { LinkContext } from './link-context.ts';

export function designStrength(
  ply: SheetPly,
  context: Pick<LinkContext, 'steel'>,
  trace?: Trace,
): number | { readonly because: string } {
  if (ply.Fu_psi === undefined) return { because: `the tensile strength of the ${ply.name} is not known` };
  if (ply.ductility === 'unknown')
    return {
      because: `the ductility of the ${ply.name} is not known, so neither is the strength that may be used`,
    };
  if (ply.ductility === 'normal') return ply.Fu_psi;
  const reduced = context.steel.tensileStrengthForDesign(
    { Fu: psi(ply.Fu_psi), ductility: ply.ductility },
    trace,
  );
  return isRefusal(reduced) ? { because: refusalText(reduced) } : reduced;
}
