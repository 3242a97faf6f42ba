/**
 * Technical note E830 of the plywood association: average ULTIMATE loads of screws in plywood, from tests. No design
 * values: divide by about 5 (an office rule, from memory) or use the wood specification. Tables 1 and 2 published,
 * read whole; Table 3 recalled, every entry within 4 lb of 2895 D L. Table 4 was not found. In Table 3 the point
 * came 1/4 in through the back: a screw that does not come through holds less.
 */
import { lbf } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { note, taken } from '../../trace/step.ts';

/** Table 1: 3/16 in steel plate on C-D plywood, Group 1. Columns No. 8, 10, 12; No. 10 is the source's own estimate. */
export const lateralUnderSteel = [
  { fastener: 'wood screw', thread_in: 0.5, 8: 415, 10: 500, 12: 590, origin: 'published' },
  { fastener: 'sheet metal screw', thread_in: 0.5, 8: 465, 10: 565, 12: 670, origin: 'published' },
  { fastener: 'sheet metal screw', thread_in: 0.625, 8: 500, 10: 600, 12: 705, origin: 'published' },
  { fastener: 'sheet metal screw', thread_in: 0.75, 8: 590, 10: 655, 12: 715, origin: 'published' },
] as const;

const aluminium = '0.080 in aluminum';
const steel = '0.078 in galvanized steel';
/** Table 2: A-C plywood over metal framing, sheet metal screws; columns as named. */
export const lateralOverMetal = [
  {
    framing: aluminium,
    plywood_in: 0.25,
    '8': 330,
    '10': 360,
    '12': 390,
    '14': 410,
    '1/4-20': 590,
    origin: 'published',
  },
  {
    framing: aluminium,
    plywood_in: 0.5,
    '8': 630,
    '10': 850,
    '12': 860,
    '14': 920,
    '1/4-20': 970,
    origin: 'published',
  },
  {
    framing: aluminium,
    plywood_in: 0.75,
    '8': 910,
    '10': 930,
    '12': 1250,
    '14': 1330,
    '1/4-20': 1440,
    origin: 'published',
  },
  {
    framing: steel,
    plywood_in: 0.25,
    '8': 360,
    '10': 380,
    '12': 400,
    '14': 410,
    '1/4-20': 650,
    origin: 'published',
  },
  {
    framing: steel,
    plywood_in: 0.5,
    '8': 700,
    '10': 890,
    '12': 900,
    '14': 920,
    '1/4-20': 970,
    origin: 'published',
  },
  {
    framing: steel,
    plywood_in: 0.75,
    '8': 700,
    '10': 950,
    '12': 1300,
    '14': 1390,
    '1/4-20': 1500,
    origin: 'published',
  },
] as const;

const screws = ['8', '10', '12', '14', '1/4-20'] as const;
const framings = [aluminium, steel] as const;

/** Table 2, average ultimate lateral load; thicknesses between rows are refused. */
export const plywoodOverMetalLateral = clause({
  id: 'apa-e830/table-2-lateral',
  title: 'sheet metal screw through plywood into metal framing, average ultimate lateral load',
  cites: 'APA E830 Table 2',
  inputs: {
    framing: oneOf(framings, 'metal under the plywood'),
    screw: oneOf(screws, 'screw number, or 1/4-20 self-tapping'),
    t: needs('in', 'plywood thickness: 1/4, 1/2 or 3/4', { min: 0.25, max: 0.75 }),
  },
  gives: { symbol: 'P', unit: 'lbf' },
  compute: ({ framing, screw, t }, trace) => {
    const cites = 'APA E830 Table 2';
    const row = lateralOverMetal.find((each) => each.framing === framing && each.plywood_in === t);
    if (!row) return refuse(cites, 't', t, '0.25, 0.5 or 0.75 in as tested');
    return taken(
      trace,
      { clause: cites, symbol: 'P', unit: 'lbf', because: 'average of tests at failure' },
      lbf(row[screw]),
    );
  },
});

const table3 = 'APA E830 Table 3';
const line = equation({
  clause: table3,
  gives: 'P',
  unit: 'lbf',
  from: { D: 'in', L: 'in' },
  is: '2895 * D * L',
  fitted: true,
});

/** Line through Table 3, wood screws withdrawn from plywood. */
export const plywoodScrewUltimate = clause({
  id: 'apa-e830/table-3-withdrawal',
  title: 'wood screw in plywood, average ultimate withdrawal',
  cites: table3,
  inputs: {
    D: needs('in', 'nominal diameter, No. 6 to No. 16', { min: 0.138, max: 0.268 }),
    L: needs('in', 'thread in the plywood', { min: 0.375, max: 2.25 }),
  },
  gives: { symbol: 'P', unit: 'lbf' },
  compute: (values, trace) => {
    note(
      trace,
      table3,
      'The table is recalled; this line meets every entry within 4 lb. Average at failure, no design value.',
    );
    return line(values, trace);
  },
});

/** Nails held by plywood or OSB alone: equivalent specific gravity of the association's panel note. Published. */
export const nailInPanelGravity = {
  smoothOrScrewShank: 0.4,
  ringShank: 0.7,
  wetFactor: 0.75,
  origin: 'published',
} as const;
