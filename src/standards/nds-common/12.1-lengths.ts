/**
 * Lengths in a wood connection: least penetration (12.1.4.6 lag, 12.1.5.6 wood screw, 12.1.6.4 nail), reduction of
 * tabulated values (footnote 3 of Tables 12J to 12P), bearing length, thread length (Tables L2, L3) and the thread
 * that lies in the holding member. Penetration of a lag is without its tip; wood screws and nails keep theirs.
 * Text quoted from the 2018 edition.
 */
import { inch } from '../../quantities/quantity.ts';
import { clause, mayNeed, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { taken } from '../../trace/step.ts';
import { citation, type NdsEdition } from './edition.ts';

const rules = {
  'lag screw': { number: '12.1.4.6', least: 4 },
  'wood screw': { number: '12.1.5.6', least: 6 },
  nail: { number: '12.1.6.4', least: 6 },
} as const;
export const lateralFasteners = Object.keys(rules) as readonly (keyof typeof rules)[];

// A penetration given as six times the diameter must not fail for the last bit of a double.
const BIT = 1e-9;
const fastener = oneOf(lateralFasteners, 'kind of fastener');
const D = needs('in', 'nominal diameter', { min: 0.092, max: 1 });

/** Factor on a tabulated lateral value for penetration; below the least penetration there is no lateral value. */
export function makePenetrationFactor(edition: NdsEdition) {
  const cites = citation(edition, 'Tables 12J to 12P, footnote 3');
  const make = (is: string) =>
    equation({ clause: cites, gives: 'p/pfull', unit: '1', from: { p: 'in', D: 'in' }, is });
  const lag = make('min(1, p / (8 * D))');
  const other = make('min(1, p / (10 * D))');
  return clause({
    id: `${edition.id}/12.1-penetration`,
    title: 'factor on a tabulated lateral value for the penetration of the fastener',
    cites,
    inputs: {
      fastener,
      D,
      p: needs('in', 'penetration in the member; of a lag without the tip', { above: 0 }),
    },
    gives: { symbol: 'p/pfull', unit: '1' },
    compute: (values, trace) => {
      const { number, least } = rules[values.fastener];
      if (values.p < least * values.D - BIT)
        return refuse(
          citation(edition, number),
          'p',
          values.p,
          `at least ${least} D = ${Number((least * values.D).toFixed(4))} in`,
        );
      return (values.fastener === 'lag screw' ? lag : other)({ p: values.p, D: values.D }, trace);
    },
  });
}

/** Bearing length in the member of the point: half of the tip does not bear. The tip of a nail or screw is 2 D. */
export function makeBearingLength(edition: NdsEdition) {
  const cites = citation(edition, '12.3.5.3');
  const lag = equation({
    clause: cites,
    gives: 'lm',
    unit: 'in',
    from: { p: 'in', E: 'in' },
    is: 'p - E / 2',
  });
  const other = equation({ clause: cites, gives: 'lm', unit: 'in', from: { p: 'in', D: 'in' }, is: 'p - D' });
  return clause({
    id: `${edition.id}/12.3.5-bearing-length`,
    title: 'bearing length of a fastener in the member that holds its point',
    cites,
    inputs: {
      fastener,
      D,
      p: needs('in', 'penetration in the member, tip included', { above: 0 }),
      E: mayNeed('in', 'length of the tapered tip; needed for a lag', { min: 0 }),
    },
    gives: { symbol: 'lm', unit: 'in' },
    compute: (values, trace) => {
      if (values.fastener === 'lag screw') {
        if (values.E === undefined)
          return refuse(cites, 'E', undefined, 'the tip of a lag screw', 'missing-input');
        return values.p > values.E
          ? lag({ p: values.p, E: values.E }, trace)
          : refuse(cites, 'p', values.p, 'longer than the tip');
      }
      return values.p > 2 * values.D
        ? other({ p: values.p, D: values.D }, trace)
        : refuse(cites, 'p', values.p, 'longer than the tip, 2 D');
    },
  });
}

/** Thread of a wood screw of ASME B18.6.1; a screw threaded to the head has L. */
export function makeScrewThread(edition: NdsEdition) {
  const cites = citation(edition, 'Table L3, footnote 3');
  const T = equation({
    clause: cites,
    gives: 'T',
    unit: 'in',
    from: { D: 'in', L: 'in' },
    is: 'min(L, max(4 * D, 2 * L / 3))',
  });
  return clause({
    id: `${edition.id}/l3-screw-thread`,
    title: 'thread length of a wood screw',
    cites,
    inputs: {
      D: needs('in', 'nominal diameter', { min: 0.138, max: 0.372 }),
      L: needs('in', 'length', { above: 0 }),
    },
    gives: { symbol: 'T', unit: 'in' },
    compute: T,
  });
}

/** Least thread of a lag screw. */
export function makeLagThread(edition: NdsEdition) {
  const cites = citation(edition, 'Table L2');
  const T = equation({
    clause: cites,
    gives: 'T',
    unit: 'in',
    from: { L: 'in' },
    is: 'min(6, L / 2 + 0.5)',
    fitted: true,
  });
  return clause({
    id: `${edition.id}/l2-lag-thread`,
    title: 'least thread length of a lag screw',
    cites,
    inputs: { L: needs('in', 'length', { min: 1, max: 12 }) },
    gives: { symbol: 'T', unit: 'in' },
    compute: ({ L }, trace) =>
      L === 1
        ? taken(
            trace,
            { clause: cites, symbol: 'T', unit: 'in', because: 'the row of 1 in, which is not by the rule' },
            inch(0.75),
          )
        : T({ L }, trace),
  });
}

/** Thread inside the holding member: a long screw through a thin member counts only the overlap. */
export function makeThreadInMember(edition: NdsEdition) {
  const cites = citation(edition, '12.2.1, 12.2.2');
  const pt = equation({
    clause: cites,
    gives: 'pt',
    unit: 'in',
    from: { L: 'in', T: 'in', E: 'in', ts: 'in', tm: 'in' },
    is: 'max(0 * L, min(L - E, ts + tm) - max(L - T, ts))',
  });
  const length = (means: string) => needs('in', means, { min: 0 });
  return clause({
    id: `${edition.id}/12.2-thread-in-member`,
    title: 'length of thread inside the holding member',
    cites,
    inputs: {
      L: needs('in', 'length under the head', { above: 0 }),
      T: needs('in', 'thread length', { above: 0 }),
      E: length('tip that does not count: of a lag its taper, else 0'),
      ts: length('everything between the head and the holding member'),
      tm: needs('in', 'thickness of the holding member', { above: 0 }),
    },
    gives: { symbol: 'pt', unit: 'in' },
    compute: pt,
  });
}
