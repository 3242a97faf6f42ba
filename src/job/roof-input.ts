/** The roof as described in a job: a short form, two joined short forms, or planes drawn one by one. */
import * as z from 'zod';
import { lengthFrom, offsetText } from '../quantities/schema.ts';
import { slopeText } from './slope.ts';
import { stated } from './stated.ts';

export const edgeTags = [
  'eave',
  'high edge',
  'rake',
  'ridge',
  'hip',
  'valley',
  'headwall',
  'sidewall',
] as const;
export type EdgeTag = (typeof edgeTags)[number];

export const windShapes = ['flat', 'gable', 'hip', 'monoslope'] as const;
export type WindShape = (typeof windShapes)[number];

/** Least measure of a building that is no slip of the pen, in inches. */
const FOOT = 12;
/** Corners of one outline: a roof with more is a drawing to be simplified first. */
const MOST_CORNERS = 500;

const coordinate = z.tuple([offsetTextOfPlan(), offsetTextOfPlan()]);
function offsetTextOfPlan() {
  return offsetText(1_000_000);
}
const outline = z
  .array(coordinate)
  .min(3, { error: 'an outline has at least three corners' })
  .max(MOST_CORNERS);

const planId = z.string().regex(/^[a-z0-9][a-z0-9 -]{0,30}$/, {
  error: 'must be a short name of small letters, digits, space and dash, for example "south 2"',
});

const opening = z.strictObject({
  name: z.string().min(1).max(60),
  plane: planId,
  outline: outline.describe('corners in plan, in the same axes as the planes'),
});

const overhang = z.strictObject({ eave: offsetText(240), rake: offsetText(240) });
const building = {
  length: lengthFrom(FOOT).describe('of the walls, along the eave; overhangs are added outside'),
  width: lengthFrom(FOOT).describe('of the walls, across the ridge'),
  slope: slopeText,
  overhang: overhang.optional(),
};
const heights = {
  eaveHeight: stated(lengthFrom(FOOT, 24_000)).describe('from the ground to the eave'),
  openings: z.array(opening).max(500).default([]),
};

const short = <F extends string>(form: F) =>
  z.strictObject({ form: z.literal(form), ...building, ...heights });

const joined = z.strictObject({
  form: z.literal('joined'),
  main: z.strictObject({ form: z.enum(['gable', 'hip']), ...building }),
  wing: z.strictObject({
    form: z.enum(['gable', 'hip']),
    width: lengthFrom(FOOT).describe(
      'across the ridge of the wing; not wider than the main part is across its own',
    ),
    length: lengthFrom(FOOT).describe('how far the wing stands out from the wall of the main part'),
    from: offsetText(240_000).describe('from the left end wall of the main part to the wing; 0 makes an L'),
  }),
  ...heights,
});

const planes = z.strictObject({
  form: z.literal('planes'),
  ...heights,
  highestPoint: stated(lengthFrom(FOOT, 24_000))
    .optional()
    .describe('height of the highest roof point above the ground'),
  planes: z
    .array(
      z.strictObject({
        id: planId,
        outline,
        edges: z.array(z.enum(edgeTags)).min(3).describe('one tag for each side, from corner 1 to 2 onward'),
        slope: slopeText,
        windShape: z.enum(windShapes).optional(),
        overhang: overhang.optional(),
      }),
    )
    .min(1)
    .max(200),
});

export const roofInput = z.discriminatedUnion('form', [
  short('monoslope'),
  short('gable'),
  short('hip'),
  joined,
  planes,
]);
export type RoofInput = z.output<typeof roofInput>;
