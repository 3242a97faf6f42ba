/**
 * AISI S100-16 w/S3-22 J4.5: shear and tension together. That these checks stand unchanged in the supplement is not
 * confirmed. Until it is, the sheet strengths that enter are the lower of the two editions: 0.90 for pull-over, and
 * for pull-out the thickness factor where it lowers the strength, never where it raises it.
 */
import { equation } from '../../trace/equation.ts';
import { makeShearAndPullOut, pullOutSymbols } from '../aisi-s100-common/shear-and-pull-out.ts';
import { makeShearAndPullOver, pullOverSymbols } from '../aisi-s100-common/shear-and-pull-over.ts';
import { makeShearAndTension } from '../aisi-s100-common/shear-and-tension.ts';
import { document } from './j4-edition.ts';

const remark =
  'not confirmed for this supplement: the check of S100-16 with the lower sheet strength of both editions';

export const shearAndPullOver = makeShearAndPullOver(
  document,
  equation({
    clause: 'AISI S100-16 w/S3-22 J4.5.1',
    gives: 'Pnov',
    unit: 'lbf',
    from: pullOverSymbols,
    is: 'share * 0.90 * t1 * dw * Fu1',
  }),
  remark,
);

export const shearAndPullOut = makeShearAndPullOut(
  document,
  equation({
    clause: 'AISI S100-16 w/S3-22 J4.5.2',
    gives: 'Pnot',
    unit: 'lbf',
    from: pullOutSymbols,
    is: '0.85 * tc * d * Fu2 * min(1, 1.63 * tc ^ 0.18)',
    fitted: true,
  }),
  remark,
);

export const shearAndTension = makeShearAndTension(document, 'recalled as unchanged in this supplement');
