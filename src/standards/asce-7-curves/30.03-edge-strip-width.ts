/**
 * ASCE/SEI 7, notation under Fig. 30.3-1 to 30.3-5 and under the figure for h over 60 ft: edge strip width a, ft.
 * The least horizontal dimension L leaves overhangs out; the strip is measured from the outer edge of the overhang.
 * For h over 60 ft 0.1 L is taken with every figure: it is never less than the low-rise rule. Published.
 */
import { foot } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Asce7, citation } from './edition.ts';

const AMIN = foot(3);
const LOW_RISE_FT = 60;

export function makeEdgeStripWidth(of: Asce7, highFigure: string) {
  const cites = citation(of, 'notation under Fig. 30.3-1');
  const high = citation(of, `notation under Fig. ${highFigure}`);
  const from = { L: 'ft', h: 'ft', amin: 'ft' } as const;
  const lowRise = equation({
    clause: cites,
    gives: 'a',
    unit: 'ft',
    from,
    is: 'max(min(0.1 * L, 0.4 * h), 0.04 * L, amin)',
  });
  const wide = equation({
    clause: cites,
    gives: 'a',
    unit: 'ft',
    from: { a: 'ft', h: 'ft' },
    is: 'min(a, 0.8 * h)',
  });
  const tall = equation({
    clause: high,
    gives: 'a',
    unit: 'ft',
    from: { L: 'ft', amin: 'ft' },
    is: 'max(0.1 * L, amin)',
  });
  return clause({
    id: `${of.id}/30.03-edge-strip-width`,
    title: 'edge strip width',
    cites,
    inputs: {
      L: needs('ft', 'least horizontal dimension of the building, without overhangs', { above: 0 }),
      h: needs('ft', 'mean roof height', { above: 0 }),
      theta: needs('deg', 'roof slope', { min: 0, max: 45 }),
    },
    gives: { symbol: 'a', unit: 'ft' },
    compute: ({ L, h, theta }, trace) => {
      if (h > LOW_RISE_FT) return tall({ L, amin: AMIN }, trace);
      const a = lowRise({ L, h, amin: AMIN }, trace);
      return theta <= 7 && L > 300 ? wide({ a, h }, trace) : a;
    },
  });
}
