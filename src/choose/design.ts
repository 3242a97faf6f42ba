/** What is fixed before any item is chosen: the job, its basis, the place, the roof and the pressures on it. */
import type { Parts } from '../connections/build-ups.ts';
import type { Basis } from '../job/basis.ts';
import type { Job } from '../job/job.ts';
import type { LinkContext } from '../links/link-context.ts';
import type { Roof } from '../roof/roof.ts';
import type { Item } from '../shelf/item.ts';
import type { PressureField } from '../site/pressure-field.ts';

export interface Design {
  readonly job: Job;
  readonly basis: Basis;
  readonly roof: Roof;
  readonly field: PressureField;
  readonly items: readonly Item[];
  readonly parts: Parts;
  readonly links: LinkContext;
}
