/** Safety and resistance factors of chapter J4 as a table per edition, and the step from nominal to available. */
import type { Lbf, Ratio } from '../../quantities/quantity.ts';
import { ratio } from '../../quantities/quantity.ts';
import { clause, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import type { Outcome } from '../../trace/refusal.ts';
import { type Trace, taken } from '../../trace/step.ts';
import {
  andThen,
  type Document,
  type LimitState,
  limitStates,
  type Method,
  methodInput,
} from './screw-terms.ts';

export interface FactorRow {
  readonly ASD: number;
  readonly LRFD: number;
  readonly LSD: number;
  /** Where the three numbers were seen, and how well. */
  readonly source: string;
}

export type FactorTable = Readonly<Record<LimitState, FactorRow>>;

const inputs = { limitState: oneOf(limitStates, 'limit state of the screw or sheet'), method: methodInput };

/** The clause that looks a factor up: Ω for ASD, φ for LRFD and LSD. */
export function makeFactor(document: Document, table: FactorTable) {
  const cites = `${document.name} J4`;
  return clause({
    id: `${document.id}/j4-factors`,
    title: 'safety factor (ASD) or resistance factor (LRFD, LSD) of a screw connection',
    cites,
    inputs,
    gives: { symbol: 'Ω or φ', unit: '1' },
    compute: ({ limitState, method }, trace): Ratio => {
      const row = table[limitState];
      const because = `${limitState}, ${method}; ${row.source}`;
      return taken(
        trace,
        { clause: cites, symbol: method === 'ASD' ? 'Ω' : 'φ', unit: '1', because },
        ratio(row[method]),
      );
    },
  });
}

export type FactorClause = ReturnType<typeof makeFactor>;

/**
 * Nominal strength to available strength. The edition gives it its own type of nominal strength, so that only
 * strengths of that edition pass.
 */
export function makeAvailable(document: Document, factor: FactorClause) {
  const cites = `${document.name} B3.2`;
  const allowable = equation({
    clause: cites,
    gives: 'Ra',
    unit: 'lbf',
    from: { Rn: 'lbf', Ω: '1' },
    is: 'Rn / Ω',
  });
  const factored = equation({
    clause: cites,
    gives: 'Ra',
    unit: 'lbf',
    from: { Rn: 'lbf', φ: '1' },
    is: 'φ * Rn',
  });
  return (limitState: LimitState, Rn: Lbf, method: Method, trace?: Trace): Outcome<Lbf> =>
    andThen(factor({ limitState, method }, trace), (value) =>
      method === 'ASD' ? allowable({ Rn, Ω: value }, trace) : factored({ Rn, φ: value }, trace),
    );
}
