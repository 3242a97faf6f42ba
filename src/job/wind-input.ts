/** Where the wind load comes from: a standard and a place, or the pressures of the project's engineer. */
import * as z from 'zod';
import { lengthText, offsetText, quantityText } from '../quantities/schema.ts';
import { stated } from './stated.ts';

const topography = z.strictObject({
  feature: z.enum(['ridge', 'escarpment', 'hill']),
  height: lengthText(120_000),
  halfLength: lengthText(600_000).describe('horizontal distance upwind of the crest to half the height, Lh'),
  fromCrest: offsetText(600_000).describe('horizontal distance from the crest to the building, x'),
  side: z.enum(['upwind', 'downwind']),
});

const byStandard = z.strictObject({
  by: z.literal('standard'),
  speed: stated(quantityText('mph', { min: 60, max: 300 })).describe(
    'basic wind speed of the risk category, strength level',
  ),
  exposure: stated(z.enum(['B', 'C', 'D'])),
  enclosure: stated(z.enum(['enclosed', 'partially enclosed', 'partially open', 'open'])),
  groundElevation: stated(quantityText('ft', { min: -300, max: 15_000 })).optional(),
  topography: topography.optional(),
  kz: z.enum(['table', 'power law']).default('table'),
  meanRoofHeight: stated(lengthText(60_000))
    .optional()
    .describe('when measured; else from eave height and slope'),
  parapetAllRound: lengthText(600).optional().describe('height of a parapet on all sides'),
  leastDimension: lengthText()
    .optional()
    .describe('least horizontal dimension of the building, without overhangs'),
});

const byEngineer = z.strictObject({
  by: z.literal('engineer'),
  level: z.enum(['ASD', 'strength']).describe('of the pressures as given; they are taken as they are'),
  source: z.string().min(3).max(300).describe('drawing or letter, date, who sealed it'),
  zones: z
    .record(
      z.string().min(1).max(30),
      z.strictObject({
        uplift: quantityText('psf', { max: 0, min: -1000 }),
        overhang: quantityText('psf', { max: 0, min: -1000 }).optional(),
      }),
    )
    .describe('net uplift (negative, away from the roof) for each zone by its name in the standard'),
  edgeStrip: lengthText(24_000)
    .optional()
    .describe('width a of the edge strip, when given with the pressures'),
});

export const windInput = z.discriminatedUnion('by', [byStandard, byEngineer]);
export type WindInput = z.output<typeof windInput>;
