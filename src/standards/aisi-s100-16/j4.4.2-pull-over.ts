/**
 * AISI S100-16 J4.4.2: the sheet under the head pulled over head or washer, Pnov = 1.5 t1 d'w Fu1; half of it where
 * the pull comes on one side of the head. The 2022 supplement has another coefficient: see aisi-s100-16-s3-22.
 * Origin of the equation: handbook and textbook reproductions of E4.4.2 / J4.4.2.
 */
import { ratio } from '../../quantities/quantity.ts';
import { clause } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { makePullOverDiameter, pullOverInputs, pullShare } from '../aisi-s100-common/pull-over-diameter.ts';
import { document, type Nominal } from './j4-edition.ts';

const cites = 'AISI S100-16 J4.4.2';

/** Effective diameter d'w of head or washer. */
export const pullOverDiameter = makePullOverDiameter(document);

/** Eq. J4.4.2-1; the share is 1, or 0.5 for a pull on one side. */
export const pullOverEquation = equation({
  clause: cites,
  gives: 'Pnov',
  unit: 'lbf',
  from: { t1: 'in', dwe: 'in', Fu1: 'psi', share: '1' },
  is: 'share * 1.5 * t1 * dwe * Fu1',
});

/** Nominal pull-over strength at one screw, before any safety or resistance factor. */
export const pullOver = clause({
  id: 'aisi-s100-16/j4.4.2-pull-over',
  title: 'sheet pulled over the head or washer of one screw, nominal',
  cites,
  inputs: pullOverInputs,
  gives: { symbol: 'Pnov', unit: 'lbf' },
  compute: ({ bearing, d, dh, t1, dw, tw, Fu1, pull }, trace) => {
    const washer = { ...(dw === undefined ? {} : { dw }), ...(tw === undefined ? {} : { tw }) };
    const dwe = pullOverDiameter({ bearing, d, dh, t1, ...washer }, trace);
    if (isRefusal(dwe)) return dwe;
    return pullOverEquation({ t1, dwe, Fu1, share: ratio(pullShare[pull]) }, trace) as Nominal<'pull-over'>;
  },
});
