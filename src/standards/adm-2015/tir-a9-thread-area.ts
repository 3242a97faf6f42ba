/**
 * AAMA TIR-A9-14 with its 2015 errata, Table 20.1: stripping area of an internal thread, one thread deep,
 * π DSmin [1/(2 N) + (DSmin - ENmax)/√3]. Published in the errata page. Times N it is Asn per inch of engagement.
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';

const cites = 'AAMA TIR-A9-14 (2015 errata) Table 20.1';
const area = equation({
  clause: cites,
  gives: 'TSAI',
  unit: 'in²',
  from: { DSmin: 'in', ENmax: 'in', N: '1/in' },
  is: '3.141592653589793 * DSmin * (1 / (2 * N) + (DSmin - ENmax) / sqrt(3))',
});

export const threadStrippingArea = clause({
  id: 'adm-2015/tir-a9-thread-area',
  title: 'stripping area of an internal thread, one thread deep',
  cites,
  inputs: {
    DSmin: needs('in', 'least major diameter of the screw', { above: 0 }),
    ENmax: needs('in', 'largest pitch diameter of the internal thread', { above: 0 }),
    N: needs('1/in', 'threads per inch', { above: 0 }),
  },
  gives: { symbol: 'TSAI', unit: 'in²' },
  compute: (values, trace) => area(values, trace),
});
