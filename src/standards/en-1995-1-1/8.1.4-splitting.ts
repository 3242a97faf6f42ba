/** EN 1995-1-1:2004+A1:2008 8.1.4 (8.4): softwood split by a force at an angle to the grain, other than punched plates. */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';

const cites = 'EN 1995-1-1:2004+A1:2008 8.1.4 (8.4)';
const F90 = equation({
  clause: cites,
  gives: 'F90Rk',
  unit: 'N',
  from: { b: 'mm', h: 'mm', he: 'mm' },
  is: '14 * b * sqrt(he / (1 - he / h))',
  fitted: true,
});

/** Characteristic splitting resistance. */
export const splitting = clause({
  id: 'en-1995-1-1/8.1.4-splitting',
  title: 'splitting resistance across the grain, characteristic',
  cites,
  inputs: {
    b: needs('mm', 'member thickness', { above: 0 }),
    h: needs('mm', 'member depth', { above: 0 }),
    he: needs('mm', 'loaded edge distance to the farthest fastener', { above: 0 }),
  },
  gives: { symbol: 'F90Rk', unit: 'N' },
  compute: (values, trace) =>
    values.he < values.h
      ? F90(values, trace)
      : refuse(cites, 'he', values.he, `below the depth, ${values.h} mm`),
});
