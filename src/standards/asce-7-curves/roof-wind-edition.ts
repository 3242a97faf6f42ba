/**
 * Wind on roofs by one edition, in one shape for both, so that a caller picks an edition and carries on. Write such
 * a caller as a function of E: then the velocity pressure of one edition cannot reach the other.
 */
import type { Degree, Foot, Psf, Ratio, SqFt } from '../../quantities/quantity.ts';
import type { Outcome } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import type { Feature } from './26.08-topographic-factor.ts';
import type { ChooseFigure } from './choose-figure.ts';
import type { EditionName, Exposure, FigureId, VelocityPressure } from './edition.ts';
import type { RoofPressureClause } from './roof-pressure.ts';
import type { VelocityPressureValues } from './velocity-pressure.ts';
import type { ZoneRule } from './zone-rule.ts';

type Clause<V, R extends number> = (values: V, trace?: Trace) => Outcome<R>;

export interface Topography {
  readonly feature: Feature;
  readonly exposure: Exposure;
  readonly side: 'upwind' | 'downwind';
  readonly H: Foot;
  readonly Lh: Foot;
  readonly x: Foot;
  readonly z: Foot;
}

export interface RoofWindEdition<E extends EditionName> {
  readonly edition: E;
  /** As cited: "ASCE/SEI 7-16". */
  readonly name: string;
  readonly cites: {
    readonly velocityPressure: string;
    readonly netPressure: string;
    readonly minimum: string;
    readonly overhang: string;
  };
  readonly chooseFigure: ChooseFigure<E>;
  /** Document and figure of the coefficients, as cited. */
  readonly figureCites: (figure: FigureId<E>) => string;
  /** Zones of a figure from the mildest to the most severe. */
  readonly zones: (figure: FigureId<E>) => readonly string[];
  /** In the order they are tried; the last one takes what is left. */
  readonly zoneRules: (figure: FigureId<E>) => readonly ZoneRule[];
  /** How unclear plans were read: to be printed with the zones. */
  readonly readings: (figure: FigureId<E>) => readonly string[];
  readonly meanRoofHeight: Clause<{ readonly eave: Foot; readonly top: Foot; readonly theta: Degree }, Foot>;
  readonly edgeStripWidth: Clause<{ readonly L: Foot; readonly h: Foot; readonly theta: Degree }, Foot>;
  readonly areaOfFastener: Clause<{ readonly span: Foot; readonly width: Foot }, SqFt>;
  readonly topographicFactor: Clause<Topography, Ratio>;
  readonly velocityPressure: Clause<VelocityPressureValues, VelocityPressure<E>>;
  /** Net pressure away from the roof, negative, strength level. */
  readonly upliftPressure: RoofPressureClause<E>;
  /** Net pressure onto the roof, positive, strength level. */
  readonly downwardPressure: RoofPressureClause<E>;
  readonly asdPressure: Clause<{ readonly p: Psf }, Psf>;
}

/** One of each: `editions[name]` keeps its E when the name is a type parameter. */
export type RoofWindEditions = { readonly [E in EditionName]: RoofWindEdition<E> };
