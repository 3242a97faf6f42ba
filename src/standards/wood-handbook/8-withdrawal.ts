/**
 * Wood Handbook (FPL-GTR-282, public domain), chapter 8: average ULTIMATE withdrawal from side grain, in lb and in.
 * G is oven-dry weight over volume at 12 percent moisture, about 5 percent below the G of NDS for the same wood.
 * Never multiply by a load duration factor, never set against a demand without a factor: these are averages at
 * failure. Metric and inch coefficients agree by conversion to 0.1 percent.
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';

/** Printed coefficients: newtons and millimetres, pounds and inches. */
export const withdrawalCoefficients = [
  {
    equation: '8-1',
    fastener: 'smooth nail',
    metric: 54.12,
    inch: 7850,
    law: 'G^2.5 D L',
    origin: 'published',
  },
  {
    equation: '8-2a',
    fastener: 'annularly threaded nail',
    metric: 77.57,
    inch: 11_250,
    law: 'G^2 D L',
    origin: 'published',
  },
  { equation: '8-9', fastener: 'drift bolt', metric: 45.51, inch: 6600, law: 'G^2 D L', origin: 'published' },
  {
    equation: '8-10',
    fastener: 'wood screw',
    metric: 108.25,
    inch: 15_700,
    law: 'G^2 D L',
    origin: 'published',
  },
  {
    equation: '8-14',
    fastener: 'lag screw',
    metric: 125.4,
    inch: 8100,
    law: 'G^1.5 D^0.75 L',
    origin: 'published',
  },
] as const;

const limits = {
  G: needs('1', 'specific gravity, weight oven dry, volume at 12 percent moisture', { min: 0.29, max: 0.74 }),
  D: needs('in', 'shank diameter; of an annular nail the root of its thread', { above: 0, max: 1.25 }),
  L: needs('in', 'length that holds: of a threaded fastener its thread in the member', { above: 0 }),
};

function make(number: string, subject: string, title: string, is: string) {
  const cites = `Wood Handbook Eq. ${number}`;
  const p = equation({
    clause: cites,
    gives: 'p',
    unit: 'lbf',
    from: { G: '1', D: 'in', L: 'in' },
    is,
    fitted: true,
  });
  return clause({
    id: `wood-handbook/8-${subject}`,
    title: `${title}, average ultimate withdrawal`,
    cites,
    inputs: limits,
    gives: { symbol: 'p', unit: 'lbf' },
    compute: p,
  });
}

/** Eq. 8-1. */
export const smoothNailUltimate = make('8-1', 'smooth-nail', 'smooth nail', '7850 * G^2.5 * D * L');
/** Eq. 8-2a: the threaded part only. */
export const threadedNailUltimate = make(
  '8-2a',
  'threaded-nail',
  'annularly threaded nail',
  '11250 * G^2 * D * L',
);
/** Eq. 8-9. */
export const driftBoltUltimate = make('8-9', 'drift-bolt', 'drift bolt', '6600 * G^2 * D * L');
/** Eq. 8-10, with lead holes of 70 percent of the root in softwood and 90 percent in hardwood. */
export const woodScrewUltimate = make('8-10', 'wood-screw', 'wood screw', '15700 * G^2 * D * L');
/** Eq. 8-14. */
export const lagScrewUltimate = make('8-14', 'lag-screw', 'lag screw', '8100 * G^1.5 * D^0.75 * L');
