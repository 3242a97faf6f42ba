/**
 * ASCE/SEI 7-22: net pressure on roofs. h up to 60 ft: p = qh Kd [(GCp) − (GCpi)], Eq. 30.3-1; over 60 ft:
 * p = q Kd (GCp) − qi Kd (GCpi), Eq. 30.4-1, with q = qi = qh on a roof. Kd multiplies the internal part too. Published.
 */
import { type Ratio, ratio } from '../../quantities/quantity.ts';
import { equation } from '../../trace/equation.ts';
import { type Trace, taken } from '../../trace/step.ts';
import { citation } from '../asce-7-curves/edition.ts';
import { makeRoofPressures } from '../asce-7-curves/roof-pressure.ts';
import { asce7of2022 } from './edition.ts';
import { roofFiguresOf722 } from './roof-figures.ts';

const lowRise = equation({
  clause: citation(asce7of2022, 'Eq. 30.3-1'),
  gives: 'p',
  unit: 'psf',
  from: { qh: 'psf', Kd: '1', GCp: '1', GCpi: '1' },
  is: 'qh * Kd * (GCp - GCpi)',
});
const overSixty = equation({
  clause: citation(asce7of2022, 'Eq. 30.4-1'),
  gives: 'p',
  unit: 'psf',
  from: { q: 'psf', qi: 'psf', Kd: '1', GCp: '1', GCpi: '1' },
  is: 'q * Kd * GCp - qi * Kd * GCpi',
});

/** Table 26.6-1: components and cladding of buildings. */
const KD = ratio(0.85);
const directionality = (trace: Trace): Ratio => {
  const because = 'components and cladding of buildings';
  return taken(
    trace,
    { clause: citation(asce7of2022, 'Table 26.6-1'), symbol: 'Kd', unit: '1', because },
    KD,
  );
};

export const roofPressuresOf722 = makeRoofPressures({
  of: asce7of2022,
  figures: roofFiguresOf722,
  highFigure: '30.4-1',
  directionality,
  net: (qh, GCp, GCpi, high, trace) =>
    high ? overSixty({ q: qh, qi: qh, Kd: KD, GCp, GCpi }, trace) : lowRise({ qh, Kd: KD, GCp, GCpi }, trace),
  cites: {
    walls: citation(asce7of2022, 'Fig. 30.3-1'),
    overhang: citation(asce7of2022, '30.7'),
    overhangRule: 'overhang: roof coefficient above and wall coefficient below are added at the same area',
    netPressure: citation(asce7of2022, 'Eq. 30.3-1, Eq. 30.4-1'),
  },
});
