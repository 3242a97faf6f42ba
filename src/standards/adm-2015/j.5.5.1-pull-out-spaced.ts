/**
 * ADM J.5.5.1, screws with spaced threads (8-18, 10-16, 12-14, 1/4-14 ...) in holes, not in chases.
 * Le is the thread length engaged, n threads per inch.
 * 0.038 in <= Le <= 2/n: Ks D Le Fty2, Ks 1.01 below 0.080 in, else 1.20. 2/n < Le < 4/n: between yield and tension.
 * 4/n <= Le <= 0.375 in: 1.63 D Le Ftu2. Thin sheet goes by Fty, thick by Ftu. Recalled, not seen.
 */
import { type Lbf, ratio } from '../../quantities/quantity.ts';
import { clause, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { note } from '../../trace/step.ts';
import { type Document, RECALLED, screwDiameter } from './factors.ts';
import { document, type Nominal } from './nominal.ts';

const inputs = {
  D: needs('in', 'nominal screw diameter', screwDiameter),
  n: needs('1/in', 'threads per inch', { min: 9, max: 20 }),
  Le: needs('in', 'length of full thread engaged in the aluminium', { min: 0.038, max: 0.375 }),
  Fty2: needs('psi', 'tensile yield strength of the holding member', { above: 0 }),
  Ftu2: needs('psi', 'tensile ultimate strength of the holding member', { above: 0 }),
};

export function makePullOutSpaced<N extends Lbf>(of: Document) {
  const cites = `${of.name} J.5.5.1`;
  const at = { clause: cites, gives: 'Rn', unit: 'lbf' } as const;
  const thin = equation({
    ...at,
    from: { Ks: '1', D: 'in', Le: 'in', Fty2: 'psi' },
    is: 'Ks * D * Le * Fty2',
  });
  const between = equation({
    ...at,
    from: { D: 'in', Le: 'in', n: '1/in', Fty2: 'psi', Ftu2: 'psi' },
    is: '1.2 * D * Fty2 * (4 / n - Le) + 3.26 * D * Ftu2 * (Le - 2 / n)',
  });
  const thick = equation({ ...at, from: { D: 'in', Le: 'in', Ftu2: 'psi' }, is: '1.63 * D * Le * Ftu2' });
  return clause({
    id: `${of.id}/j.5.5.1-pull-out-spaced`,
    title: 'pull-out of one spaced-thread screw from aluminium, nominal',
    cites,
    inputs,
    gives: { symbol: 'Rn', unit: 'lbf' },
    compute: ({ D, n, Le, Fty2, Ftu2 }, trace) => {
      note(trace, cites, RECALLED);
      if (Le <= 2 / n) return thin({ Ks: ratio(Le < 0.08 ? 1.01 : 1.2), D, Le, Fty2 }, trace) as N;
      if (Le < 4 / n) return between({ D, Le, n, Fty2, Ftu2 }, trace) as N;
      return thick({ D, Le, Ftu2 }, trace) as N;
    },
  });
}

export const pullOutSpaced = makePullOutSpaced<Nominal<'pull-out'>>(document);
