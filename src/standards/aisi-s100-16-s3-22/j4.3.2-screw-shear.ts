/** AISI S100-16 w/S3-22 J4.3.2: shear of the screw itself, by its maker or by tests; and the factor when tested. Unchanged from S100-16. */
import { makeScrewShear, makeScrewTestFactor } from '../aisi-s100-common/screw-strength.ts';
import { document, type Nominal } from './j4-edition.ts';

export const screwShear = makeScrewShear<Nominal<'screw shear'>>(document);
export const screwTestFactor = makeScrewTestFactor(document);
