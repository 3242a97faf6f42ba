/**
 * One edition of the aluminium screw provisions as one object that hands out available strengths only, already reduced
 * by that edition's factors, so that a caller that holds one object cannot mix two editions.
 */
import type { Inch, Lbf, PerInch, Psi } from '../../quantities/quantity.ts';
import type { ClauseValues } from '../../trace/clause.ts';
import type { Outcome } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import type { Method } from './factors.ts';
import type { screwStrengthInputs } from './j.5.6.3-screw-strength.ts';
import type { shearInputs } from './j.5.6-shear.ts';

export interface AluminiumPullOut {
  /** Nominal screw diameter. */
  readonly D: Inch;
  readonly n: PerInch;
  /** Full thread engaged in the aluminium. */
  readonly Le: Inch;
  readonly Fty2: Psi;
  readonly Ftu2: Psi;
}

export interface AluminiumPullOver {
  readonly t1: Inch;
  /** Larger diameter of head and washer. */
  readonly Dw: Inch;
  /** Hole; the nominal diameter for a screw that drills its own. */
  readonly Dh: Inch;
  readonly Ftu1: Psi;
  readonly Fty1: Psi;
  /** Counts in editions with a crest factor; not stated is taken as crest, the weaker. */
  readonly place?: 'valley' | 'crest';
}

export interface AluminiumEdition {
  readonly name: string;
  /** Machine threads (10-24, 12-24, 1/4-20) are known by diameter and pitch; all others are spaced threads. */
  readonly pullOut: (values: AluminiumPullOut, method: Method, trace?: Trace) => Outcome<Lbf>;
  readonly pullOver: (values: AluminiumPullOver, method: Method, trace?: Trace) => Outcome<Lbf>;
  readonly shear: (values: ClauseValues<typeof shearInputs>, method: Method, trace?: Trace) => Outcome<Lbf>;
  readonly screwStrength: (
    values: ClauseValues<typeof screwStrengthInputs>,
    method: Method,
    trace?: Trace,
  ) => Outcome<Lbf>;
  readonly minimumSpacing: (values: { readonly D: Inch }, trace?: Trace) => Outcome<Inch>;
  readonly minimumEdgeDistance: (values: { readonly D: Inch }, trace?: Trace) => Outcome<Inch>;
}
