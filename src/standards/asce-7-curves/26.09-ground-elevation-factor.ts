/**
 * ASCE/SEI 7 26.9, Table 26.9-1 note 2: Ke = e^(−0.0000362 ze), ze ground elevation above sea level, ft. Published.
 * Ke = 1.0 is permitted at every elevation. The table's cell at 4000 ft (0.86) lies 0.005 under the equation.
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Asce7, citation } from './edition.ts';

export function makeGroundElevationFactor(of: Asce7) {
  const cites = citation(of, '26.9');
  const Ke = equation({
    clause: cites,
    gives: 'Ke',
    unit: '1',
    from: { ze: 'ft' },
    is: 'exp(-0.0000362 * ze)',
    fitted: true,
  });
  return clause({
    id: `${of.id}/26.09-ground-elevation-factor`,
    title: 'ground elevation factor',
    cites,
    inputs: { ze: needs('ft', 'ground elevation above sea level', { min: -1500, max: 30_000 }) },
    gives: { symbol: 'Ke', unit: '1' },
    compute: (values, trace) => Ke(values, trace),
  });
}
