/**
 * ASCE/SEI 7-16 26.10: Kz and velocity pressure q = 0.00256 Kz Kzt Kd Ke V², psf, V in mph. Kd stands inside here and
 * outside in 7-22. Table rows to 100 ft and from 250 ft published, 120 to 200 ft recalled (they agree with the law).
 */
import { ratio } from '../../quantities/quantity.ts';
import { equation } from '../../trace/equation.ts';
import { taken } from '../../trace/step.ts';
import type { ExposureTerms } from '../asce-7-curves/26.10-exposure-coefficient.ts';
import { citation } from '../asce-7-curves/edition.ts';
import { makeVelocityPressure } from '../asce-7-curves/velocity-pressure.ts';
import { asce7of2016 } from './edition.ts';

const exposureTerms: ExposureTerms = {
  table: [
    [15, 0.57, 0.85, 1.03],
    [20, 0.62, 0.9, 1.08],
    [25, 0.66, 0.94, 1.12],
    [30, 0.7, 0.98, 1.16],
    [40, 0.76, 1.04, 1.22],
    [50, 0.81, 1.09, 1.27],
    [60, 0.85, 1.13, 1.31],
    [70, 0.89, 1.17, 1.34],
    [80, 0.93, 1.21, 1.38],
    [90, 0.96, 1.24, 1.4],
    [100, 0.99, 1.26, 1.43],
    [120, 1.04, 1.31, 1.48],
    [140, 1.09, 1.36, 1.52],
    [160, 1.13, 1.39, 1.55],
    [180, 1.17, 1.43, 1.58],
    [200, 1.2, 1.46, 1.61],
    [250, 1.28, 1.53, 1.68],
    [300, 1.35, 1.59, 1.73],
    [350, 1.41, 1.64, 1.78],
    [400, 1.47, 1.69, 1.82],
    [450, 1.52, 1.73, 1.86],
    [500, 1.56, 1.77, 1.89],
  ],
  recalled: { from: 120, to: 200 },
  c: 2.01,
  law: { B: { α: 7, zg: 1200 }, C: { α: 9.5, zg: 900 }, D: { α: 11.5, zg: 700 } },
};

/** Table 26.6-1: components and cladding of buildings. */
const KD = ratio(0.85);

const cites = citation(asce7of2016, 'Eq. 26.10-1');
const q = equation({
  clause: cites,
  gives: 'qh',
  unit: 'psf',
  from: { Kz: '1', Kzt: '1', Kd: '1', Ke: '1', V: 'mph' },
  is: '0.00256 * Kz * Kzt * Kd * Ke * V^2',
  fitted: true,
});

export const velocityPressureOf716 = makeVelocityPressure(
  asce7of2016,
  exposureTerms,
  ({ V, Kz, Kzt, Ke }, trace) => {
    const because = 'components and cladding of buildings';
    const Kd = taken(
      trace,
      { clause: citation(asce7of2016, 'Table 26.6-1'), symbol: 'Kd', unit: '1', because },
      KD,
    );
    return q({ Kz, Kzt, Kd, Ke, V }, trace);
  },
);
