/** AISI S100-16 w/S3-22 J4.3.1: shear of one screw by tilting and bearing of the sheets. Unchanged from S100-16. */
import { makeTiltingAndBearing } from '../aisi-s100-common/tilting-and-bearing.ts';
import { document, type Nominal } from './j4-edition.ts';

export const tiltingAndBearing = makeTiltingAndBearing<Nominal<'tilting and bearing'>>(document);
