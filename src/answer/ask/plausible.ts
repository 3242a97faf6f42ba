/**
 * What each input of a job may plausibly be, so that an unknown one can be tried. Every range says where it comes
 * from. A range is a list: what lies between two of its values is not tried.
 */
import type { Job } from '../../job/job.ts';
import { coverRanges } from './plausible-cover.ts';
import type { PlausibleRange } from './plausible-range.ts';
import { siteRanges } from './plausible-site.ts';
import { supportRanges } from './plausible-support.ts';

export const plausibleRanges: readonly PlausibleRange[] = [...siteRanges, ...coverRanges, ...supportRanges];

/** The range of a field in a job, or nothing where none is shipped. */
export function rangeFor(path: string, job: Job): PlausibleRange | undefined {
  return plausibleRanges.find((range) => range.path === path && range.serves(job));
}
