/**
 * AISI S100-16 w/S3-22 J4.4.2: the sheet under the head pulled over head or washer, Pnov = 0.90 t1 d'w Fu1; half of
 * it where the pull comes on one side of the head. A LOWER BOUND: a second equation exists that was not seen, and the
 * condition that picks between them (ductility of the sheet, or the way it is pulled) is not confirmed. Research report
 * RP19-1 found no need to change the older 1.5. Origin: a public reproduction of chapter J.
 */
import { ratio } from '../../quantities/quantity.ts';
import { clause } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { note } from '../../trace/step.ts';
import { makePullOverDiameter, pullOverInputs, pullShare } from '../aisi-s100-common/pull-over-diameter.ts';
import { document, type Nominal } from './j4-edition.ts';

const cites = 'AISI S100-16 w/S3-22 J4.4.2';

/** Effective diameter d'w of head or washer. */
export const pullOverDiameter = makePullOverDiameter(document);

/** Eq. J4.4.2-1; the share is 1, or 0.5 for a pull on one side. */
const Pnov = equation({
  clause: cites,
  gives: 'Pnov',
  unit: 'lbf',
  from: { t1: 'in', dwe: 'in', Fu1: 'psi', share: '1' },
  is: 'share * 0.90 * t1 * dwe * Fu1',
});

/** Nominal pull-over strength at one screw, lower bound, before any safety or resistance factor. */
export const pullOver = clause({
  id: 'aisi-s100-16-s3-22/j4.4.2-pull-over',
  title: 'sheet pulled over the head or washer of one screw, nominal, lower bound',
  cites,
  inputs: pullOverInputs,
  gives: { symbol: 'Pnov', unit: 'lbf' },
  compute: ({ bearing, d, dh, t1, dw, tw, Fu1, pull }, trace) => {
    note(trace, cites, 'lower bound: the condition for the coefficient 0.90 is not confirmed');
    const washer = { ...(dw === undefined ? {} : { dw }), ...(tw === undefined ? {} : { tw }) };
    const dwe = pullOverDiameter({ bearing, d, dh, t1, ...washer }, trace);
    if (isRefusal(dwe)) return dwe;
    return Pnov({ t1, dwe, Fu1, share: ratio(pullShare[pull]) }, trace) as Nominal<'pull-over'>;
  },
});
