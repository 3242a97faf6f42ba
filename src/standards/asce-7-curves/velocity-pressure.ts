/** Velocity pressure at mean roof height from the site: Kz, Kzt and Ke put together, for either edition. */
import type { Foot, Mph, Psf, Ratio } from '../../quantities/quantity.ts';
import { ratio } from '../../quantities/quantity.ts';
import { clause, mayNeed, needs, oneOf } from '../../trace/clause.ts';
import { isRefusal, type Outcome } from '../../trace/refusal.ts';
import { type Trace, taken } from '../../trace/step.ts';
import { makeGroundElevationFactor } from './26.09-ground-elevation-factor.ts';
import { type ExposureTerms, makeExposureCoefficient } from './26.10-exposure-coefficient.ts';
import {
  type Asce7,
  citation,
  type EditionName,
  type Exposure,
  exposures,
  type VelocityPressure,
} from './edition.ts';

export const kzMethods = ['table', 'power law'] as const;

export interface VelocityPressureValues {
  /** Basic wind speed of the risk category, strength level. */
  readonly V: Mph;
  readonly exposure: Exposure;
  readonly h: Foot;
  readonly kzBy: (typeof kzMethods)[number];
  /** Left out: 1, no ridge, escarpment or hill. */
  readonly Kzt?: Ratio | undefined;
  /** Ground above sea level. Left out: Ke = 1, which is always permitted. */
  readonly groundElevation?: Foot | undefined;
}

export interface VelocityFactors {
  readonly V: Mph;
  readonly Kz: Ratio;
  readonly Kzt: Ratio;
  readonly Ke: Ratio;
}

/** Eq. 26.10-1 of an edition, with or without the directionality factor. */
export type VelocityEquation = (factors: VelocityFactors, trace?: Trace) => Psf;

const V = needs('mph', 'basic wind speed, strength level', { above: 0, max: 400 });
const Kzt = 'topographic factor; below 1 is not taken';

export function makeVelocityPressure<E extends EditionName>(
  of: Asce7<E>,
  terms: ExposureTerms,
  q: VelocityEquation,
) {
  const cites = citation(of, 'Eq. 26.10-1');
  const kz = makeExposureCoefficient(of, terms);
  const ke = makeGroundElevationFactor(of);

  const fromFactors = clause({
    id: `${of.id}/26.10-2-velocity-pressure`,
    title: 'velocity pressure from its factors',
    cites,
    inputs: {
      V,
      Kz: needs('1', 'velocity pressure exposure coefficient', { above: 0 }),
      Kzt: needs('1', Kzt, { min: 1 }),
      Ke: needs('1', 'ground elevation factor', { above: 0 }),
    },
    gives: { symbol: 'q', unit: 'psf' },
    compute: (v, trace): Outcome<VelocityPressure<E>> => q(v, trace) as VelocityPressure<E>,
  });

  const atRoof = clause({
    id: `${of.id}/26.10-velocity-pressure-at-roof`,
    title: 'velocity pressure at mean roof height',
    cites,
    inputs: {
      V,
      exposure: oneOf(exposures, 'exposure category'),
      h: needs('ft', 'mean roof height', { above: 0 }),
      kzBy: oneOf(kzMethods, 'how Kz is found'),
      Kzt: mayNeed('1', Kzt, { min: 1 }),
      groundElevation: mayNeed('ft', 'ground elevation above sea level'),
    },
    gives: { symbol: 'qh', unit: 'psf' },
    compute: (v, trace): Outcome<VelocityPressure<E>> => {
      const Kz = (v.kzBy === 'table' ? kz.byTable : kz.byPowerLaw)({ exposure: v.exposure, z: v.h }, trace);
      if (isRefusal(Kz)) return Kz;
      const Ke = v.groundElevation === undefined ? seaLevel(of, trace) : ke({ ze: v.groundElevation }, trace);
      if (isRefusal(Ke)) return Ke;
      return fromFactors({ V: v.V, Kz, Kzt: v.Kzt ?? noTopography(of, trace), Ke }, trace);
    },
  });
  return { kz, ke, fromFactors, atRoof };
}

function seaLevel(of: Asce7, trace?: Trace): Ratio {
  const because = 'permitted at every elevation';
  return taken(trace, { clause: citation(of, '26.9'), symbol: 'Ke', unit: '1', because }, ratio(1));
}

function noTopography(of: Asce7, trace?: Trace): Ratio {
  const because = 'no ridge, escarpment or hill stated';
  return taken(trace, { clause: citation(of, '26.8'), symbol: 'Kzt', unit: '1', because }, ratio(1));
}
