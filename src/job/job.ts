/** One roof's data: everything given, everything assumed, everything still to ask. */
import * as z from 'zod';
import { lengthFrom, lengthText, offsetText, quantityText } from '../quantities/schema.ts';
import { insulationInput, panelInput, supportInput, underlaymentInput } from './cover-input.ts';
import { roofInput } from './roof-input.ts';
import { stated } from './stated.ts';
import { windInput } from './wind-input.ts';

export const JOB_SCHEMA = 'deckbite/job/1';

export const windEditions = ['ASCE 7-16', 'ASCE 7-22'] as const;
export const steelEditions = ['AISI S100-16', 'AISI S100-16 w/S3-22'] as const;
export const woodEditions = ['NDS 2018', 'NDS 2024'] as const;
export const aluminiumEditions = ['ADM 2010', 'ADM 2015'] as const;
export const codeYears = ['IBC 2018', 'IBC 2021', 'IBC 2024'] as const;

const basis = z.strictObject({
  codeYear: stated(z.enum(codeYears)).describe('fixes the editions unless one is named below'),
  method: z.enum(['ASD', 'LRFD']).default('ASD'),
  wind: z.enum(windEditions).optional(),
  steel: z.enum(steelEditions).optional(),
  wood: z.enum(woodEditions).optional(),
  aluminium: z.enum(aluminiumEditions).optional(),
  deductDeadLoad: quantityText('psf', { above: 0, max: 50 })
    .optional()
    .describe('roof dead load; 0.6 D (0.9 D in LRFD) is then deducted from uplift'),
});

const place = z.strictObject({
  saltWater: stated(quantityText('ft', { min: 0, max: 2_000_000 }))
    .optional()
    .describe('distance to salt water'),
  surroundings: z.enum(['rural', 'town', 'industrial', 'animal building', 'pool hall']).default('rural'),
  below: z
    .enum(['hidden', 'in view'])
    .default('hidden')
    .describe('in view: no fastener point may show below'),
});

const gutter = z.strictObject({
  width: lengthText(24),
  bracketSpacing: lengthFrom(3, 48).prefault('24 in'),
});
const pipe = z.strictObject({
  plane: z.string().min(1).max(60),
  diameter: lengthText(24),
  count: z.int().min(1).max(1000).default(1),
});

const details = z.strictObject({
  gutter: gutter.optional(),
  pipes: z.array(pipe).max(200).default([]),
  treatedSill: z
    .strictObject({ species: z.string().max(60), treatment: z.enum(['borate', 'copper']) })
    .optional()
    .describe('a treated member the eave trim is screwed to'),
  edgeMember: stated(z.enum(['like the supports']))
    .optional()
    .describe(
      'a member along eaves and valleys of a roof on purlins, to which starters, valley pans and brackets are screwed',
    ),
  trimGirth: lengthText(36)
    .prefault('8 in')
    .describe('developed width of ridge, hip, rake and wall trims one side'),
});

/** A person's decision: marked, checked again and printed. */
const override = z.strictObject({
  connection: z.string().min(1).max(60),
  zone: z.string().max(40).optional(),
  item: z.string().max(40).optional(),
  spacing: lengthFrom(1, 120).optional(),
  because: z.string().min(3).max(300),
});

export const job = z.strictObject({
  schema: z.literal(JOB_SCHEMA, {
    error: `this program reads ${JOB_SCHEMA}; a newer document needs a newer program`,
  }),
  name: z.string().min(1).max(120),
  reference: z.string().max(60).default(''),
  date: z.iso.date().optional().describe('of this revision, for the papers'),
  revision: z
    .string()
    .regex(/^[A-Z]$/, { error: 'must be one capital letter, "A" for the first' })
    .default('A'),
  note: z.string().max(2000).default(''),
  print: z
    .strictObject({ units: z.enum(['US', 'SI']).default('US'), language: z.enum(['en', 'es']).default('en') })
    .prefault({}),
  basis,
  place: place.prefault({}),
  wind: windInput,
  roof: roofInput,
  panel: panelInput,
  support: supportInput,
  underlayment: underlaymentInput.optional(),
  insulation: insulationInput.optional(),
  roofSnow: stated(quantityText('psf', { min: 0, max: 400 }))
    .optional()
    .describe('balanced roof snow load'),
  details: details.prefault({}),
  spacingCap: lengthFrom(1, 60)
    .optional()
    .describe('an owner or code cap on clip spacing, applied after the calculation'),
  ends: z
    .strictObject({ first: offsetText(24).prefault('3 in'), last: offsetText(24).prefault('3 in') })
    .prefault({})
    .describe('first and last fastener of a row from the ends of the run, along the slope'),
  overrides: z.array(override).max(200).default([]),
  waste: z.strictObject({ fasteners: z.number().min(0).max(0.5).default(0.05) }).prefault({}),
});
export type Job = z.output<typeof job>;
export type JobDocument = z.input<typeof job>;
