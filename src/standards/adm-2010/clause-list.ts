/** Every clause of the Aluminum Design Manual 2010 that is written as a function. */
import type { AnyClause } from '../../trace/clause.ts';
import { factor } from './available.ts';
import { pullOver } from './j.5.5.2-pull-over.ts';
import {
  minimumEdgeDistance,
  minimumSpacing,
  pullOutSpaced,
  pullOutUNC,
  screwStrength,
  shear,
} from './j.5-same-as-2015.ts';

export const adm2010Clauses: readonly AnyClause[] = [
  factor,
  minimumSpacing,
  minimumEdgeDistance,
  pullOutSpaced,
  pullOutUNC,
  pullOver,
  shear,
  screwStrength,
];
