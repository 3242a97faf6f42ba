/** AISI S100-16 w/S3-22 J4.4.3: tension of the screw itself, by its maker or by tests. Unchanged from S100-16. */
import { makeScrewTension } from '../aisi-s100-common/screw-strength.ts';
import { document, type Nominal } from './j4-edition.ts';

export const screwTension = makeScrewTension<Nominal<'screw tension'>>(document);
