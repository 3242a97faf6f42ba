/** AISI S100-16 w/S3-22 J4.3.1 and J6.1: tear-out towards an end; recalled, not seen. Unchanged from S100-16. */
import { makeEndTearOut } from '../aisi-s100-common/end-tear-out.ts';
import { document, type Nominal } from './j4-edition.ts';

export const endTearOut = makeEndTearOut<Nominal<'end tear-out'>>(document);
