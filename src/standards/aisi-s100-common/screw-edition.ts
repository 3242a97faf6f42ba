/**
 * One edition of the screw provisions as one object. It hands out available strengths only, already reduced by
 * that edition's own factors, so a caller that holds one object cannot mix two editions. Every member named after a
 * limit state gives Rn/Ω (ASD) or φRn (LRFD, LSD), never the nominal strength.
 * ASD: compare with service loads; LRFD and LSD: with factored loads.
 */
import type { Inch, Lbf, Psi, Ratio } from '../../quantities/quantity.ts';
import { type ClauseInputs, type ClauseValues, needs } from '../../trace/clause.ts';
import type { Outcome } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import type { endTearOutInputs } from './end-tear-out.ts';
import type { pullOverDiameterInputs, pullOverInputs } from './pull-over-diameter.ts';
import type { screwShearInputs, screwTensionInputs } from './screw-strength.ts';
import { type Method, screwDiameter } from './screw-terms.ts';
import type { shearAndPullOutInputs } from './shear-and-pull-out.ts';
import type { shearAndPullOverInputs } from './shear-and-pull-over.ts';
import type { shearAndTensionInputs } from './shear-and-tension.ts';
import type { tensileInputs, yieldInputs } from './sheet-strength.ts';
import type { shearInputs } from './tilting-and-bearing.ts';

export const pullOutInputs = {
  tc: needs('in', 'lesser of thread penetration and thickness t2, base metal without coating', { above: 0 }),
  d: needs('in', 'nominal screw diameter', screwDiameter),
  Fu2: needs('psi', 'tensile strength of the sheet not touching the head, reduced for Grade 80', {
    above: 0,
  }),
};

type Strength<I extends ClauseInputs> = (
  values: ClauseValues<I>,
  method: Method,
  trace?: Trace,
) => Outcome<Lbf>;
/** Demand over limit: 1 or less holds. Refused outside the limits of the clause. */
type Share<I extends ClauseInputs> = (
  values: ClauseValues<I>,
  method: Method,
  trace?: Trace,
) => Outcome<Ratio>;
type Distance = (values: { readonly d: Inch }, trace?: Trace) => Outcome<Inch>;
type SheetStrength<I extends ClauseInputs> = (values: ClauseValues<I>, trace?: Trace) => Outcome<Psi>;

export interface ScrewEdition {
  readonly name: string;
  readonly cites: string;
  readonly shear: Strength<typeof shearInputs>;
  readonly endTearOut: Strength<typeof endTearOutInputs>;
  readonly pullOut: Strength<typeof pullOutInputs>;
  readonly pullOver: Strength<typeof pullOverInputs>;
  readonly screwShear: Strength<typeof screwShearInputs>;
  readonly screwTension: Strength<typeof screwTensionInputs>;
  readonly shearAndPullOver: Share<typeof shearAndPullOverInputs>;
  readonly shearAndPullOut: Share<typeof shearAndPullOutInputs>;
  readonly shearAndTension: Share<typeof shearAndTensionInputs>;
  readonly pullOverDiameter: (
    values: ClauseValues<typeof pullOverDiameterInputs>,
    trace?: Trace,
  ) => Outcome<Inch>;
  readonly minimumSpacing: Distance;
  readonly minimumEdgeDistance: Distance;
  readonly minimumEndDistance: Distance;
  /** A3.1: the strength of sheet steel to be used in design. */
  readonly tensileStrengthForDesign: SheetStrength<typeof tensileInputs>;
  readonly yieldStrengthForDesign: SheetStrength<typeof yieldInputs>;
}
