/**
 * Wood Handbook, chapter 8: old lateral loads at the proportional limit, p = K D^1.5 for nails, K D^2 for screws and
 * lags, in newtons and millimetres (Tables 8-4, 8-10, 8-11), and screw shanks (Table 8-9). Kept as cross-checks;
 * the yield equations of Table 8-5 have other constants than NDS and are left out so that nobody mixes them.
 */
import { ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';

/** Table 8-4, published (public copy). */
export const lateralCoefficients = [
  { wood: 'softwood', from: 0.29, to: 0.42, nail: 50.04, screw: 23.17, lag: 23.3, origin: 'published' },
  { wood: 'softwood', from: 0.43, to: 0.47, nail: 62.55, screw: 29.79, lag: 26.34, origin: 'published' },
  { wood: 'softwood', from: 0.48, to: 0.52, nail: 76.45, screw: 36.4, lag: 29.51, origin: 'published' },
  { wood: 'hardwood', from: 0.33, to: 0.47, nail: 50.04, screw: 23.17, lag: 26.34, origin: 'published' },
  { wood: 'hardwood', from: 0.48, to: 0.56, nail: 69.5, screw: 31.99, lag: 29.51, origin: 'published' },
  { wood: 'hardwood', from: 0.57, to: 0.74, nail: 94.52, screw: 44.13, lag: 34.13, origin: 'published' },
] as const;

/** Table 8-10: side member thickness over shank diameter, factor on lags. */
export const lagSideFactors: readonly (readonly [number, number])[] = [
  [2, 0.62],
  [2.5, 0.77],
  [3, 0.93],
  [3.5, 1],
  [4, 1.07],
  [4.5, 1.13],
  [5, 1.18],
  [5.5, 1.21],
  [6, 1.22],
  [6.5, 1.22],
];

/** Table 8-11: shank in millimetres, factor on lags loaded across the grain. */
export const lagAcrossFactors: readonly (readonly [number, number])[] = [
  [4.8, 1],
  [6.4, 0.97],
  [7.9, 0.85],
  [9.5, 0.76],
  [11.1, 0.7],
  [12.7, 0.65],
  [15.9, 0.6],
  [19, 0.55],
  [22.2, 0.52],
  [25.4, 0.5],
];

/** Table 8-9: wood screw number and shank in millimetres. */
export const screwShanks: readonly (readonly [number, number])[] = [
  [6, 3.51],
  [8, 4.17],
  [10, 4.83],
  [12, 5.49],
  [14, 6.15],
  [16, 6.81],
];

const cites = 'Wood Handbook Table 8-4';
const nail = equation({
  clause: cites,
  gives: 'p',
  unit: 'N',
  from: { K: '1', D: 'mm' },
  is: 'K * D^1.5',
  fitted: true,
});
const screw = equation({
  clause: cites,
  gives: 'p',
  unit: 'N',
  from: { K: '1', D: 'mm' },
  is: 'K * D^2',
  fitted: true,
});

/** Lateral load at the proportional limit; failure is about 3.5 (softwood) to 7 times (hardwood) as high. */
export const proportionalLimitLateral = clause({
  id: 'wood-handbook/8-4-lateral',
  title: 'lateral load of a nail, screw or lag at the proportional limit',
  cites,
  inputs: {
    fastener: oneOf(['nail', 'screw', 'lag'], 'kind of fastener'),
    wood: oneOf(['softwood', 'hardwood'], 'wood'),
    G: needs('1', 'specific gravity at 12 percent moisture', { min: 0.29, max: 0.74 }),
    D: needs('mm', 'shank diameter', { above: 0, max: 25.4 }),
  },
  gives: { symbol: 'p', unit: 'N' },
  compute: ({ fastener, wood, G, D }, trace) => {
    // The bands are printed to two figures: 0.425 belongs to the lower, which is the lesser.
    const band = lateralCoefficients.findLast((row) => row.wood === wood && G >= row.from);
    const inside =
      band !== undefined &&
      G < band.to + 0.01 &&
      (G <= band.to || lateralCoefficients.some((row) => row.wood === wood && row.from > G));
    if (!inside) return refuse(cites, 'G', G, wood === 'softwood' ? '0.29 to 0.52' : '0.33 to 0.74');
    return (fastener === 'nail' ? nail : screw)({ K: ratio(band[fastener]), D }, trace);
  },
});
