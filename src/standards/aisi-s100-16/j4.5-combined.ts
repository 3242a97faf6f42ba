/** AISI S100-16 J4.5: shear and tension together, each check inside its own limits only. */
import { equation } from '../../trace/equation.ts';
import { makeShearAndPullOut, pullOutSymbols } from '../aisi-s100-common/shear-and-pull-out.ts';
import { makeShearAndPullOver, pullOverSymbols } from '../aisi-s100-common/shear-and-pull-over.ts';
import { makeShearAndTension } from '../aisi-s100-common/shear-and-tension.ts';
import { document } from './j4-edition.ts';

export const shearAndPullOver = makeShearAndPullOver(
  document,
  equation({
    clause: 'AISI S100-16 J4.5.1',
    gives: 'Pnov',
    unit: 'lbf',
    from: pullOverSymbols,
    is: 'share * 1.5 * t1 * dw * Fu1',
  }),
);

export const shearAndPullOut = makeShearAndPullOut(
  document,
  equation({
    clause: 'AISI S100-16 J4.5.2',
    gives: 'Pnot',
    unit: 'lbf',
    from: pullOutSymbols,
    is: '0.85 * tc * d * Fu2',
  }),
);

export const shearAndTension = makeShearAndTension(document);
