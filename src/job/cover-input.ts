/** The metal panel and what is under it. */
import * as z from 'zod';
import { lengthText, offsetText, quantityText } from '../quantities/schema.ts';
import { stated } from './stated.ts';

const shortText = z.string().min(1).max(80);

export const panelSystems = [
  'standing seam on clips',
  'nail flange',
  'exposed ribbed',
  'corrugated',
] as const;
export const sheetMetals = ['steel', 'aluminium', 'copper', 'stainless', 'zinc'] as const;

const upliftTest = z.strictObject({
  source: z.string().min(3).max(300).describe('standard, laboratory report, date'),
  safetyFactor: z.number().min(1).max(5),
  rows: z
    .array(
      z.strictObject({
        spacing: lengthText(144).describe('of the clips or fasteners along the seam or rib'),
        ultimate: quantityText('psf', { above: 0, max: 2000 }),
        failure: shortText.describe('how it failed: rows are interpolated only within one way of failing'),
      }),
    )
    .min(1)
    .max(40),
});

export const panelInput = z.strictObject({
  system: z.enum(panelSystems),
  coverage: lengthText(72),
  metal: z.enum(sheetMetals),
  thickness: stated(shortText).describe('gauge or thickness as ordered: "24 ga", "0.032 in", "16 oz"'),
  grade: stated(shortText).describe('"SS50", "SS80", "3105-H25"'),
  coating: z.enum(['none', 'galvanized', 'aluminium-zinc']).default('none'),
  colour: shortText.optional(),
  seamHeight: lengthText(6).optional(),
  ribHeight: lengthText(8).optional(),
  ribSpacing: lengthText(24).optional().describe('major ribs of an exposed panel'),
  longestSheet: lengthText(2400)
    .optional()
    .describe('longest panel that is delivered; longer runs get end laps'),
  startOffset: offsetText(72)
    .default(0 as never)
    .describe('width of the first run cut away at the left edge'),
  clip: z.string().max(40).optional().describe('stock number of the clip the panel was tested with'),
  pullOnOneSide: z
    .boolean()
    .default(true)
    .describe('screws through a flange or beside a rib load one side of their heads'),
  upliftTest: stated(upliftTest)
    .optional()
    .describe('tested uplift of this panel system: only this can prove the panel itself'),
});
export type PanelInput = z.output<typeof panelInput>;
export type UpliftTest = z.output<typeof upliftTest>;

const nailing = z.strictObject({
  nail: z.string().max(40).describe('stock number of the nail or screw holding the deck'),
  edge: lengthText(24),
  field: lengthText(24),
  framing: lengthText(96).describe('spacing of the framing under the deck'),
  framingSpecies: z.string().max(60),
});

const moisture = z.enum(['dry', 'wet']).default('dry');
const treatment = z.enum(['none', 'borate', 'copper']).default('none');
const lines = {
  spacing: lengthText(240).describe('along the slope'),
  firstOffset: offsetText(60)
    .default(3 as never)
    .describe('of the first line from the eave, along the slope'),
  lastOffset: offsetText(60)
    .default(3 as never)
    .describe('of the last line from the top, along the slope'),
};
const holds = { allowance: z.string().max(200).optional() };

const sheathing = <K extends string>(kind: K) =>
  z.strictObject({
    kind: z.literal(kind),
    thickness: stated(lengthText(3)),
    specificGravity: stated(z.number().min(0.3).max(0.8)),
    moisture,
    treatment,
    nailing: stated(nailing).optional(),
    ...holds,
  });
const lumberDeck = z.strictObject({
  kind: z.literal('lumber deck'),
  thickness: stated(lengthText(6)),
  species: stated(shortText),
  moisture,
  treatment,
  nailing: stated(nailing).optional(),
});
const woodPurlins = z.strictObject({
  kind: z.literal('wood purlins'),
  depth: stated(lengthText(12)).describe('of wood under the panel, in the direction of the screw'),
  species: stated(shortText),
  moisture,
  treatment,
  ...lines,
});
const steelSupport = <K extends string>(kind: K) =>
  z.strictObject({ kind: z.literal(kind), thickness: stated(shortText), grade: stated(shortText), ...lines });
const steelDeck = z.strictObject({
  kind: z.literal('steel deck'),
  thickness: stated(shortText),
  grade: stated(shortText),
  fastening: stated(
    z.strictObject({ allowable: quantityText('psf', { above: 0 }), source: z.string().min(3).max(300) }),
  ).optional(),
});

export const supportInput = z.discriminatedUnion('kind', [
  sheathing('plywood'),
  sheathing('OSB'),
  lumberDeck,
  woodPurlins,
  steelDeck,
  steelSupport('cold-formed purlins'),
  steelSupport('hat channels'),
  steelSupport('structural steel'),
]);
export type SupportInput = z.output<typeof supportInput>;
export type SupportKind = SupportInput['kind'];

export const underlaymentInput = z.strictObject({ name: shortText, thickness: offsetText(1) });
export const insulationInput = z.strictObject({
  name: shortText,
  thickness: lengthText(16),
  compressiveStrength: stated(quantityText('psi', { above: 0, max: 500 })).optional(),
  plate: z.string().max(40).optional().describe('stock number of the bearing plate under the clip'),
});
