/** AISI S100-16 A3.1: strengths of sheet steel to be used in design, by ductility. */
import { makeSheetStrength } from '../aisi-s100-common/sheet-strength.ts';
import { document } from './j4-edition.ts';

export const { effectiveTensileStrength, effectiveYieldStrength } = makeSheetStrength(document);
