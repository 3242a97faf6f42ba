/**
 * Net pressure on a piece of roof at strength level, uplift and downward. Each runs both signs of (GCpi) on the curve
 * of its direction and keeps the worse; the other curve cannot govern, since every positive coefficient lies above
 * every negative one and the pressure grows with the coefficient. Then the minimum of 30.2.2.
 */
import {
  type Degree,
  type Foot,
  type Psf,
  psf,
  type Ratio,
  ratio,
  type SqFt,
} from '../../quantities/quantity.ts';
import { type ClauseInputs, type ClauseText, clause, mayNeed, needs, oneOf } from '../../trace/clause.ts';
import { isRefusal, type Outcome, refuse } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { type Enclosure, enclosures, makeInternalPressure } from './26.13-internal-pressure.ts';
import { makeMinimumPressure } from './30.02.2-minimum-pressure.ts';
import {
  type Asce7,
  citation,
  type EditionName,
  type FigureId,
  figureIds,
  type VelocityPressure,
} from './edition.ts';
import {
  type CoefficientCites,
  downwardCoefficient,
  parapets,
  type RoofPlace,
  surfaces,
  upwardCoefficient,
} from './external-coefficient.ts';
import { type RoofFigure, roofZones } from './roof-figure.ts';

export interface RoofPressureValues<E extends EditionName> {
  readonly figure: FigureId<E>;
  /** As the figure names it. */
  readonly zone: string;
  readonly surface: RoofPlace['surface'];
  /** Effective wind area. */
  readonly A: SqFt;
  readonly qh: VelocityPressure<E>;
  readonly enclosure: Enclosure;
  readonly parapet: RoofPlace['parapet'];
  /** Needed where the figure goes by slope. */
  readonly theta?: Degree | undefined;
  /** Mean roof height over least horizontal dimension, needed by the 7-16 hip figure over 7 to 20 degrees. */
  readonly hOverB?: Ratio | undefined;
  /** Mean roof height, when over 60 ft a low-rise figure is used: it only changes which equation is cited. */
  readonly h?: Foot | undefined;
}

/** A clause that takes the velocity pressure of its own edition only. */
export interface RoofPressureClause<E extends EditionName> {
  (values: RoofPressureValues<E>, trace?: Trace): Outcome<Psf>;
  readonly about: ClauseText<ClauseInputs, 'psf'>;
}

/** Net pressure from the velocity pressure; `high` picks the equation for h over 60 ft. */
export type NetPressure = (qh: Psf, GCp: Ratio, GCpi: Ratio, high: boolean, trace?: Trace) => Psf;

export interface RoofPressureParts<E extends EditionName> {
  readonly of: Asce7<E>;
  readonly figures: Readonly<Record<FigureId<E>, RoofFigure>>;
  readonly highFigure: FigureId<E>;
  readonly net: NetPressure;
  /** Writes the directionality factor into the working once, where the pressure equation holds it. */
  readonly directionality?: (trace: Trace) => Ratio;
  readonly cites: CoefficientCites & { readonly netPressure: string };
}

const LOW_RISE_FT = 60;
const WALLS_ALLOWED =
  'h up to 60 ft: the wall suction of higher buildings, needed below an overhang, is not held';

export function makeRoofPressures<E extends EditionName>(parts: RoofPressureParts<E>) {
  const { of, figures, highFigure, net, directionality, cites } = parts;
  const internal = makeInternalPressure(of);
  const minimum = makeMinimumPressure(of);
  const ids: readonly FigureId<E>[] = figureIds[of.edition];
  const inputs = {
    figure: oneOf(ids, 'figure of the coefficients'),
    zone: oneOf(roofZones, 'zone as the figure names it'),
    surface: oneOf(surfaces, 'roof over the building or overhang'),
    A: needs('ft²', 'effective wind area', { above: 0 }),
    qh: needs('psf', 'velocity pressure at mean roof height, of this edition', { above: 0 }),
    enclosure: oneOf(enclosures, 'enclosure classification'),
    parapet: oneOf(parapets, 'parapet around the roof'),
    theta: mayNeed('deg', 'roof slope', { min: 0, max: 45 }),
    hOverB: mayNeed('1', 'mean roof height over least horizontal dimension', { above: 0 }),
    h: mayNeed('ft', 'mean roof height', { above: 0 }),
  };
  type Values = Omit<RoofPressureValues<E>, 'qh'> & { readonly qh: Psf };

  const pressure = (values: Values, direction: 'uplift' | 'downward', trace?: Trace): Outcome<Psf> => {
    if (values.enclosure === 'open')
      return refuse(
        citation(of, 'Chapter 30'),
        'enclosure',
        'open',
        'enclosed, partially enclosed, partially open: an open building takes net coefficients (CN), not these figures',
        'outside-scope',
      );
    const figure = figures[values.figure];
    const high = values.figure === highFigure || (values.h !== undefined && values.h > LOW_RISE_FT);
    if (high && direction === 'downward' && values.surface === 'overhang' && !figure.overhang)
      return refuse(cites.overhang, 'surface', 'overhang', WALLS_ALLOWED, 'outside-scope');
    const coefficient = direction === 'uplift' ? upwardCoefficient : downwardCoefficient;
    const GCp = coefficient(figure, cites, values, trace);
    if (isRefusal(GCp)) return GCp;
    const GCpi = internal(values, trace);
    if (isRefusal(GCpi)) return GCpi;
    if (trace) directionality?.(trace);
    const over = net(values.qh, GCp, GCpi, high, trace);
    const under = net(values.qh, GCp, ratio(-GCpi), high, trace);
    const p = direction === 'uplift' ? Math.min(over, under) : Math.max(over, under);
    return minimum({ direction, p: psf(p) }, trace);
  };

  return {
    upliftPressure: clause({
      id: `${of.id}/30.03-uplift-pressure`,
      title: 'net uplift on a roof zone, strength level',
      cites: cites.netPressure,
      inputs,
      gives: { symbol: 'p', unit: 'psf' },
      compute: (values, trace) => pressure(values, 'uplift', trace),
    }) satisfies RoofPressureClause<E>,
    downwardPressure: clause({
      id: `${of.id}/30.03-downward-pressure`,
      title: 'net downward pressure on a roof zone, strength level',
      cites: cites.netPressure,
      inputs,
      gives: { symbol: 'p', unit: 'psf' },
      compute: (values, trace) => pressure(values, 'downward', trace),
    }) satisfies RoofPressureClause<E>,
  };
}
