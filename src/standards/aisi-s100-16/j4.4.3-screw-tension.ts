/** AISI S100-16 J4.4.3: tension of the screw itself, by its maker or by tests. */
import { makeScrewTension } from '../aisi-s100-common/screw-strength.ts';
import { document, type Nominal } from './j4-edition.ts';

export const screwTension = makeScrewTension<Nominal<'screw tension'>>(document);
