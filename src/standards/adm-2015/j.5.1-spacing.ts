/** ADM J.5: least spacing 2.5 D, least edge distance 1.5 D; recalled, not seen. */
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { note } from '../../trace/step.ts';
import { type Document, RECALLED, screwDiameter } from './factors.ts';
import { document } from './nominal.ts';

const inputs = { D: needs('in', 'nominal screw diameter', screwDiameter) };

function least(of: Document, file: string, title: string, symbol: string, is: string) {
  const cites = `${of.name} J.5`;
  const length = equation({ clause: cites, gives: symbol, unit: 'in', from: { D: 'in' }, is });
  return clause({
    id: `${of.id}/j.5.1-spacing/${file}`,
    title,
    cites,
    inputs,
    gives: { symbol, unit: 'in' },
    compute: ({ D }, trace) => {
      note(trace, cites, RECALLED);
      return length({ D }, trace);
    },
  });
}

/** Least distances of screws in aluminium, cited to the edition given. */
export function makeSpacing(of: Document) {
  return {
    minimumSpacing: least(of, 'spacing', 'least distance between screws in aluminium', 's', '2.5 * D'),
    minimumEdgeDistance: least(
      of,
      'edge',
      'least distance from a screw to an edge of aluminium',
      'e',
      '1.5 * D',
    ),
  };
}

export const { minimumSpacing, minimumEdgeDistance } = makeSpacing(document);
