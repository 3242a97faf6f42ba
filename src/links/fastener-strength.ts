/** The fastener's own strength in tension, and a clip's tested uplift. */
import { inch, lbf, ratio } from '../quantities/quantity.ts';
import type { Clip, Rivet, Screw } from '../shelf/item.ts';
import { equation } from '../trace/equation.ts';
import { isRefusal, refusalText } from '../trace/refusal.ts';
import type { Trace } from '../trace/step.ts';
import type { LinkContext } from './link-context.ts';
import { LRFD_OVER_ASD } from './own-test.ts';
import type { Capacity } from './verdict.ts';

export function screwTension(screw: Screw, { steel, method }: LinkContext, trace?: Trace): Capacity {
  const base = {
    link: 'screw in tension',
    of: 'fastener',
    unit: 'lbf',
    remarks: [],
    ...(trace ? { trace } : {}),
  } as const;
  if (!screw.tension)
    return {
      ...base,
      value: undefined,
      evidence: 'assumed',
      cites: 'no evidence',
      because: `the tensile strength of ${screw.id} itself is not on the shelf`,
    };
  const value = steel.screwTension(
    { Pnts: lbf(screw.tension.value), d: inch(screw.diameter) },
    method,
    trace,
  );
  if (isRefusal(value))
    return {
      ...base,
      value: undefined,
      evidence: 'assumed',
      cites: value.clause,
      because: refusalText(value),
    };
  return {
    ...base,
    value,
    evidence: 'published test',
    cites: `${screw.tension.source}; ${steel.name} J4.4.3`,
  };
}

/** Rivets have no section in AISI S100; the screw's factor of 3 is kept for their own tension (own rule). */
const RIVET_SAFETY = 3;

const allowable = equation({
  clause: 'tested strength',
  gives: 'Pa',
  unit: 'lbf',
  from: { P: 'lbf', n: '1', Ω: '1' },
  is: 'n * P / Ω',
});

export function rivetTension(rivet: Rivet, { method }: LinkContext, trace?: Trace): Capacity {
  const base = {
    link: 'rivet in tension',
    of: 'fastener',
    unit: 'lbf',
    ...(trace ? { trace } : {}),
  } as const;
  if (!rivet.tension)
    return {
      ...base,
      value: undefined,
      evidence: 'assumed',
      cites: 'no evidence',
      because: `the tensile strength of ${rivet.id} is not on the shelf`,
      remarks: [],
    };
  const value = allowable(
    { P: lbf(rivet.tension.value), n: factorOf(method), Ω: ratio(RIVET_SAFETY) },
    trace,
  );
  return {
    ...base,
    value,
    evidence: 'published test',
    cites: `${rivet.tension.source}, safety factor ${RIVET_SAFETY}`,
    remarks: [
      'Blind rivets are not covered by AISI S100; their own strength is taken with the safety factor of screws (own rule).',
    ],
  };
}

export function clipUplift(clip: Clip | undefined, { method }: LinkContext, trace?: Trace): Capacity {
  const base = { link: 'clip', of: 'place', unit: 'lbf', remarks: [], ...(trace ? { trace } : {}) } as const;
  const unproven = (because: string): Capacity => ({
    ...base,
    value: undefined,
    evidence: 'assumed',
    cites: 'no evidence',
    because,
  });
  if (!clip) return unproven('no clip is chosen, so nothing of it is known');
  if (!clip.uplift || clip.upliftSafetyFactor === undefined)
    return unproven(`clip ${clip.id} has no tested uplift on the shelf`);
  const value = allowable(
    { P: lbf(clip.uplift.value), n: factorOf(method), Ω: ratio(clip.upliftSafetyFactor) },
    trace,
  );
  return {
    ...base,
    value,
    evidence: 'own test',
    cites: `${clip.uplift.source}, safety factor ${clip.upliftSafetyFactor}`,
  };
}

const factorOf = (method: 'ASD' | 'LRFD') => ratio(method === 'LRFD' ? LRFD_OVER_ASD : 1);
