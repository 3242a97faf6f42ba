/**
 * J4.4.2: effective pull-over diameter d'w. (a) a solid steel washer under a round, hex or hex washer head:
 * dh + 2 tw + t1, at most dw. (b) no washer of its own: dh, at most 3/4 in. (c) a domed washer: as (a), at most 3/4 in.
 * Formulas published; the 3/4 in caps and the washer thickness of 0.050 in over sheet thicker than 0.027 in, else
 * 0.024 in, are recalled (2012 edition on; the 2007 edition had 1/2, 5/8 and 0.050 in, published). Rubber gives no
 * strength: dw and tw are those of the metal disc. Countersunk heads are not covered.
 */
import { type Inch, inch } from '../../quantities/quantity.ts';
import { clause, mayNeed, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Outcome, refuse } from '../../trace/refusal.ts';
import { note, type Trace } from '../../trace/step.ts';
import { type Document, screwDiameter } from './screw-terms.ts';

const LEAST_BEARING_DIAMETER = inch(0.3125);
const CAP = 0.75;

export const bearings = ['head alone', 'solid washer', 'domed washer'] as const;
export type Bearing = (typeof bearings)[number];

export const pullOverDiameterInputs = {
  bearing: oneOf(bearings, 'what bears on the sheet; the head is round, pancake, hex or hex washer'),
  d: needs('in', 'nominal screw diameter', screwDiameter),
  dh: needs('in', 'diameter of the head or of the washer made in one with it', { above: 0 }),
  t1: needs('in', 'base metal thickness of the sheet under the head', { above: 0 }),
  dw: mayNeed('in', 'diameter of the metal of an independent washer', { above: 0 }),
  tw: mayNeed('in', 'thickness of the metal of an independent washer', { above: 0 }),
};

/** Least thickness of a washer that counts; recalled for sheet of 0.027 in and thinner. */
function leastWasherThickness(t1: number): number {
  return t1 > 0.027 ? 0.05 : 0.024;
}

export function makePullOverDiameter(document: Document) {
  const cites = `${document.name} J4.4.2`;
  const at = { clause: cites, gives: 'dwe', unit: 'in' } as const;
  const washer = { dh: 'in', tw: 'in', t1: 'in', dw: 'in' } as const;
  const byHead = equation({ ...at, from: { dh: 'in', cap: 'in' }, is: 'min(dh, cap)' });
  const bySolid = equation({ ...at, from: washer, is: 'min(dh + 2 * tw + t1, dw)' });
  const byDomed = equation({ ...at, from: { ...washer, cap: 'in' }, is: 'min(dh + 2 * tw + t1, dw, cap)' });
  const cap = inch(CAP);
  const capNote = (trace: Trace | undefined) =>
    note(trace, cites, `the cap of ${CAP} in is recalled (2012 edition on), not seen`);

  return clause({
    id: `${document.id}/j4.4.2-pull-over-diameter`,
    title: 'effective diameter of a head or washer in pull-over',
    cites,
    inputs: pullOverDiameterInputs,
    gives: { symbol: 'dwe', unit: 'in' },
    compute: ({ bearing, dh, t1, dw, tw }, trace): Outcome<Inch> => {
      if (bearing === 'head alone') {
        if (dh < LEAST_BEARING_DIAMETER)
          return refuse(cites, 'dh', dh, 'a head or washer of at least 5/16 (0.3125) in');
        capNote(trace);
        return byHead({ dh, cap }, trace);
      }
      if (dw === undefined)
        return refuse(cites, 'dw', dw, 'the diameter of the washer metal', 'missing-input');
      if (tw === undefined)
        return refuse(cites, 'tw', tw, 'the thickness of the washer metal', 'missing-input');
      if (dw < LEAST_BEARING_DIAMETER)
        return refuse(cites, 'dw', dw, 'a washer of at least 5/16 (0.3125) in');
      const least = leastWasherThickness(t1);
      if (tw < least)
        return refuse(
          cites,
          'tw',
          tw,
          `a washer of at least ${least} in on this sheet; else count the head alone`,
        );
      note(
        trace,
        cites,
        `washer metal of ${least} in counts on this sheet; the limit for thin sheet is recalled`,
      );
      if (bearing === 'solid washer') return bySolid({ dh, tw, t1, dw }, trace);
      capNote(trace);
      return byDomed({ dh, tw, t1, dw, cap }, trace);
    },
  });
}

/** How the sheet pulls on the head: all round, or on one side (clip leg, flange beside a rib, side lap, eave). */
export const pulls = ['all round', 'one side'] as const;

export const pullOverInputs = {
  ...pullOverDiameterInputs,
  Fu1: needs('psi', 'tensile strength of the sheet under the head, reduced for low ductility', { above: 0 }),
  pull: oneOf(pulls, 'a pull on one side of the head counts half'),
};

/** 50 % for a pull that is not uniform around the head. Origin: published (code text that repeats S100). */
export const pullShare = { 'all round': 1, 'one side': 0.5 } as const;
