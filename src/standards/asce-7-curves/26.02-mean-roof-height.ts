/**
 * ASCE/SEI 7 26.2: mean roof height h, ft, the average of eave height and highest point of the roof. Up to 10 degrees the
 * eave height is taken: the definition permits it, the notation under the figures prescribes it. Published.
 */
import { foot } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { taken } from '../../trace/step.ts';
import { type Asce7, citation } from './edition.ts';

const EAVE_UP_TO_DEG = 10;

export function makeMeanRoofHeight(of: Asce7) {
  const cites = citation(of, '26.2');
  const mean = equation({
    clause: cites,
    gives: 'h',
    unit: 'ft',
    from: { he: 'ft', ht: 'ft' },
    is: '(he + ht) / 2',
  });
  return clause({
    id: `${of.id}/26.02-mean-roof-height`,
    title: 'mean roof height',
    cites,
    inputs: {
      eave: needs('ft', 'height of the eave above ground', { above: 0 }),
      top: needs('ft', 'height of the highest point of the roof above ground', { above: 0 }),
      theta: needs('deg', 'roof slope', { min: 0, max: 90 }),
    },
    gives: { symbol: 'h', unit: 'ft' },
    compute: ({ eave, top, theta }, trace) => {
      if (top < eave) return refuse(cites, 'top', top, `at least the eave height of ${eave} ft`);
      if (theta > EAVE_UP_TO_DEG) return mean({ he: eave, ht: top }, trace);
      return taken(
        trace,
        { clause: cites, symbol: 'h', unit: 'ft', because: 'eave height, slope up to 10 degrees' },
        foot(eave),
      );
    },
  });
}
