/**
 * J4.2, J4.3: least distances between screws and to edges, in diameters. Origin: published (handbook, textbook).
 */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { type Document, screwDiameter } from './screw-terms.ts';

const inputs = { d: needs('in', 'nominal screw diameter', screwDiameter) };

function least(document: Document, of: string, title: string, symbol: string, is: string) {
  const cites = `${document.name} J4.2`;
  const length = equation({ clause: cites, gives: symbol, unit: 'in', from: { d: 'in' }, is });
  return clause({
    id: `${document.id}/j4.2-spacing/${of}`,
    title,
    cites,
    inputs,
    gives: { symbol, unit: 'in' },
    compute: ({ d }, trace) => length({ d }, trace),
  });
}

export function makeSpacing(document: Document) {
  return {
    minimumSpacing: least(document, 'spacing', 'least distance between screw centres', 's', '3 * d'),
    minimumEdgeDistance: least(
      document,
      'edge',
      'least distance from screw centre to any edge',
      'emin',
      '1.5 * d',
    ),
    minimumEndDistance: least(
      document,
      'end',
      'least distance from screw centre to the end the force points at (then end tear-out is checked too)',
      'emin',
      '1.5 * d',
    ),
  };
}
