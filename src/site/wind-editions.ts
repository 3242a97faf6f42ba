/**
 * The wind editions behind one shape that hides which one it is. The velocity pressure of an edition never leaves the
 * object that made it, so it cannot reach the pressures of another.
 */

import type { Job } from '../job/job.ts';
import { slopeDegrees } from '../job/slope.ts';
import { type Degree, degree, type Foot, type Psf, type Ratio, type SqFt } from '../quantities/quantity.ts';
import type { Plane } from '../roof/roof.ts';
import { asce716 } from '../standards/asce-7-16/roof-wind.ts';
import { asce722 } from '../standards/asce-7-22/roof-wind.ts';
import type { EditionName, FigureId } from '../standards/asce-7-curves/edition.ts';
import type { RoofPressureValues } from '../standards/asce-7-curves/roof-pressure.ts';
import type { RoofWindEdition } from '../standards/asce-7-curves/roof-wind-edition.ts';
import type { VelocityPressureValues } from '../standards/asce-7-curves/velocity-pressure.ts';
import type { ZoneRule } from '../standards/asce-7-curves/zone-rule.ts';
import { isRefusal, type Outcome, type Refusal } from '../trace/refusal.ts';
import type { Trace } from '../trace/step.ts';

/** Where on the roof, and how large: all a net pressure needs besides the site. */
export interface PressurePlace {
  readonly zone: string;
  readonly surface: 'roof' | 'overhang';
  readonly A: SqFt;
  readonly enclosure: RoofPressureValues<EditionName>['enclosure'];
  readonly parapet: RoofPressureValues<EditionName>['parapet'];
  readonly hOverB: Ratio;
  readonly h: Foot;
}

/** The figure of one plane, with its zones and the pressures on them. */
export interface PlaneFigure {
  readonly id: string;
  readonly theta: Degree;
  readonly rules: readonly ZoneRule[];
  /** From the mildest to the most severe. */
  readonly zones: readonly string[];
  readonly readings: readonly string[];
}

/** The wind of one site by one edition. */
export interface SiteWind {
  readonly qh: Psf;
  /** Net pressure of a zone at strength level, negative away from the roof. */
  readonly uplift: (figure: PlaneFigure, place: PressurePlace, trace?: Trace) => Outcome<Psf>;
}

export interface WindEdition
  extends Pick<
    RoofWindEdition<EditionName>,
    'name' | 'meanRoofHeight' | 'edgeStripWidth' | 'topographicFactor' | 'asdPressure'
  > {
  readonly figureOf: (plane: Plane, h: Foot) => PlaneFigure | Refusal;
  readonly siteWind: (values: VelocityPressureValues, trace?: Trace) => SiteWind | Refusal;
}

function behindOneShape<E extends EditionName>(edition: RoofWindEdition<E>): WindEdition {
  const ids = new WeakMap<PlaneFigure, FigureId<E>>();
  return {
    ...edition,
    figureOf: (plane, h) => {
      const theta = degree(slopeDegrees(plane.slope));
      const id = edition.chooseFigure(plane.shape, theta, h);
      if (typeof id !== 'string') return id;
      const figure: PlaneFigure = {
        id,
        theta,
        rules: edition.zoneRules(id),
        zones: edition.zones(id),
        readings: edition.readings(id),
      };
      ids.set(figure, id);
      return figure;
    },
    siteWind: (values, trace) => {
      const qh = edition.velocityPressure(values, trace);
      if (isRefusal(qh)) return qh;
      return {
        qh,
        uplift: (figure, place, own) => {
          const id = ids.get(figure);
          if (id === undefined) throw new Error(`figure ${figure.id} was not chosen by ${edition.name}`);
          return edition.upliftPressure({ figure: id, theta: figure.theta, qh, ...place }, own);
        },
      };
    },
  };
}

const behind716 = behindOneShape(asce716);
const behind722 = behindOneShape(asce722);

export const windEditions: Readonly<Record<NonNullable<Job['basis']['wind']>, WindEdition>> = {
  'ASCE 7-16': behind716,
  'ASCE 7-22': behind722,
};

/** The figure of every plane, or the first refusal. */
export function planeFigures(
  planes: readonly Plane[],
  h: Foot,
  edition: WindEdition,
): ReadonlyMap<Plane, PlaneFigure> | Refusal {
  const figures = new Map<Plane, PlaneFigure>();
  for (const plane of planes) {
    const figure = edition.figureOf(plane, h);
    if (isRefusal(figure)) return figure;
    figures.set(plane, figure);
  }
  return figures;
}
