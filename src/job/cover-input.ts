/** The metal panel and what is under it. */
import * as z from 'zod';
import { lengthFrom, lengthText, offsetText, quantityText } from '../quantities/schema.ts';
import { stated } from './stated.ts';

const shortText = z.string().min(1).max(80);

export const panelSystems = [
  'standing seam on clips',
  'nail flange',
  'exposed ribbed',
  'corrugated',
] as const;
export const sheetMetals = ['steel', 'aluminium', 'copper', 'stainless', 'zinc'] as const;

const testRows = z
  .array(
    z.strictObject({
      spacing: lengthFrom(1, 144).describe('of the clips or fasteners along the seam or rib'),
      ultimate: quantityText('psf', { above: 0, max: 2000 }),
      failure: shortText.describe('how it failed: rows are interpolated only within one way of failing'),
    }),
  )
  .min(1)
  .max(40)
  .superRefine((rows, context) => {
    for (const [i, row] of rows.entries()) {
      const before = rows.findIndex((one) => Math.abs(one.spacing - row.spacing) < 1e-6);
      if (before < i)
        context.addIssue({
          code: 'custom',
          path: [i, 'spacing'],
          message: `is the spacing of row ${before} already; keep one result for each spacing, the lower one where a test was repeated`,
        });
    }
  });

const upliftTest = z.strictObject({
  source: z.string().min(3).max(300).describe('standard, laboratory report, date'),
  safetyFactor: z.number().min(1).max(5),
  rows: testRows,
});

const exposedSystems: readonly string[] = ['exposed ribbed', 'corrugated'];

const panelFields = z.strictObject({
  system: z.enum(panelSystems),
  coverage: lengthFrom(4, 72),
  metal: z.enum(sheetMetals),
  thickness: stated(shortText).describe('gauge or thickness as ordered: "24 ga", "0.032 in", "16 oz"'),
  grade: stated(shortText).describe('"SS50", "SS80", "3105-H25"'),
  coating: z.enum(['none', 'galvanized', 'aluminium-zinc']).default('none'),
  colour: shortText.optional(),
  seamHeight: lengthText(6).optional(),
  ribSpacing: lengthFrom(1, 24)
    .optional()
    .describe(
      'of the ribs that are screwed; needed for an exposed panel, and a whole number of them makes its coverage',
    ),
  longestSheet: lengthFrom(48, 2400)
    .optional()
    .describe('longest panel that is delivered; longer runs get end laps'),
  startOffset: offsetText(72).prefault('0 in').describe('width of the first run cut away at the left edge'),
  clip: z.string().max(40).optional().describe('stock number of the clip the panel was tested with'),
  pullOnOneSide: z
    .boolean()
    .default(true)
    .describe('screws through a flange or beside a rib are pulled on one side of their heads'),
  upliftTest: stated(upliftTest)
    .optional()
    .describe('tested uplift of this panel system: only this can prove the panel itself'),
});

/** Ribs of the panels laid side by side must fall on one grid; a maker rounds them to about this much a panel. */
const RIB_GRID = 1 / 16;

export const panelInput = panelFields.superRefine((panel, context) => {
  const fault = (field: keyof typeof panel, message: string) =>
    context.addIssue({ code: 'custom', path: [field], message });
  const { coverage, ribSpacing, startOffset } = panel;
  if (startOffset >= coverage)
    fault('startOffset', 'cuts away the whole first panel; give less than panel.coverage, or nothing');
  if (ribSpacing === undefined) {
    if (exposedSystems.includes(panel.system))
      fault(
        'ribSpacing',
        'is missing; an exposed panel is screwed at its ribs: give their spacing, for example "9 in"',
      );
    return;
  }
  const ribs = Math.max(1, Math.round(coverage / ribSpacing));
  if (Math.abs(coverage - ribs * ribSpacing) > RIB_GRID + 1e-9)
    fault(
      'ribSpacing',
      `does not divide the coverage: ${ribs} × ${Number(ribSpacing.toFixed(3))} in is not ${Number(coverage.toFixed(3))} in; give both as the maker prints them`,
    );
});
export type PanelInput = z.output<typeof panelInput>;
export type UpliftTest = z.output<typeof upliftTest>;

const nailing = z.strictObject({
  nail: z.string().max(40).describe('stock number of the nail or screw holding the deck'),
  edge: lengthFrom(1, 24),
  field: lengthFrom(1, 24),
  framing: lengthFrom(3, 96).describe('spacing of the framing under the deck'),
  framingSpecies: z.string().max(60),
});

const moisture = z.enum(['dry', 'wet']).default('dry');
const treatment = z.enum(['none', 'borate', 'copper']).default('none');
const lines = {
  spacing: lengthFrom(3, 240).describe('along the slope'),
  firstOffset: offsetText(60).prefault('3 in').describe('of the first line from the eave, along the slope'),
  lastOffset: offsetText(60).prefault('3 in').describe('of the last line from the top, along the slope'),
};

const sheathing = <K extends string>(kind: K) =>
  z.strictObject({
    kind: z.literal(kind),
    thickness: stated(lengthText(3)),
    specificGravity: stated(z.number().min(0.3).max(0.8)),
    moisture,
    treatment,
    nailing: stated(nailing).optional(),
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
