/** AISI S100-16 w/S3-22 J4.1, J4.2: least spacing 3 d, least edge and end distance 1.5 d. Unchanged from S100-16. */
import { makeSpacing } from '../aisi-s100-common/spacing.ts';
import { document } from './j4-edition.ts';

export const { minimumSpacing, minimumEdgeDistance, minimumEndDistance } = makeSpacing(document);
