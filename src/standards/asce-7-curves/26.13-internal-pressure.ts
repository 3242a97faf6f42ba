/** ASCE/SEI 7 Table 26.13-1: internal pressure coefficient (GCpi) by enclosure, to be used with both signs. Published. */
import { ratio } from '../../quantities/quantity.ts';
import { clause, oneOf } from '../../trace/clause.ts';
import { taken } from '../../trace/step.ts';
import { type Asce7, citation } from './edition.ts';

export const enclosures = ['enclosed', 'partially enclosed', 'partially open', 'open'] as const;
export type Enclosure = (typeof enclosures)[number];

const rows: Readonly<Record<Enclosure, number>> = {
  enclosed: 0.18,
  'partially enclosed': 0.55,
  'partially open': 0.18,
  open: 0,
};

export function makeInternalPressure(of: Asce7) {
  const cites = citation(of, 'Table 26.13-1');
  return clause({
    id: `${of.id}/26.13-internal-pressure`,
    title: 'internal pressure coefficient, both signs',
    cites,
    inputs: { enclosure: oneOf(enclosures, 'enclosure classification') },
    gives: { symbol: 'GCpi', unit: '1' },
    compute: ({ enclosure }, trace) => {
      const because = trace ? `${enclosure}, either sign` : '';
      return taken(trace, { clause: cites, symbol: 'GCpi', unit: '1', because }, ratio(rows[enclosure]));
    },
  });
}
