/**
 * AISI S100-16 J4.4.1: one screw pulling out of the sheet that does not touch its head.
 * The 2022 supplement multiplies by 1.63 tc^0.18: that is another document, see aisi-s100-16-s3-22.
 * Thread pitch does not enter. Origin of the equation: handbook and textbook reproductions of E4.4.1 / J4.4.1.
 */
import { clause } from '../../trace/clause.ts';
import { columnOf } from '../../trace/column.ts';
import { equation } from '../../trace/equation.ts';
import { pullOutInputs } from '../aisi-s100-common/screw-edition.ts';
import type { Nominal } from './j4-edition.ts';

const cites = 'AISI S100-16 J4.4.1';

/** Eq. J4.4.1-1. */
export const pullOutEquation = equation({
  clause: cites,
  gives: 'Pnot',
  unit: 'lbf',
  from: { tc: 'in', d: 'in', Fu2: 'psi' },
  is: '0.85 * tc * d * Fu2',
});

/** Nominal pull-out strength of one screw, before any safety or resistance factor. */
export const pullOut = clause({
  id: 'aisi-s100-16/j4.4.1-pull-out',
  title: 'pull-out of one screw from sheet steel, nominal',
  cites,
  inputs: pullOutInputs,
  gives: { symbol: 'Pnot', unit: 'lbf' },
  compute: (values, trace) => pullOutEquation(values, trace) as Nominal<'pull-out'>,
});

/** The same over columns of screws and sheets. */
export const pullOutColumn = () => columnOf(pullOutInputs, pullOutEquation);
