/**
 * Factors of screws in aluminium, the same in the 2010 and 2015 editions: Ω 3.0 (buildings), φ 0.50, for every limit
 * state. Recalled, not seen.
 */
import { type Lbf, type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal, type Outcome } from '../../trace/refusal.ts';
import { type Trace, taken } from '../../trace/step.ts';

/** An edition, as its folder is named and as it is cited. */
export interface Document {
  readonly id: string;
  readonly name: string;
}

export type LimitState = 'shear' | 'pull-out' | 'pull-over' | 'screw';

const methods = ['ASD', 'LRFD'] as const;
export type Method = (typeof methods)[number];

export const RECALLED = 'recalled, not seen in the manual';

/** Screws of the section; recalled. */
export const screwDiameter = { min: 0.164, max: 0.25 } as const;

export function makeFactor(document: Document) {
  const cites = `${document.name} J.5`;
  return clause({
    id: `${document.id}/factors`,
    title: 'safety factor (ASD) or resistance factor (LRFD) of a screw in aluminium',
    cites,
    inputs: { method: oneOf(methods, 'design method') },
    gives: { symbol: 'Ω or φ', unit: '1' },
    compute: ({ method }, trace): Ratio => {
      const symbol = method === 'ASD' ? 'Ω' : 'φ';
      const because = `${method}, building; ${RECALLED}`;
      return taken(trace, { clause: cites, symbol, unit: '1', because }, ratio(method === 'ASD' ? 3 : 0.5));
    },
  });
}

/** Nominal to available strength; the edition narrows it to its own nominal strengths. */
export function makeAvailable(document: Document, factor: ReturnType<typeof makeFactor>) {
  const at = { clause: `${document.name} J.5`, gives: 'Ra', unit: 'lbf' } as const;
  const allowable = equation({ ...at, from: { Rn: 'lbf', Ω: '1' }, is: 'Rn / Ω' });
  const factored = equation({ ...at, from: { Rn: 'lbf', φ: '1' }, is: 'φ * Rn' });
  return (Rn: Lbf, method: Method, trace?: Trace): Outcome<Lbf> => {
    const value = factor({ method }, trace);
    if (isRefusal(value)) return value;
    return method === 'ASD' ? allowable({ Rn, Ω: value }, trace) : factored({ Rn, φ: value }, trace);
  };
}
