/**
 * ASCE/SEI 7 30.2.2: net design pressure of components and cladding not less than 16 psf in either direction.
 * It applies to the net pressure at strength level, never to a coefficient or to the external part. Published.
 */
import { psf } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Asce7, citation } from './edition.ts';

const MINIMUM = psf(16);

export function makeMinimumPressure(of: Asce7) {
  const cites = citation(of, '30.2.2');
  const from = { p: 'psf', pmin: 'psf' } as const;
  const up = equation({ clause: cites, gives: 'p', unit: 'psf', from, is: 'min(p, -pmin)' });
  const down = equation({ clause: cites, gives: 'p', unit: 'psf', from, is: 'max(p, pmin)' });
  return clause({
    id: `${of.id}/30.02.2-minimum-pressure`,
    title: 'net pressure not less than the minimum',
    cites,
    inputs: {
      direction: oneOf(['uplift', 'downward'], 'uplift is negative'),
      p: needs('psf', 'net pressure at strength level, negative away from the roof'),
    },
    gives: { symbol: 'p', unit: 'psf' },
    compute: ({ direction, p }, trace) => (direction === 'uplift' ? up : down)({ p, pmin: MINIMUM }, trace),
  });
}
