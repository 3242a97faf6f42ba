/**
 * ASCE/SEI 7-22 26.10: Kz and velocity pressure q = 0.00256 Kz Kzt Ke V², psf, V in mph, without Kd: the pressure
 * equations of Chapter 30 carry it. Every row of the table published. Exposure D kept the 7-16 column while its law
 * gives up to 0.015 more.
 */
import { equation } from '../../trace/equation.ts';
import type { ExposureTerms } from '../asce-7-curves/26.10-exposure-coefficient.ts';
import { citation } from '../asce-7-curves/edition.ts';
import { makeVelocityPressure } from '../asce-7-curves/velocity-pressure.ts';
import { asce7of2022 } from './edition.ts';

const exposureTerms: ExposureTerms = {
  table: [
    [15, 0.57, 0.85, 1.03],
    [20, 0.62, 0.9, 1.08],
    [25, 0.66, 0.94, 1.12],
    [30, 0.7, 0.98, 1.16],
    [40, 0.74, 1.04, 1.22],
    [50, 0.79, 1.09, 1.27],
    [60, 0.83, 1.13, 1.31],
    [70, 0.86, 1.17, 1.34],
    [80, 0.9, 1.21, 1.38],
    [90, 0.92, 1.24, 1.4],
    [100, 0.95, 1.26, 1.43],
    [120, 1.0, 1.31, 1.48],
    [140, 1.04, 1.34, 1.52],
    [160, 1.08, 1.39, 1.55],
    [180, 1.11, 1.41, 1.58],
    [200, 1.14, 1.44, 1.61],
    [250, 1.21, 1.51, 1.68],
    [300, 1.27, 1.57, 1.73],
    [350, 1.33, 1.62, 1.78],
    [400, 1.38, 1.66, 1.82],
    [450, 1.42, 1.7, 1.86],
    [500, 1.46, 1.74, 1.89],
  ],
  c: 2.41,
  law: { B: { α: 7.5, zg: 3280 }, C: { α: 9.8, zg: 2460 }, D: { α: 11.5, zg: 1935 } },
};

const q = equation({
  clause: citation(asce7of2022, 'Eq. 26.10-1'),
  gives: 'qh',
  unit: 'psf',
  from: { Kz: '1', Kzt: '1', Ke: '1', V: 'mph' },
  is: '0.00256 * Kz * Kzt * Ke * V^2',
  fitted: true,
});

export const velocityPressureOf722 = makeVelocityPressure(
  asce7of2022,
  exposureTerms,
  ({ V, Kz, Kzt, Ke }, trace) => q({ Kz, Kzt, Ke, V }, trace),
);
