/**
 * What stands on the firm's shelf. Every strength carries where it comes from; a strength that is not known is
 * left out, and the link that needs it becomes unproven.
 */
import * as z from 'zod';
import { lengthText, offsetText, quantityText } from '../quantities/schema.ts';
import { coatings, metals } from './metals.ts';

const strictObject = z.strictObject;
const shortText = z.string().min(1).max(200);

/** A published or tested strength of the item itself. */
const strength = <T extends z.ZodType>(value: T) =>
  strictObject({
    value,
    source: shortText.describe('where the number comes from: standard table, test report'),
  });

/** The firm's own test of an item in a substrate: a mean of n, reduced by the safety factor named. */
export const ownTest = strictObject({
  load: z.enum(['pull-out', 'pull-over', 'uplift']),
  substrate: shortText.describe('key of the substrate, as build-ups name it, for example "plywood 15/32 in"'),
  n: z.int().min(1),
  mean: quantityText('lbf', { above: 0 }),
  coefficientOfVariation: z.number().min(0).max(1),
  safetyFactor: z.number().min(1).max(10),
  date: z.iso.date(),
  source: shortText,
});
export type OwnTest = z.infer<typeof ownTest>;

const common = {
  id: z
    .string()
    .regex(/^[A-Z0-9][A-Z0-9./-]{1,30}$/, { error: 'capital letters, digits, dot, slash and dash only' })
    .describe('the stock number'),
  designation: shortText.describe(
    'as the trade writes it, for example "10-13 x 1 1/2 pancake head, No. 2 square"',
  ),
  metal: z.enum(metals),
  coating: z.enum(coatings),
  colours: z.array(shortText).max(60).default([]),
  pack: z.int().min(1).describe('pieces in a pack'),
  price: z.number().min(0).describe('of one piece, in the currency of the shelf'),
  weight: quantityText('lbf', { above: 0, max: 100 }).describe('of one piece'),
  tests: z.array(ownTest).default([]),
};

export const pointForms = ['drill', 'sharp', 'gimlet', 'type 17', 'chip-free'] as const;
export const headForms = ['pancake', 'low profile', 'hex washer', 'flat', 'round washer', 'pan'] as const;

export const bondedWasher = strictObject({
  metalDiameter: lengthText(4),
  metalThickness: lengthText(0.2),
  shape: z.enum(['flat', 'domed']),
  metal: z.enum(metals),
  rubber: z.enum(['EPDM', 'none']),
});

export const screw = strictObject({
  ...common,
  kind: z.literal('screw'),
  size: z.string().describe('number or fraction: #10, #12, 1/4'),
  diameter: lengthText(1).describe('nominal thread diameter'),
  rootDiameter: lengthText(1),
  threadsPerInch: quantityText('1/in', { above: 0, max: 80 }),
  length: lengthText(40).describe('under the head to the tip'),
  threadLength: lengthText(40).describe('of full thread, measured back from the point'),
  point: strictObject({
    form: z.enum(pointForms),
    number: z.int().min(1).max(5).optional(),
    length: offsetText(2).describe('unthreaded tip: drill point or taper'),
    drillsFrom: offsetText(1).describe('least total steel it drills'),
    drillsTo: offsetText(1).describe('most total steel it drills, all plies at once'),
  }),
  head: strictObject({ form: z.enum(headForms), bearingDiameter: lengthText(3), height: lengthText(1) }),
  washer: bondedWasher.optional(),
  drive: shortText.describe('bit or socket it needs, as the bit is named'),
  tension: strength(quantityText('lbf', { above: 0 }))
    .optional()
    .describe('nominal tensile strength of the screw itself'),
  shear: strength(quantityText('lbf', { above: 0 })).optional(),
  torsion: strength(quantityText('lbf·in', { above: 0 }))
    .optional()
    .describe('least torque that breaks it'),
});
export type Screw = z.infer<typeof screw>;

export const nail = strictObject({
  ...common,
  kind: z.literal('nail'),
  shank: z.enum(['smooth', 'ring']),
  diameter: lengthText(0.5),
  length: lengthText(12),
  ringLength: offsetText(12),
  headDiameter: lengthText(1),
  bendingYield: quantityText('psi', { above: 0 }).optional(),
});
export type Nail = z.infer<typeof nail>;

export const rivet = strictObject({
  ...common,
  kind: z.literal('rivet'),
  diameter: lengthText(0.5),
  gripFrom: offsetText(2),
  gripTo: lengthText(2),
  hole: strictObject({ from: lengthText(0.5), to: lengthText(0.5), drill: shortText }),
  headDiameter: lengthText(1),
  sealed: z.boolean(),
  shear: strength(quantityText('lbf', { above: 0 })).optional(),
  tension: strength(quantityText('lbf', { above: 0 })).optional(),
});
export type Rivet = z.infer<typeof rivet>;

export const clip = strictObject({
  ...common,
  kind: z.literal('clip'),
  form: z.enum(['one-piece', 'two-piece']),
  seamHeight: lengthText(6),
  baseThickness: lengthText(0.5).describe('base metal of the base the screw heads bear on'),
  tensileStrength: quantityText('psi', { above: 0 }),
  screws: z.int().min(1).max(4),
  screwSize: z.array(z.string()).min(1).describe('screw sizes its holes take'),
  headRoom: lengthText(1).describe('height free over the base for the screw head, under the seam'),
  travel: offsetText(6).describe('sliding travel each way from its middle; 0 for a fixed clip'),
  lever: strictObject({
    seamToScrew: offsetText(4).describe('from the line of the seam pull to the screw line'),
    screwToToe: lengthText(4).describe('from the screw line to the edge the base turns about'),
  })
    .optional()
    .describe('left out when the dimensions are not known: the prying of the clip is then unproven'),
  uplift: strength(quantityText('lbf', { above: 0 }))
    .optional()
    .describe('tested nominal strength of the clip itself'),
  upliftSafetyFactor: z.number().min(1).max(10).optional(),
  upliftCoversBase: z
    .boolean()
    .default(false)
    .describe('the test ran until the clip or its base failed, screw heads pulling over included'),
});
export type Clip = z.infer<typeof clip>;

export const plate = strictObject({
  ...common,
  kind: z.literal('plate'),
  size: strictObject({ length: lengthText(24), width: lengthText(24) }),
  thickness: lengthText(0.5),
  tensileStrength: quantityText('psi', { above: 0 }),
});
export type Plate = z.infer<typeof plate>;

export const looseWasher = strictObject({
  ...common,
  kind: z.literal('washer'),
  hole: lengthText(2),
  washer: bondedWasher,
});

export const bit = strictObject({
  ...common,
  kind: z.literal('bit'),
  drives: shortText.describe('the drive it fits, spelled as on the screws'),
});

export const item = z.discriminatedUnion('kind', [screw, nail, rivet, clip, plate, looseWasher, bit]);
export type Item = z.infer<typeof item>;
export type ItemOf<K extends Item['kind']> = Extract<Item, { kind: K }>;
