/**
 * EN 1995-1-1 Table 3.1 (kmod) and 2.4.1 (design value). Permanent to medium of solid timber published, the rest
 * recalled; OSB/3 recalled but for instantaneous. Wind is short or instantaneous by the National Annex: an input.
 */
import { type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { taken } from '../../trace/step.ts';

export const loadDurations = ['permanent', 'long', 'medium', 'short', 'instantaneous'] as const;
type ByDuration = Readonly<Record<(typeof loadDurations)[number], Ratio>>;
const row = (...k: readonly [number, number, number, number, number]): ByDuration => ({
  permanent: ratio(k[0]),
  long: ratio(k[1]),
  medium: ratio(k[2]),
  short: ratio(k[3]),
  instantaneous: ratio(k[4]),
});

const solid = row(0.6, 0.7, 0.8, 0.9, 1.1);
const table = {
  'solid timber, glulam, plywood': { '1': solid, '2': solid, '3': row(0.5, 0.55, 0.65, 0.7, 0.9) },
  'OSB/3': { '1': row(0.4, 0.5, 0.7, 0.9, 1.1), '2': row(0.3, 0.4, 0.55, 0.7, 0.9), '3': undefined },
} as const;
const materials = Object.keys(table) as readonly (keyof typeof table)[];
const cites = 'EN 1995-1-1:2004+A1:2008 Table 3.1';

/** Modification factor for duration of load and moisture. */
export const modificationFactor = clause({
  id: 'en-1995-1-1/3.1-modification',
  title: 'modification factor kmod',
  cites,
  inputs: {
    material: oneOf(materials, 'timber product'),
    serviceClass: oneOf(['1', '2', '3'], 'service class'),
    duration: oneOf(loadDurations, 'class of load duration'),
  },
  gives: { symbol: 'kmod', unit: '1' },
  compute: ({ material, serviceClass, duration }, trace) => {
    const values: ByDuration | undefined = table[material][serviceClass];
    if (!values)
      return refuse(cites, 'serviceClass', serviceClass, 'service class 1 or 2 for OSB/3', 'outside-scope');
    const because = `${material}, service class ${serviceClass}, ${duration}`;
    return taken(trace, { clause: cites, symbol: 'kmod', unit: '1', because }, values[duration]);
  },
});

/** Recommended partial factors of Table 2.3; a National Annex may set others. */
export const partialFactors = {
  solidTimber: 1.3,
  glulam: 1.25,
  connections: 1.3,
  origin: 'published',
} as const;

const design = equation({
  clause: 'EN 1995-1-1:2004+A1:2008 (2.17)',
  gives: 'Rd',
  unit: 'N',
  from: { Rk: 'N', kmod: '1', γM: '1' },
  is: 'kmod * Rk / γM',
});

/** Design resistance of a connection. */
export const designResistance = clause({
  id: 'en-1995-1-1/2.4.3-design-resistance',
  title: 'design resistance from a characteristic one',
  cites: 'EN 1995-1-1:2004+A1:2008 2.4.3',
  inputs: {
    Rk: needs('N', 'characteristic resistance', { above: 0 }),
    kmod: needs('1', 'modification factor', { above: 0, max: 1.1 }),
    γM: needs('1', 'partial factor of the connection', { min: 1 }),
  },
  gives: { symbol: 'Rd', unit: 'N' },
  compute: design,
});

/** EN 338:2009 characteristic and mean density in kg/m³, published. EN 338:2016 gives C27 360, C35 390, C40 400 (recalled). */
export const strengthClassDensities = [
  { strengthClass: 'C14', characteristic: 290, mean: 350, origin: 'published' },
  { strengthClass: 'C16', characteristic: 310, mean: 370, origin: 'published' },
  { strengthClass: 'C18', characteristic: 320, mean: 380, origin: 'published' },
  { strengthClass: 'C22', characteristic: 340, mean: 410, origin: 'published' },
  { strengthClass: 'C24', characteristic: 350, mean: 420, origin: 'published' },
  { strengthClass: 'C27', characteristic: 370, mean: 450, origin: 'published' },
  { strengthClass: 'C30', characteristic: 380, mean: 460, origin: 'published' },
  { strengthClass: 'C35', characteristic: 400, mean: 480, origin: 'published' },
  { strengthClass: 'C40', characteristic: 420, mean: 500, origin: 'published' },
] as const;
