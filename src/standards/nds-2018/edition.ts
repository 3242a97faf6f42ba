import type { WoodEdition } from '../nds-common/wood-edition.ts';
import { clausesOfNds2018 } from './clauses.ts';

/** National Design Specification for Wood Construction, 2018 edition, as the engine uses it. */
export const nds2018: WoodEdition = { name: 'NDS 2018', ...clausesOfNds2018 };
