/**
 * AISI S100-16 w/S3-22 J4.4.1: one screw pulling out of the sheet that does not touch its head. The supplement
 * multiplies the older strength by 1.63 (α tc)^0.18, α = 1 for inches: 1.00 at 0.0662 in, less in thinner sheet.
 * Origin: a public reproduction of chapter J, and the values of AISI D110-16 (306 lb). Own factors: see j4-factors.
 */
import { clause } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { pullOutInputs } from '../aisi-s100-common/screw-edition.ts';
import type { Nominal } from './j4-edition.ts';

const cites = 'AISI S100-16 w/S3-22 J4.4.1';

/** Fitted to tests: tc in inches gives a bare number. */
const thickness = equation({
  clause: cites,
  gives: 'kt',
  unit: '1',
  from: { tc: 'in' },
  is: '1.63 * tc ^ 0.18',
  fitted: true,
});

/** Eq. J4.4.1-1 as revised. */
const Pnot = equation({
  clause: cites,
  gives: 'Pnot',
  unit: 'lbf',
  from: { tc: 'in', d: 'in', Fu2: 'psi', kt: '1' },
  is: '0.85 * tc * d * Fu2 * kt',
});

/** Nominal pull-out strength of one screw, before any safety or resistance factor. */
export const pullOut = clause({
  id: 'aisi-s100-16-s3-22/j4.4.1-pull-out',
  title: 'pull-out of one screw from sheet steel, nominal',
  cites,
  inputs: pullOutInputs,
  gives: { symbol: 'Pnot', unit: 'lbf' },
  compute: ({ tc, d, Fu2 }, trace) =>
    Pnot({ tc, d, Fu2, kt: thickness({ tc }, trace) }, trace) as Nominal<'pull-out'>,
});
