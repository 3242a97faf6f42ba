/**
 * EN 1993-1-3 Tables 8.1 to 8.3, range of validity: least end distance e1, edge distance e2 and spacing p of screws,
 * blind rivets and cartridge pins. Screws e1, p 3 d, e2 1.5 d, 3.0 to 8.0 mm (published, ENV page); rivets e1, e2 1.5 d,
 * p 3 d, 2.6 to 6.4 mm (recalled); pins 4.5 d all round (e1 published, the rest recalled), 3.7 to 6.0 mm (recalled).
 */
import { type Millimetre, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Outcome, refuse } from '../../trace/refusal.ts';
import { taken } from '../../trace/step.ts';

const rows = {
  'self-tapping screw': {
    cites: 'EN 1993-1-3:2006 Table 8.2',
    d: [3, 8],
    end: 3,
    edge: 1.5,
    spacing: 3,
    origin: 'published',
  },
  'blind rivet': {
    cites: 'EN 1993-1-3:2006 Table 8.1',
    d: [2.6, 6.4],
    end: 1.5,
    edge: 1.5,
    spacing: 3,
    origin: 'recalled',
  },
  'cartridge pin': {
    cites: 'EN 1993-1-3:2006 Table 8.3',
    d: [3.7, 6],
    end: 4.5,
    edge: 4.5,
    spacing: 4.5,
    origin: 'end published, rest recalled',
  },
} as const;

const least = equation({
  clause: 'EN 1993-1-3:2006 Tables 8.1 to 8.3',
  gives: 'emin',
  unit: 'mm',
  from: { k: '1', d: 'mm' },
  is: 'k * d',
});

export const leastDistance = clause({
  id: 'en-1993-1-3/t8-spacing',
  title: 'least end distance, edge distance or spacing of fasteners',
  cites: 'EN 1993-1-3:2006 Tables 8.1 to 8.3',
  inputs: {
    fastener: oneOf(['self-tapping screw', 'blind rivet', 'cartridge pin'], 'kind of fastener'),
    of: oneOf(['end', 'edge', 'spacing'], 'end: in the line of force; edge: across it'),
    d: needs('mm', 'nominal diameter', { above: 0 }),
  },
  gives: { symbol: 'emin', unit: 'mm' },
  compute: ({ fastener, of, d }, trace): Outcome<Millimetre> => {
    const row = rows[fastener];
    const [from, to] = row.d;
    if (d < from || d > to) return refuse(row.cites, 'd', d, `${from} to ${to} mm`);
    const because = `${fastener}, ${of}; ${row.origin}`;
    const k = taken(trace, { clause: row.cites, symbol: 'k', unit: '1', because }, ratio(row[of]));
    return least({ k, d }, trace);
  },
});
