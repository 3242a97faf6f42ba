import type { WoodEdition } from '../nds-common/wood-edition.ts';
import { clausesOfNds2024 } from './clauses.ts';

/** National Design Specification for Wood Construction, 2024 edition, as the engine uses it. */
export const nds2024: WoodEdition = { name: 'NDS 2024', ...clausesOfNds2024 };
