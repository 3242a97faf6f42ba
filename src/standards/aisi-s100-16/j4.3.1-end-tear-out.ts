/** AISI S100-16 J4.3.1 and J6.1: tear-out towards an end; recalled, not seen. */
import { makeEndTearOut } from '../aisi-s100-common/end-tear-out.ts';
import { document, type Nominal } from './j4-edition.ts';

export const endTearOut = makeEndTearOut<Nominal<'end tear-out'>>(document);
