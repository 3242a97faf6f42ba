/** The verdict of one check, and what stands behind it. */
import type { Trace } from '../trace/step.ts';

export const verdicts = ['holds', 'falls short', 'unproven'] as const;
export type Verdict = (typeof verdicts)[number];

/** Where a capacity comes from, best first. */
export const evidences = [
  'own test',
  'published test',
  'equation of a standard',
  'common practice',
  'assumed',
] as const;
export type Evidence = (typeof evidences)[number];

export const linkNames = [
  'panel system',
  'clip',
  'pull-over',
  'screw in tension',
  'pull-out',
  'withdrawal',
  'rivet in tension',
  'deck to frame',
  'insulation',
  'fit',
  'metals',
  'edition',
] as const;
export type LinkName = (typeof linkNames)[number];

/** What one link can carry, at the level of the job's method, before anybody asks how much it must. */
export interface Capacity {
  readonly link: LinkName;
  /** What the load on the link is: of one fastener, of the whole place, the uplift on the roof, or the snow on it. */
  readonly of: 'fastener' | 'place' | 'pressure' | 'snow';
  readonly unit: 'lbf' | 'psf';
  /** Area of roof the link's pressure is averaged over, where it is not the area of the place. */
  readonly area_ft2?: number;
  /** Nothing when it cannot be said; then `because` says why. */
  readonly value: number | undefined;
  readonly evidence: Evidence;
  /** Document and clause, or the report. */
  readonly cites: string;
  readonly because?: string;
  /** Remarks a reader must see beside the number. */
  readonly remarks: readonly string[];
  readonly trace?: Trace;
}

/** One link checked. */
export interface LinkCheck {
  readonly capacity: Capacity;
  readonly demand: number | undefined;
  readonly ratio: number | undefined;
  readonly verdict: Verdict;
}

export function check(capacity: Capacity, demand: number | undefined): LinkCheck {
  if (capacity.value === undefined || demand === undefined)
    return { capacity, demand, ratio: undefined, verdict: 'unproven' };
  const ratio = demand <= 0 ? 0 : demand / capacity.value;
  return { capacity, demand, ratio, verdict: ratio <= 1 ? 'holds' : 'falls short' };
}

/** An item a person insists on although it does not fit its build-up: it falls short, whatever it could carry. */
export function misfit(because: string): LinkCheck {
  const capacity: Capacity = {
    link: 'fit',
    of: 'fastener',
    unit: 'lbf',
    value: undefined,
    evidence: 'common practice',
    cites: 'the build-up',
    because,
    remarks: [],
  };
  return { capacity, demand: undefined, ratio: undefined, verdict: 'falls short' };
}

/** A question about an item that no strength answers, still open. */
export function openQuestion(link: 'fit' | 'metals' | 'edition', because: string): LinkCheck {
  return { ...misfit(because), capacity: { ...misfit(because).capacity, link }, verdict: 'unproven' };
}

/** The worst of several: falling short before unproven before holding. No check at all proves nothing. */
export function worst(list: readonly Verdict[]): Verdict {
  if (list.includes('falls short')) return 'falls short';
  return list.length === 0 || list.includes('unproven') ? 'unproven' : 'holds';
}
