/**
 * EN 1993-1-3 Table 8.2: the screw itself must outlast the sheet, Fv,Rd >= 1.2 Fb,Rd (and 1.2 Fn,Rd), and
 * Ft,Rd >= Fp,Rd and Fo,Rd. Its strengths come from tests; the Finnish national annex tabulates shear.
 */
import { type Newton, newton } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { taken } from '../../trace/step.ts';

const cites = 'EN 1993-1-3:2006 Table 8.2';
const sheetShear = equation({
  clause: cites,
  gives: 'FvRd',
  unit: 'N',
  from: { FbRd: 'N', FnRd: 'N' },
  is: '1.2 * min(FbRd, FnRd)',
});
const sheetTension = equation({
  clause: cites,
  gives: 'FtRd',
  unit: 'N',
  from: { FpRd: 'N', FoRd: 'N' },
  is: 'max(FpRd, FoRd)',
});

export const leastScrewShear = clause({
  id: 'en-1993-1-3/t8.2-screw-own-strength/least-shear',
  title: 'least design shear resistance the screw itself must have',
  cites,
  inputs: {
    FbRd: needs('N', 'bearing resistance', { above: 0 }),
    FnRd: needs('N', 'net section resistance', { above: 0 }),
  },
  gives: { symbol: 'FvRd', unit: 'N' },
  compute: (values, trace) => sheetShear(values, trace),
});

export const leastScrewTension = clause({
  id: 'en-1993-1-3/t8.2-screw-own-strength/least-tension',
  title: 'least design tension resistance the screw itself must have',
  cites,
  inputs: {
    FpRd: needs('N', 'pull-through resistance', { above: 0 }),
    FoRd: needs('N', 'pull-out resistance', { above: 0 }),
  },
  gives: { symbol: 'FtRd', unit: 'N' },
  compute: (values, trace) => sheetTension(values, trace),
});

const annex = 'Finnish National Annex to EN 1993-1-3';

/** Design shear resistance, N, by diameter in mm. Published (a table in an open code library). */
const shearRows = {
  '4.8': { hardened: 5200, stainless: 4600 },
  '5.5': { hardened: 7200, stainless: 6500 },
  '6.3': { hardened: 9800, stainless: 8500 },
  '8.0': { hardened: 16_300, stainless: 14_300 },
} as const;

export const finnishScrewShear = clause({
  id: 'en-1993-1-3/t8.2-screw-own-strength/finnish-annex',
  title: 'design shear resistance of a self-tapping screw by the Finnish annex',
  cites: annex,
  inputs: {
    size: oneOf(['4.8', '5.5', '6.3', '8.0'], 'nominal diameter in mm'),
    steel: oneOf(['hardened', 'stainless'], 'hardened carbon steel or stainless steel'),
  },
  gives: { symbol: 'FvRd', unit: 'N' },
  compute: ({ size, steel }, trace): Newton =>
    taken(
      trace,
      { clause: annex, symbol: 'FvRd', unit: 'N', because: `${size} mm, ${steel}` },
      newton(shearRows[size][steel]),
    ),
});
