/** What a fastener meets at a connection: the joint, the place, and what else was decided. */

import type { Parts } from '../connections/build-ups.ts';
import type { Connection } from '../connections/connection.ts';
import type { Job } from '../job/job.ts';
import { surroundingsOf } from '../links/link-context.ts';
import type { Surroundings } from '../links/metal-rules.ts';
import type { Clip } from '../shelf/item.ts';

export interface Setting {
  readonly connection: Connection;
  readonly surroundings: Surroundings;
  /** No fastener point may show under the roof. */
  readonly inView: boolean;
  readonly clip: Clip | undefined;
  readonly colour: string | undefined;
}

export function settingFor(connection: Connection, job: Job, { clip }: Parts): Setting {
  return {
    connection,
    surroundings: surroundingsOf(job),
    inView: job.place.below === 'in view',
    clip,
    colour: job.panel.colour,
  };
}

export const inches = (value: number): string => `${Number(value.toFixed(3))} in`;
