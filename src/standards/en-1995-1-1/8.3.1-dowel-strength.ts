/** EN 1995-1-1:2004+A1:2008 8.3.1 and 8.7.1: embedment strength and yield moment of nails and thin screws. */
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';

const cites = 'EN 1995-1-1:2004+A1:2008 8.3.1';
const make = (number: string, from: { d: 'mm'; ρk: 'kg/m³' }, is: string) =>
  equation({ clause: `${cites} (${number})`, gives: 'fh', unit: 'MPa', from, is, fitted: true });
const timber = { d: 'mm', ρk: 'kg/m³' } as const;
const driven = make('8.15', timber, '0.082 * ρk * d^-0.3');
const predrilled = make('8.16', timber, '0.082 * (1 - 0.01 * d) * ρk');
const plywood = make('8.20', timber, '0.11 * ρk * d^-0.3');
const board = equation({
  clause: `${cites} (8.22)`,
  gives: 'fh',
  unit: 'MPa',
  from: { d: 'mm', t: 'mm' },
  is: '65 * d^-0.7 * t^0.1',
  fitted: true,
});

/** Embedment strength. For a screw d is its effective diameter, 1.1 times the root; above 6 mm bolts' rules hold. */
export const embedment = clause({
  id: 'en-1995-1-1/8.3.1-embedment',
  title: 'embedment strength of a nail or thin screw, characteristic',
  cites,
  inputs: {
    material: oneOf(['timber', 'timber, predrilled', 'plywood', 'OSB'], 'what the dowel bears on'),
    d: needs('mm', 'diameter, of a screw the effective one', { above: 0, max: 8 }),
    ρk: needs('kg/m³', 'characteristic density', { above: 0, max: 1000 }),
    t: needs('mm', 'thickness of the panel', { above: 0 }),
  },
  gives: { symbol: 'fh', unit: 'MPa' },
  compute: ({ material, d, ρk, t }, trace) => {
    if (material === 'OSB') return board({ d, t }, trace);
    if (material === 'plywood') return plywood({ d, ρk }, trace);
    return (material === 'timber' ? driven : predrilled)({ d, ρk }, trace);
  },
});

const round = equation({
  clause: `${cites} (8.14)`,
  gives: 'My',
  unit: 'N·mm',
  from: { fu: 'MPa', d: 'mm' },
  is: '0.3 * fu * d^2.6',
  fitted: true,
});
const square = equation({
  clause: `${cites} (8.14)`,
  gives: 'My',
  unit: 'N·mm',
  from: { fu: 'MPa', d: 'mm' },
  is: '0.45 * fu * d^2.6',
  fitted: true,
});

/** Yield moment of a nail from wire of at least 600 MPa, or of a screw by its effective diameter. */
export const yieldMoment = clause({
  id: 'en-1995-1-1/8.3.1-yield-moment',
  title: 'yield moment of a nail or screw, characteristic',
  cites,
  inputs: {
    shape: oneOf(['round', 'square'], 'section'),
    fu: needs('MPa', 'tensile strength of the wire', { above: 0 }),
    d: needs('mm', 'diameter, of a screw the effective one', { above: 0, max: 30 }),
  },
  gives: { symbol: 'My', unit: 'N·mm' },
  compute: ({ shape, fu, d }, trace) => {
    if (fu < 600) return refuse(`${cites}.1(4)`, 'fu', fu, 'at least 600 MPa');
    return (shape === 'round' ? round : square)({ fu, d }, trace);
  },
});
