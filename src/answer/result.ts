/** The answer as a document: everything a program may want of it, in fixed units named in the fields. */
import * as z from 'zod';
import type { ConnectionChoice, ScheduleLine } from '../choose/schedule.ts';
import type { Answer } from './answer.ts';

export const RESULT_SCHEMA = 'deckbite/result/1';

const verdict = z.enum(['holds', 'falls short', 'unproven']);
const optionalNumber = z.number().nullable();

const linkSchema = z.strictObject({
  link: z.string(),
  verdict,
  demand: optionalNumber,
  capacity: optionalNumber,
  unit: z.enum(['lbf', 'psf']),
  ratio: optionalNumber,
  evidence: z.string(),
  cites: z.string(),
  because: z.string().nullable().describe('why it is unproven'),
});

const lineSchema = z.strictObject({
  zone: z.string(),
  spacing_in: z.number(),
  setBy: z.string(),
  holdsAt_in: optionalNumber.describe('a support spacing at which it would not fall short'),
  each: z.number(),
  place_ft2: z.number(),
  fastener_ft2: z.number(),
  pressure_psf: optionalNumber.describe('net uplift on the place, positive away from the roof'),
  fastenerLoad_lbf: optionalNumber,
  governing: z.string().nullable(),
  ratio: optionalNumber,
  verdict,
  fastenerVerdict: verdict,
  panelVerdict: verdict.nullable(),
  links: z.array(linkSchema),
});

export const resultSchema = z.strictObject({
  schema: z.literal(RESULT_SCHEMA),
  job: z.strictObject({ name: z.string(), reference: z.string(), revision: z.string() }),
  basis: z.strictObject({
    codeYear: z.string().nullable(),
    method: z.string(),
    wind: z.string(),
    steel: z.string(),
    wood: z.string(),
    aluminium: z.string(),
  }),
  shelf: z.strictObject({ name: z.string(), edition: z.number(), date: z.string(), currency: z.string() }),
  count: z.strictObject({ holds: z.number(), fallsShort: z.number(), unproven: z.number() }),
  inputs: z.array(
    z.strictObject({
      path: z.string(),
      standing: z.enum(['given', 'assumed', 'asked']),
      text: z.string(),
      because: z.string().optional(),
    }),
  ),
  zones: z.array(z.strictObject({ label: z.string(), planArea_ft2: z.number(), slopeArea_ft2: z.number() })),
  schedule: z.array(
    z.strictObject({
      connection: z.string(),
      item: z.string().nullable(),
      clip: z.string().nullable(),
      because: z.string(),
      loadRule: z.string(),
      prying: optionalNumber,
      lines: z.array(lineSchema),
      rejected: z.array(z.strictObject({ item: z.string(), rule: z.string(), because: z.string() })),
    }),
  ),
  takeoff: z.strictObject({
    currency: z.string(),
    total: z.number(),
    weight_lbf: z.number(),
    lines: z.array(
      z.strictObject({
        item: z.string(),
        designation: z.string(),
        kind: z.string(),
        colour: z.string().nullable(),
        count: z.number(),
        withWaste: z.number(),
        pack: z.number(),
        packs: z.number(),
        ordered: z.number(),
        unitPrice: z.number(),
        price: z.number(),
        weight_lbf: z.number(),
        uses: z.array(
          z.strictObject({
            connection: z.string(),
            count: z.number(),
            zones: z.array(z.strictObject({ zone: z.string(), count: z.number() })),
          }),
        ),
      }),
    ),
  }),
  layout: z.array(
    z.strictObject({
      connection: z.string(),
      plane: z.string(),
      count: z.number(),
      x_in: z.array(z.number()),
      y_in: z.array(z.number()),
      zone: z.array(z.number()),
      each: z.array(z.number()),
      line: z.array(z.number()),
    }),
  ),
  remarks: z.array(z.string()),
});
export type Result = z.infer<typeof resultSchema>;

const tenth = (value: number): number => Math.round(value * 1000) / 1000;

/** @param withLayout coordinates of every fastener: a large roof makes a large document */
export function resultOf(answer: Answer, withLayout: boolean): Result {
  const label = (zone: number): string => answer.field.zones[zone]?.label ?? '';
  const { name, reference, revision } = answer.job;
  const { codeYear, method, wind, steel, wood, aluminium } = answer.basis;
  return {
    schema: RESULT_SCHEMA,
    job: { name, reference, revision },
    basis: { codeYear: codeYear ?? null, method, wind, steel, wood, aluminium },
    shelf: answer.shelf,
    count: answer.count,
    inputs: answer.inputs.map((input) => ({ ...input })),
    zones: answer.field.zones.map(({ label: zone, planArea_ft2, slopeArea_ft2 }) => ({
      label: zone,
      planArea_ft2,
      slopeArea_ft2,
    })),
    schedule: answer.choices.map((choice) => scheduleOf(choice, label)),
    takeoff: {
      currency: answer.takeoff.currency,
      total: answer.takeoff.total,
      weight_lbf: answer.takeoff.weight_lbf,
      lines: answer.takeoff.lines.map(({ colour, uses, ...line }) => ({
        ...line,
        colour: colour ?? null,
        uses: uses.map((use) => ({
          connection: use.connection,
          count: use.count,
          zones: use.zones.map(({ zone, count }) => ({ zone: label(zone), count })),
        })),
      })),
    },
    layout: withLayout
      ? answer.layout.map((set) => ({
          connection: set.connection,
          plane: set.plane,
          count: set.count,
          x_in: [...set.x].map(tenth),
          y_in: [...set.y].map(tenth),
          zone: [...set.zone],
          each: [...set.each],
          line: [...set.line],
        }))
      : [],
    remarks: [...answer.remarks],
  };
}

function scheduleOf(choice: ConnectionChoice, label: (zone: number) => string): Result['schedule'][number] {
  return {
    connection: choice.connection.id,
    item: choice.item?.id ?? null,
    clip: choice.clip?.id ?? null,
    because: choice.because,
    loadRule: choice.connection.loadRule,
    prying: choice.prying ?? null,
    lines: choice.lines.map((line) => lineOf(line, label)),
    rejected: choice.rejected.map((one) => ({ ...one })),
  };
}

function lineOf(
  line: ScheduleLine,
  label: (zone: number) => string,
): Result['schedule'][number]['lines'][number] {
  return {
    zone: label(line.zone),
    spacing_in: line.spacing_in,
    setBy: line.setBy,
    holdsAt_in: line.holdsAt_in ?? null,
    each: line.each,
    place_ft2: line.place_ft2,
    fastener_ft2: line.fastener_ft2,
    pressure_psf: line.placePressure_psf ?? null,
    fastenerLoad_lbf: line.fastenerLoad_lbf ?? null,
    governing: line.checks[line.governing]?.capacity.link ?? null,
    ratio: line.ratio ?? null,
    verdict: line.verdict,
    fastenerVerdict: line.fastenerVerdict,
    panelVerdict: line.panelVerdict ?? null,
    links: line.checks.map(({ capacity, demand, ratio, verdict: held }) => ({
      link: capacity.link,
      verdict: held,
      demand: demand ?? null,
      capacity: capacity.value ?? null,
      unit: capacity.unit,
      ratio: ratio ?? null,
      evidence: capacity.evidence,
      cites: capacity.cites,
      because: capacity.because ?? null,
    })),
  };
}
