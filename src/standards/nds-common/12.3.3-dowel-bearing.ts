/**
 * NDS 12.3.3 and 12.3.4: dowel bearing strength of wood, panels and steel.
 * The column (below 1/4 in, or not) goes by nominal diameter. The tables print wood values to 50 psi; rounding
 * moves a lateral value by up to 0.3 lb, so both readings are offered and the tabulated one is used in design.
 */
import { psi } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { taken } from '../../trace/step.ts';
import { gravityLimits } from './conditions.ts';
import { citation, type NdsEdition } from './edition.ts';

const gives = { symbol: 'Fe', unit: 'psi' } as const;

/** Bearing strength of wood at an angle of load to grain. Below 1/4 in the angle does not matter. */
export function makeWoodBearing(edition: NdsEdition) {
  const cites = citation(edition, 'Table 12.3.3');
  const small = equation({
    clause: cites,
    gives: 'Fe',
    unit: 'psi',
    from: { G: '1' },
    is: '16600 * G^1.84',
    fitted: true,
  });
  const along = equation({
    clause: cites,
    gives: 'Fepar',
    unit: 'psi',
    from: { G: '1' },
    is: '11200 * G',
    fitted: true,
  });
  const across = equation({
    clause: cites,
    gives: 'Feperp',
    unit: 'psi',
    from: { G: '1', D: 'in' },
    is: '6100 * G^1.45 / sqrt(D)',
    fitted: true,
  });
  const angled = equation({
    clause: citation(edition, '12.3.4 Eq. 12.3-11'),
    gives: 'Fe',
    unit: 'psi',
    from: { Fepar: 'psi', Feperp: 'psi', θ: 'deg' },
    is: 'Fepar * Feperp / (Fepar * sin(θ)^2 + Feperp * cos(θ)^2)',
  });
  return clause({
    id: `${edition.id}/12.3.3-wood-bearing`,
    title: 'dowel bearing strength of wood',
    cites,
    inputs: {
      G: needs('1', 'specific gravity of the member', gravityLimits),
      D: needs('in', 'nominal diameter', { min: 0.092, max: 1 }),
      θ: needs('deg', 'angle of load to grain', { min: 0, max: 90 }),
      reading: oneOf(['tabulated', 'formula'], 'rounded to 50 psi as the table prints, or not'),
    },
    gives,
    compute: ({ G, D, θ, reading }, trace) => {
      const printed = (value: number) => {
        if (reading === 'formula') return psi(value);
        const because = 'rounded to 50 psi, as tabulated';
        return taken(
          trace,
          { clause: cites, symbol: 'Fe', unit: 'psi', because },
          psi(Math.round(value / 50) * 50),
        );
      };
      if (D < 0.25) return printed(small({ G }, trace));
      const Fepar = printed(along({ G }, trace));
      const Feperp = printed(across({ G, D }, trace));
      if (θ === 0) return Fepar;
      return θ === 90 ? Feperp : angled({ Fepar, Feperp, θ }, trace);
    },
  });
}

/** Table 12.3.3B: rows as read in worksheets on 2018 and 2024 (plywood); the OSB row is from memory. */
const panels = {
  'plywood Structural I or Marine': 4650,
  'plywood, other or unknown': 3350,
  OSB: 4650,
} as const;
export const bearingPanels = Object.keys(panels) as readonly (keyof typeof panels)[];

/** Bearing strength of a wood structural panel, for fasteners up to 1/4 in. */
export function makePanelBearing(edition: NdsEdition) {
  const cites = citation(edition, 'Table 12.3.3B');
  return clause({
    id: `${edition.id}/12.3.3b-panel-bearing`,
    title: 'dowel bearing strength of a wood structural panel',
    cites,
    inputs: {
      panel: oneOf(bearingPanels, 'panel by grade'),
      D: needs('in', 'nominal diameter', { min: 0.092, max: 0.25 }),
    },
    gives,
    compute: ({ panel }, trace) => {
      const because = panel === 'OSB' ? 'OSB, all grades (recalled)' : panel;
      return taken(trace, { clause: cites, symbol: 'Fe', unit: 'psi', because }, psi(panels[panel]));
    },
  });
}

/**
 * Appendix I.2: steel side plates, ultimate bearing divided by 1.6. The tables print 61,850 psi for A653 SS
 * Grade 33 (Fu 45,000) where the formula gives 61,875; the formula is used.
 */
export function makeSteelBearing(edition: NdsEdition) {
  const cites = citation(edition, 'Appendix I.2');
  const hot = equation({
    clause: cites,
    gives: 'Fe',
    unit: 'psi',
    from: { Fu: 'psi' },
    is: '2.4 * Fu / 1.6',
  });
  const cold = equation({
    clause: cites,
    gives: 'Fe',
    unit: 'psi',
    from: { Fu: 'psi' },
    is: '2.2 * Fu / 1.6',
  });
  return clause({
    id: `${edition.id}/i.2-steel-bearing`,
    title: 'dowel bearing strength of a steel side plate',
    cites,
    inputs: {
      Fu: needs('psi', 'tensile strength of the steel', { above: 0 }),
      rolling: oneOf(['cold-formed', 'hot-rolled'], 'sheet, or plate of 1/4 in and thicker'),
    },
    gives,
    compute: ({ Fu, rolling }, trace) => (rolling === 'hot-rolled' ? hot : cold)({ Fu }, trace),
  });
}
