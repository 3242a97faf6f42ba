/** The plausible values of one input of a job, with where they come from. */
import type { Job } from '../../job/job.ts';
import type { Shelf } from '../../shelf/shelf.ts';

/** One value: as shown to people, and as it is written into the job document. */
export interface PlausibleValue {
  readonly text: string;
  /** Nothing leaves the field out of the document. */
  readonly put: unknown;
}

export interface PlausibleRange {
  /** Path of the field in the job document. */
  readonly path: string;
  /** Jobs this range is for; several ranges of one path exclude each other. */
  readonly serves: (job: Job) => boolean;
  /** Whether leaving the field out of such a job leaves something open or taken for granted; never for a required field. */
  readonly mattersLeftOut?: (job: Job) => boolean;
  readonly values: (job: Job, shelf: Shelf) => readonly PlausibleValue[];
  /** Index of the value at which other unknowns are compared while this one is not known. */
  readonly usual: number;
  readonly source: string;
  readonly origin: 'published' | 'common practice' | 'shelf' | 'memory';
}
