/**
 * NDS 12.2.5: a round head pulling through the side member, reference value in pounds.
 * G and the net thickness (less any countersink) are those of the side member. The limits are the range of
 * Table 12.2F as seen (heads 0.234 to 0.500 in, 5/16 to 1-1/2 in, G 0.42 to 0.50): a wider head, a washer or a
 * thinner panel is refused, not extended. A metal sheet under the head is pull-over of that sheet, another standard.
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { citation, type NdsEdition } from './edition.ts';

export const pullThroughInputs = {
  G: needs('1', 'specific gravity of the side member', { min: 0.42, max: 0.5 }),
  DH: needs('in', 'diameter of the round head', { min: 0.234, max: 0.5 }),
  tns: needs('in', 'net thickness of the side member', { min: 0.3125, max: 1.5 }),
};

export function makeHeadPullThroughReference(edition: NdsEdition) {
  const cites = citation(edition, '12.2.5');
  const from = { DH: 'in', G: '1', tns: 'in' } as const;
  const thin = equation({
    clause: `${cites} Eq. 12.2-6a`,
    gives: 'WH',
    unit: 'lbf',
    from,
    is: '690 * 3.141592653589793 * DH * G^2 * tns',
    fitted: true,
  });
  const thick = equation({
    clause: `${cites} Eq. 12.2-6b`,
    gives: 'WH',
    unit: 'lbf',
    from: { DH: 'in', G: '1' },
    is: '1725 * 3.141592653589793 * DH^2 * G^2',
    fitted: true,
  });
  return clause({
    id: `${edition.id}/12.2.5-head-pull-through`,
    title: 'round head pulling through a wood side member, reference value',
    cites,
    inputs: pullThroughInputs,
    gives: { symbol: 'WH', unit: 'lbf' },
    compute: ({ G, DH, tns }, trace) =>
      tns <= 2.5 * DH ? thin({ DH, G, tns }, trace) : thick({ DH, G }, trace),
  });
}
