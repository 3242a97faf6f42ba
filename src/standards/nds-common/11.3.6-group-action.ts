/**
 * NDS 11.3.6, group action factor of a row of fasteners, and 12.5.1 geometry factor. Below 1/4 in both are 1.
 * In 2015 to 2024 the group factor stands in 11.3.6, not 12.3.6. Checked with cells of Tables 11.3.6A and C.
 */
import { ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { taken } from '../../trace/step.ts';
import { citation, type NdsEdition } from './edition.ts';

export function makeGroupAction(edition: NdsEdition) {
  const cites = citation(edition, '11.3.6 Eq. 11.3-1');
  const stiff = { Em: 'psi', Am: 'in²', Es: 'psi', As: 'in²' } as const;
  const slip = (is: string) =>
    equation({ clause: cites, gives: 'γ', unit: 'lbf/in', from: { D: 'in' }, is, fitted: true });
  const γ = { wood: slip('180000 * D^1.5'), steel: slip('270000 * D^1.5') } as const;
  const one = { clause: cites, unit: '1' } as const;
  const u = equation({
    ...one,
    gives: 'u',
    from: { ...stiff, γ: 'lbf/in', s: 'in' },
    is: '1 + γ * (s / 2) * (1 / (Em * Am) + 1 / (Es * As))',
  });
  const m = equation({ ...one, gives: 'm', from: { u: '1' }, is: 'u - sqrt(u^2 - 1)' });
  const R = equation({
    ...one,
    gives: 'R_EA',
    from: stiff,
    is: 'min(Es * As / (Em * Am), Em * Am / (Es * As))',
  });
  const Cg = equation({
    ...one,
    gives: 'Cg',
    from: { m: '1', n: '1', R: '1' },
    is: 'm * (1 - m^(2 * n)) / (n * ((1 + R * m^n) * (1 + m) - 1 + m^(2 * n))) * (1 + R) / (1 - m)',
  });
  const above = { above: 0 } as const;
  return clause({
    id: `${edition.id}/11.3.6-group-action`,
    title: 'group action factor of a row of fasteners',
    cites,
    inputs: {
      n: needs('1', 'fasteners in a row', { min: 1, whole: true }),
      D: needs('in', 'nominal diameter', { above: 0, max: 1 }),
      s: needs('in', 'spacing in the row', above),
      Em: needs('psi', 'modulus of elasticity of the main member', above),
      Am: needs('in²', 'section of the main member', above),
      Es: needs('psi', 'modulus of elasticity of the side member', above),
      As: needs('in²', 'section of the side members together', above),
      side: oneOf(['wood', 'steel'], 'material of the side member'),
    },
    gives: { symbol: 'Cg', unit: '1' },
    compute: ({ n, D, s, Em, Am, Es, As, side }, trace) => {
      if (D < 0.25 || n === 1)
        return taken(
          trace,
          { clause: cites, symbol: 'Cg', unit: '1', because: 'below 1/4 in, or a single fastener' },
          ratio(1),
        );
      const mValue = m({ u: u({ γ: γ[side]({ D }, trace), s, Em, Am, Es, As }, trace) }, trace);
      return Cg({ m: mValue, n, R: R({ Em, Am, Es, As }, trace) }, trace);
    },
  });
}

const ends = {
  'compression or across the grain': 4,
  'tension, softwood': 7,
  'tension, hardwood': 5,
} as const;

/** End distance and spacing in a row, the two parts of the geometry factor a roof meets. Half the full end distance gives 0.5. */
export function makeGeometry(edition: NdsEdition) {
  const cites = citation(edition, '12.5.1');
  const by = equation({
    clause: cites,
    gives: 'CΔ',
    unit: '1',
    from: { e: 'in', full: 'in', s: 'in', D: 'in' },
    is: 'min(1, e / full, s / (4 * D))',
  });
  const times = equation({
    clause: cites,
    gives: 'full',
    unit: 'in',
    from: { k: '1', D: 'in' },
    is: 'k * D',
  });
  const kinds = Object.keys(ends) as readonly (keyof typeof ends)[];
  return clause({
    id: `${edition.id}/12.5.1-geometry`,
    title: 'geometry factor for end distance and spacing in a row',
    cites,
    inputs: {
      D: needs('in', 'nominal diameter', { above: 0, max: 1 }),
      e: needs('in', 'end distance', { above: 0 }),
      s: needs('in', 'spacing in the row', { above: 0 }),
      end: oneOf(kinds, 'load on the end'),
    },
    gives: { symbol: 'CΔ', unit: '1' },
    compute: ({ D, e, s, end }, trace) => {
      if (D < 0.25)
        return taken(trace, { clause: cites, symbol: 'CΔ', unit: '1', because: 'below 1/4 in' }, ratio(1));
      const full = times({ k: ratio(ends[end]), D }, trace);
      if (e < full / 2) return refuse(cites, 'e', e, `at least ${full / 2} in`);
      if (s < 3 * D) return refuse(cites, 's', s, `at least ${3 * D} in`);
      return by({ e, full, s, D }, trace);
    },
  });
}
