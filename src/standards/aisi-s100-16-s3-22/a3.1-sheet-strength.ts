/** AISI S100-16 w/S3-22 A3.1: strengths of sheet steel to be used in design, by ductility. Unchanged from S100-16. */
import { makeSheetStrength } from '../aisi-s100-common/sheet-strength.ts';
import { document } from './j4-edition.ts';

export const { effectiveTensileStrength, effectiveYieldStrength } = makeSheetStrength(document);
