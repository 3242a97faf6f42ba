/** ADM 2010 J.5: what reads as in the 2015 edition, cited here to 2010. Recalled, not seen. */
import { makeSpacing } from '../adm-2015/j.5.1-spacing.ts';
import { makePullOutSpaced } from '../adm-2015/j.5.5.1-pull-out-spaced.ts';
import { makePullOutUNC } from '../adm-2015/j.5.5.1-pull-out-unc.ts';
import { makeScrewStrength } from '../adm-2015/j.5.6.3-screw-strength.ts';
import { makeShear } from '../adm-2015/j.5.6-shear.ts';
import { document, type Nominal } from './nominal.ts';

export const { minimumSpacing, minimumEdgeDistance } = makeSpacing(document);
export const pullOutSpaced = makePullOutSpaced<Nominal<'pull-out'>>(document);
export const pullOutUNC = makePullOutUNC<Nominal<'pull-out'>>(document);
export const shear = makeShear<Nominal<'shear'>>(document);
export const screwStrength = makeScrewStrength<Nominal<'screw'>>(document);
