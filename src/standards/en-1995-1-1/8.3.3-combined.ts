/** EN 1995-1-1:2004+A1:2008 8.3.3 and 8.7.3: axial and lateral load together, as the degree of use. */
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';

const cites = 'EN 1995-1-1:2004+A1:2008 8.3.3';
const from = { Fax: 'N', Rax: 'N', Fv: 'N', Rv: 'N' } as const;
const linear = equation({
  clause: `${cites} (8.27)`,
  gives: 'use',
  unit: '1',
  from,
  is: 'Fax / Rax + Fv / Rv',
});
const squares = equation({
  clause: `${cites} (8.28)`,
  gives: 'use',
  unit: '1',
  from,
  is: '(Fax / Rax)^2 + (Fv / Rv)^2',
});
const force = (means: string) => needs('N', means, { min: 0 });

/** Holds at or below 1. Smooth nails add straight, all other fasteners by squares. */
export const combinedUse = clause({
  id: 'en-1995-1-1/8.3.3-combined',
  title: 'use under axial and lateral load together',
  cites,
  inputs: {
    kind: oneOf(['smooth nail', 'other'], 'kind of fastener'),
    Fax: force('axial design load'),
    Rax: needs('N', 'axial design resistance', { above: 0 }),
    Fv: force('lateral design load'),
    Rv: needs('N', 'lateral design resistance', { above: 0 }),
  },
  gives: { symbol: 'use', unit: '1' },
  compute: ({ kind, ...values }, trace) => (kind === 'smooth nail' ? linear : squares)(values, trace),
});
