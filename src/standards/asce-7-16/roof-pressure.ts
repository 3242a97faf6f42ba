/**
 * ASCE/SEI 7-16: net pressure on roofs. h up to 60 ft: p = qh [(GCp) − (GCpi)], Eq. 30.3-1; over 60 ft:
 * p = q (GCp) − qi (GCpi), Eq. 30.5-1, with q = qi = qh on a roof. qh holds Kd. Published.
 */
import { equation } from '../../trace/equation.ts';
import { citation } from '../asce-7-curves/edition.ts';
import { makeRoofPressures } from '../asce-7-curves/roof-pressure.ts';
import { asce7of2016 } from './edition.ts';
import { roofFiguresOf716 } from './roof-figures.ts';

const lowRise = equation({
  clause: citation(asce7of2016, 'Eq. 30.3-1'),
  gives: 'p',
  unit: 'psf',
  from: { qh: 'psf', GCp: '1', GCpi: '1' },
  is: 'qh * (GCp - GCpi)',
});
const overSixty = equation({
  clause: citation(asce7of2016, 'Eq. 30.5-1'),
  gives: 'p',
  unit: 'psf',
  from: { q: 'psf', qi: 'psf', GCp: '1', GCpi: '1' },
  is: 'q * GCp - qi * GCpi',
});

export const roofPressuresOf716 = makeRoofPressures({
  of: asce7of2016,
  figures: roofFiguresOf716,
  highFigure: '30.5-1',
  net: (qh, GCp, GCpi, high, trace) =>
    high ? overSixty({ q: qh, qi: qh, GCp, GCpi }, trace) : lowRise({ qh, GCp, GCpi }, trace),
  cites: {
    walls: citation(asce7of2016, 'Fig. 30.3-1'),
    overhang: citation(asce7of2016, '30.9'),
    overhangRule:
      'the figure has no overhang curves: roof coefficient above and wall coefficient below are added at the same area, as 7-22 prescribes, which is conservative',
    netPressure: citation(asce7of2016, 'Eq. 30.3-1, Eq. 30.5-1'),
  },
});
