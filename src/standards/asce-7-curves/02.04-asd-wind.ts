/** ASCE/SEI 7 2.4.1: wind at strength level to allowable stress level, 0.6 W. Published. */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Asce7, citation } from './edition.ts';

export function makeAsdPressure(of: Asce7) {
  const cites = citation(of, '2.4.1');
  const asd = equation({ clause: cites, gives: 'pASD', unit: 'psf', from: { p: 'psf' }, is: '0.6 * p' });
  return clause({
    id: `${of.id}/02.04-asd-wind`,
    title: 'wind pressure for allowable stress design',
    cites,
    inputs: { p: needs('psf', 'pressure at strength level') },
    gives: { symbol: 'pASD', unit: 'psf' },
    compute: (values, trace) => asd(values, trace),
  });
}
