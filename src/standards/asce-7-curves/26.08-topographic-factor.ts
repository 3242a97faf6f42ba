/**
 * ASCE/SEI 7 26.8, Fig. 26.8-1: topographic factor Kzt = (1 + K1 K2 K3)², the same in both editions.
 * H height of the feature, Lh distance upwind of the crest to half of H, x distance from the crest, z height above
 * ground (mean roof height for components), all ft. Multipliers published (a national code reproducing the figure);
 * the heights below which the factor is 1 are recalled.
 */
import { foot, type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { note, taken } from '../../trace/step.ts';
import { type Asce7, citation, type Exposure, exposures } from './edition.ts';

export const features = ['ridge', 'escarpment', 'hill'] as const;
export type Feature = (typeof features)[number];

interface FeatureRow {
  /** K1 over H/Lh. */
  readonly k: Readonly<Record<Exposure, number>>;
  readonly gamma: number;
  readonly mu: { readonly upwind: number; readonly downwind: number };
}

/** Fig. 26.8-1: two-dimensional ridge, two-dimensional escarpment, axisymmetrical hill. */
const rows: Readonly<Record<Feature, FeatureRow>> = {
  ridge: { k: { B: 1.3, C: 1.45, D: 1.55 }, gamma: 3, mu: { upwind: 1.5, downwind: 1.5 } },
  escarpment: { k: { B: 0.75, C: 0.85, D: 0.95 }, gamma: 2.5, mu: { upwind: 1.5, downwind: 4 } },
  hill: { k: { B: 0.95, C: 1.05, D: 1.15 }, gamma: 4, mu: { upwind: 1.5, downwind: 1.5 } },
};

/** Steepness and height (ft) below which 26.8.1 leaves the factor at 1. */
const MIN_STEEPNESS = 0.2;
const MIN_HEIGHT: Readonly<Record<Exposure, number>> = { B: 60, C: 15, D: 15 };

const feature = oneOf(features, 'two-dimensional ridge or escarpment, or hill round in plan');
const exposure = oneOf(exposures, 'exposure category');
const side = oneOf(['upwind', 'downwind'], 'on which side of the crest the building stands');

export function makeTopographicFactor(of: Asce7) {
  const cites = citation(of, 'Fig. 26.8-1');
  const eqK1 = equation({
    clause: cites,
    gives: 'K1',
    unit: '1',
    from: { k: '1', H: 'ft', Lh: 'ft' },
    is: 'k * min(H / Lh, 0.5)',
  });
  const eqL = equation({
    clause: cites,
    gives: 'L',
    unit: 'ft',
    from: { H: 'ft', Lh: 'ft' },
    is: 'max(Lh, 2 * H)',
  });
  const eqK2 = equation({
    clause: cites,
    gives: 'K2',
    unit: '1',
    from: { x: 'ft', μ: '1', L: 'ft' },
    is: 'max(1 - x / (μ * L), 0)',
  });
  const eqK3 = equation({
    clause: cites,
    gives: 'K3',
    unit: '1',
    from: { γ: '1', z: 'ft', L: 'ft' },
    is: 'exp(-γ * z / L)',
  });
  const eqKzt = equation({
    clause: citation(of, 'Eq. 26.8-1'),
    gives: 'Kzt',
    unit: '1',
    from: { K1: '1', K2: '1', K3: '1' },
    is: '(1 + K1 * K2 * K3)^2',
  });

  const H = needs('ft', 'height of the feature', { above: 0 });
  const Lh = needs('ft', 'distance upwind of the crest to half the height', { above: 0 });
  const x = needs('ft', 'horizontal distance from the crest', { min: 0 });
  const z = needs('ft', 'height above ground', { min: 0 });
  const K1 = clause({
    id: `${of.id}/26.08-1-k1-steepness`,
    title: 'topographic multiplier for steepness',
    cites,
    inputs: { feature, exposure, H, Lh },
    gives: { symbol: 'K1', unit: '1' },
    compute: (v, trace) => eqK1({ k: ratio(rows[v.feature].k[v.exposure]), H: v.H, Lh: v.Lh }, trace),
  });
  const K2 = clause({
    id: `${of.id}/26.08-1-k2-distance`,
    title: 'topographic multiplier for distance from the crest',
    cites,
    inputs: { feature, side, H, Lh, x },
    gives: { symbol: 'K2', unit: '1' },
    compute: (v, trace) =>
      eqK2({ x: v.x, μ: ratio(rows[v.feature].mu[v.side]), L: eqL({ H: v.H, Lh: v.Lh }, trace) }, trace),
  });
  const K3 = clause({
    id: `${of.id}/26.08-1-k3-height`,
    title: 'topographic multiplier for height above ground',
    cites,
    inputs: { feature, H, Lh, z },
    gives: { symbol: 'K3', unit: '1' },
    compute: (v, trace) =>
      eqK3({ γ: ratio(rows[v.feature].gamma), z: v.z, L: eqL({ H: v.H, Lh: v.Lh }, trace) }, trace),
  });
  const Kzt = clause({
    id: `${of.id}/26.08-topographic-factor`,
    title: 'topographic factor',
    cites: citation(of, '26.8'),
    inputs: { feature, exposure, side, H, Lh, x, z },
    gives: { symbol: 'Kzt', unit: '1' },
    compute: (v, trace) => {
      const mild = tooMild(v.H, v.Lh, v.exposure);
      if (mild)
        return taken(
          trace,
          { clause: citation(of, '26.8.1'), symbol: 'Kzt', unit: '1', because: mild },
          ratio(1),
        );
      note(
        trace,
        citation(of, '26.8.1'),
        'taken as an isolated feature with the site in its upper half; judged by whoever states it',
      );
      const [k1, k2, k3] = [K1(v, trace), K2(v, trace), K3(v, trace)];
      if (isRefusal(k1)) return k1;
      if (isRefusal(k2)) return k2;
      return isRefusal(k3) ? k3 : eqKzt({ K1: k1 as Ratio, K2: k2 as Ratio, K3: k3 as Ratio }, trace);
    },
  });
  return { K1, K2, K3, Kzt };
}

function tooMild(H: number, Lh: number, category: Exposure): string | undefined {
  if (H / foot(Lh) < MIN_STEEPNESS) return 'no effect: H/Lh is below 0.2 (condition recalled)';
  if (H < MIN_HEIGHT[category])
    return `no effect: H is below ${MIN_HEIGHT[category]} ft in exposure ${category} (condition recalled)`;
  return undefined;
}
