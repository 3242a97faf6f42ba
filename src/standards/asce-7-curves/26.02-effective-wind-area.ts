/**
 * ASCE/SEI 7 26.2: effective wind area A, ft². For a panel or member the span times a width that need not be less
 * than a third of the span. A fastener or clip never takes more than the area tributary to it (recalled wording,
 * unchanged for decades). A is for the coefficient only; the load acts on the tributary area.
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Asce7, citation } from './edition.ts';

export function makeEffectiveWindArea(of: Asce7) {
  const cites = citation(of, '26.2');
  const from = { span: 'ft', width: 'ft' } as const;
  const member = equation({
    clause: cites,
    gives: 'A',
    unit: 'ft²',
    from,
    is: 'span * max(width, span / 3)',
  });
  const fastener = equation({ clause: cites, gives: 'A', unit: 'ft²', from, is: 'span * width' });
  return {
    ofMember: clause({
      id: `${of.id}/26.02-effective-wind-area-of-member`,
      title: 'effective wind area of a panel, purlin or deck',
      cites,
      inputs: {
        span: needs('ft', 'span', { above: 0 }),
        width: needs('ft', 'tributary width', { above: 0 }),
      },
      gives: { symbol: 'A', unit: 'ft²' },
      compute: (values, trace) => member(values, trace),
    }),
    ofFastener: clause({
      id: `${of.id}/26.02-effective-wind-area-of-fastener`,
      title: 'effective wind area of one fastener or clip',
      cites,
      inputs: {
        span: needs('ft', 'length tributary to the fastener along the panel', { above: 0 }),
        width: needs('ft', 'width tributary to the fastener along the support', { above: 0 }),
      },
      gives: { symbol: 'A', unit: 'ft²' },
      compute: (values, trace) => fastener(values, trace),
    }),
  };
}
