/**
 * NDS Table 12.3.1B (reduction term Rd) and Appendix I, Table I1 (bending yield strength Fyb).
 * Rd goes by the diameter that yields (root for wood screws and reduced-body lags, shank for nails); Fyb by nominal.
 * Taking K_D from the nominal diameter does not reproduce Table 12L; the root does.
 */
import { type Psi, psi } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { taken } from '../../trace/step.ts';
import { citation, type NdsEdition } from './edition.ts';

/** Reduction term Rd of one group of yield modes. */
export function makeReductionTerm(edition: NdsEdition) {
  const cites = citation(edition, 'Table 12.3.1B');
  const give = { clause: cites, unit: '1' } as const;
  const Kθ = equation({ ...give, gives: 'Kθ', from: { θ: 'deg' }, is: '1 + θ / 360', fitted: true });
  const KD = equation({
    ...give,
    gives: 'KD',
    from: { Dy: 'in' },
    is: 'max(2.2, 10 * Dy + 0.5)',
    fitted: true,
  });
  const both = equation({ ...give, gives: 'Rd', from: { KD: '1', Kθ: '1' }, is: 'KD * Kθ' });
  const large = {
    I: equation({ ...give, gives: 'Rd', from: { Kθ: '1' }, is: '4 * Kθ' }),
    II: equation({ ...give, gives: 'Rd', from: { Kθ: '1' }, is: '3.6 * Kθ' }),
    'III or IV': equation({ ...give, gives: 'Rd', from: { Kθ: '1' }, is: '3.2 * Kθ' }),
  } as const;
  return clause({
    id: `${edition.id}/12.3.1b-reduction-term`,
    title: 'reduction term of the yield equations',
    cites,
    inputs: {
      D: needs('in', 'nominal diameter', { min: 0.092, max: 1 }),
      Dy: needs('in', 'diameter that yields: root of a screw, shank of a nail', { min: 0.07, max: 1 }),
      θ: needs('deg', 'largest angle of load to grain in any member', { min: 0, max: 90 }),
      mode: oneOf(['I', 'II', 'III or IV'], 'yield mode'),
    },
    gives: { symbol: 'Rd', unit: '1' },
    compute: ({ D, Dy, θ, mode }, trace) => {
      if (Dy >= 0.25) return large[mode]({ Kθ: Kθ({ θ }, trace) }, trace);
      const kD = KD({ Dy }, trace);
      return D < 0.25 ? kD : both({ KD: kD, Kθ: Kθ({ θ }, trace) }, trace);
    },
  });
}

interface Band {
  readonly upTo: number;
  readonly Fyb: Psi;
}
const band = (upTo: number, Fyb: number): Band => ({ upTo, Fyb: psi(Fyb) });

/** Table I1 and the footnotes of Tables 12L to 12P, by nominal diameter. Published, quoted from the 2018 edition. */
const bands = {
  'nail, wood screw or lag': {
    from: 0.092, // Table I1 starts at 0.099; 0.092 is the least nail of Table 12.2C and falls in its first band.
    rows: [
      band(0.142, 100_000),
      band(0.177, 90_000),
      band(0.236, 80_000),
      band(0.273, 70_000),
      band(0.344, 60_000),
      band(0.375, 45_000),
      band(1, 45_000),
    ],
  },
  'hardened nail': { from: 0.12, rows: [band(0.142, 130_000), band(0.192, 115_000), band(0.207, 100_000)] },
} as const;
const steels = Object.keys(bands) as readonly (keyof typeof bands)[];

/** Bending yield strength by nominal diameter, where the maker of the fastener gives none. */
export function makeBendingYield(edition: NdsEdition) {
  const cites = citation(edition, 'Table I1');
  return clause({
    id: `${edition.id}/i1-bending-yield`,
    title: 'bending yield strength of a fastener',
    cites,
    inputs: {
      D: needs('in', 'nominal diameter', { min: 0.092, max: 1 }),
      steel: oneOf(steels, 'low to medium carbon steel, or hardened'),
    },
    gives: { symbol: 'Fyb', unit: 'psi' },
    compute: ({ D, steel }, trace) => {
      const { from, rows } = bands[steel];
      const row = D < from ? undefined : rows.find(({ upTo }) => D <= upTo);
      if (!row) return refuse(cites, 'D', D, `${from} to ${rows.at(-1)?.upTo} in for a ${steel}`);
      return taken(
        trace,
        { clause: cites, symbol: 'Fyb', unit: 'psi', because: `${steel}, up to ${row.upTo} in` },
        row.Fyb,
      );
    },
  });
}
