/**
 * NDS 12.4: lateral and withdrawal load together, as the value at the angle of the load to the wood surface
 * (90 degrees is a pure pull). Screws and lags have the squares of Hankinson, nails do not. Head pull-through
 * does not enter: it stays a check of its own.
 */
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { citation, type NdsEdition } from './edition.ts';

export function makeCombined(edition: NdsEdition) {
  const cites = citation(edition, '12.4');
  const from = { Wp: 'lbf', Z: 'lbf', α: 'deg' } as const;
  const screw = equation({
    clause: `${cites}.1 Eq. 12.4-1`,
    gives: 'Zα',
    unit: 'lbf',
    from,
    is: 'Wp * Z / (Wp * cos(α)^2 + Z * sin(α)^2)',
  });
  const nail = equation({
    clause: `${cites}.2 Eq. 12.4-2`,
    gives: 'Zα',
    unit: 'lbf',
    from,
    is: 'Wp * Z / (Wp * cos(α) + Z * sin(α))',
  });
  return clause({
    id: `${edition.id}/12.4-combined`,
    title: 'value of a fastener under lateral and withdrawal load together',
    cites,
    inputs: {
      fastener: oneOf(['screw or lag', 'nail'], 'kind of fastener'),
      Wp: needs('lbf', "adjusted withdrawal W'p", { above: 0 }),
      Z: needs('lbf', "adjusted lateral value Z'", { above: 0 }),
      α: needs('deg', 'angle of the load to the wood surface', { min: 0, max: 90 }),
    },
    gives: { symbol: 'Zα', unit: 'lbf' },
    compute: ({ fastener, Wp, Z, α }, trace) => (fastener === 'nail' ? nail : screw)({ Wp, Z, α }, trace),
  });
}
