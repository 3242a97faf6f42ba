/** Every clause of the Aluminum Design Manual 2015 that is written as a function. */
import type { AnyClause } from '../../trace/clause.ts';
import { factor } from './available.ts';
import { minimumEdgeDistance, minimumSpacing } from './j.5.1-spacing.ts';
import { pullOutSpaced } from './j.5.5.1-pull-out-spaced.ts';
import { pullOutUNC } from './j.5.5.1-pull-out-unc.ts';
import { pullOver, pullOverCountersunk } from './j.5.5.2-pull-over.ts';
import { screwStrength } from './j.5.6.3-screw-strength.ts';
import { shear } from './j.5.6-shear.ts';

import { threadStrippingArea } from './tir-a9-thread-area.ts';

export const adm2015Clauses: readonly AnyClause[] = [
  factor,
  minimumSpacing,
  minimumEdgeDistance,
  pullOutSpaced,
  pullOutUNC,
  threadStrippingArea,
  pullOver,
  pullOverCountersunk,
  shear,
  screwStrength,
];
