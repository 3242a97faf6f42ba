/**
 * NDS 12.5.2 to 12.5.4 with 12.2.1.3, 12.2.2.3 and 12.2.3.3: end grain, diaphragm and toe-nail factors.
 * Withdrawal of wood screws and nails from end grain is not allowed: a refusal, not a factor of nothing.
 */
import { ratio } from '../../quantities/quantity.ts';
import { clause, oneOf } from '../../trace/clause.ts';
import { refuse } from '../../trace/refusal.ts';
import { taken } from '../../trace/step.ts';
import { citation, type NdsEdition } from './edition.ts';

export const grains = ['side grain', 'end grain'] as const;
const fastener = oneOf(['lag screw', 'wood screw', 'nail'], 'kind of fastener');
const load = oneOf(['withdrawal', 'lateral'], 'direction of the load');

const notFromEndGrain = { 'wood screw': '12.2.2.3', nail: '12.2.3.3' } as const;

/** End grain factor. Lateral in end grain, from 1/4 in on, uses the bearing strength across the grain. */
export function makeEndGrain(edition: NdsEdition) {
  const cites = citation(edition, '12.5.2');
  return clause({
    id: `${edition.id}/12.5.2-end-grain`,
    title: 'end grain factor',
    cites,
    inputs: { fastener, load, grain: oneOf(grains, 'what the fastener is driven into') },
    gives: { symbol: 'Ceg', unit: '1' },
    compute: (values, trace) => {
      const take = (value: number) =>
        taken(
          trace,
          { clause: cites, symbol: 'Ceg', unit: '1', because: `${values.load}, ${values.grain}` },
          ratio(value),
        );
      if (values.grain === 'side grain') return take(1);
      if (values.load === 'lateral') return take(0.67);
      if (values.fastener === 'lag screw') return take(0.75);
      return refuse(
        citation(edition, notFromEndGrain[values.fastener]),
        'grain',
        'end grain',
        'side grain only',
        'outside-scope',
      );
    },
  });
}

/** Diaphragm factor of nails. */
export function makeDiaphragm(edition: NdsEdition) {
  const cites = citation(edition, '12.5.3');
  return clause({
    id: `${edition.id}/12.5.3-diaphragm`,
    title: 'diaphragm factor of nails',
    cites,
    inputs: { use: oneOf(['diaphragm', 'other'], 'what the nails belong to') },
    gives: { symbol: 'Cdi', unit: '1' },
    compute: ({ use }, trace) =>
      taken(
        trace,
        { clause: cites, symbol: 'Cdi', unit: '1', because: use },
        ratio(use === 'diaphragm' ? 1.1 : 1),
      ),
  });
}

/** Toe-nail factor. In withdrawal a toe-nail takes no wet service factor. */
export function makeToeNail(edition: NdsEdition) {
  const cites = citation(edition, '12.5.4');
  return clause({
    id: `${edition.id}/12.5.4-toe-nail`,
    title: 'toe-nail factor',
    cites,
    inputs: { load },
    gives: { symbol: 'Ctn', unit: '1' },
    compute: (values, trace) =>
      taken(
        trace,
        { clause: cites, symbol: 'Ctn', unit: '1', because: values.load },
        ratio(values.load === 'withdrawal' ? 0.67 : 0.83),
      ),
  });
}
