/**
 * ADM J.5.5.1, screws with machine (UNC) threads. 0.060 <= Le <= 0.125 in: Ks D Le Fty2, Ks 1.01 below 0.080 in, else
 * 1.20; to 0.25 in between yield and thread stripping; 0.25 to 0.375 in: 0.58 Asn Le Ftu2, Asn the thread stripping
 * area of the internal thread per inch of engagement. Recalled, not seen; Asn of 1/4-20 agrees with the area formula
 * of AAMA TIR-A9.
 */
import { inch, type Lbf, quantity, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { note, taken } from '../../trace/step.ts';
import { type Document, RECALLED } from './factors.ts';
import { document, type Nominal } from './nominal.ts';

/** Nominal diameter, in, threads per inch, and stripping area, in²/in. Recalled. */
const threads = {
  '10-24': { D: 0.19, n: 24, Asn: 0.401 },
  '12-24': { D: 0.216, n: 24, Asn: 0.458 },
  '1/4-20': { D: 0.25, n: 20, Asn: 0.539 },
} as const;
const threadNames = ['10-24', '12-24', '1/4-20'] as const;
export type MachineThread = (typeof threadNames)[number];

/** The machine thread of this diameter and pitch; nothing for a spaced thread. */
export function machineThread(D: number, n: number): MachineThread | undefined {
  return threadNames.find((name) => Math.abs(threads[name].D - D) < 0.0005 && threads[name].n === n);
}

const inputs = {
  thread: oneOf(threadNames, 'size and threads per inch'),
  Le: needs('in', 'length of full thread engaged in the aluminium', { min: 0.06, max: 0.375 }),
  Fty2: needs('psi', 'tensile yield strength of the holding member', { above: 0 }),
  Ftu2: needs('psi', 'tensile ultimate strength of the holding member', { above: 0 }),
};

function equations(cites: string) {
  const at = { clause: cites, gives: 'Rn', unit: 'lbf' } as const;
  return {
    thin: equation({
      ...at,
      from: { Ks: '1', D: 'in', Le: 'in', Fty2: 'psi' },
      is: 'Ks * D * Le * Fty2',
    }),
    // The lengths 0.25 and 0.125 are inches written as numbers.
    between: equation({
      ...at,
      from: { D: 'in', Asn: 'in²/in', Le: 'in', Fty2: 'psi', Ftu2: 'psi' },
      is: '1.2 * D * Fty2 * (0.25 - Le) + 1.16 * Asn * Ftu2 * (Le - 0.125)',
      fitted: true,
    }),
    thick: equation({ ...at, from: { Asn: 'in²/in', Le: 'in', Ftu2: 'psi' }, is: '0.58 * Asn * Le * Ftu2' }),
  };
}

export function makePullOutUNC<N extends Lbf>(of: Document) {
  const cites = `${of.name} J.5.5.1`;
  const { thin, between, thick } = equations(cites);
  return clause({
    id: `${of.id}/j.5.5.1-pull-out-unc`,
    title: 'pull-out of one machine-thread screw from aluminium, nominal',
    cites,
    inputs,
    gives: { symbol: 'Rn', unit: 'lbf' },
    compute: ({ thread, Le, Fty2, Ftu2 }, trace) => {
      note(trace, cites, RECALLED);
      const D = inch(threads[thread].D);
      if (Le <= 0.125) return thin({ Ks: ratio(Le < 0.08 ? 1.01 : 1.2), D, Le, Fty2 }, trace) as N;
      const Asn = taken(
        trace,
        { clause: cites, symbol: 'Asn', unit: 'in²/in', because: `${thread}; ${RECALLED}` },
        quantity(threads[thread].Asn, 'in²/in'),
      );
      if (Le < 0.25) return between({ D, Asn, Le, Fty2, Ftu2 }, trace) as N;
      return thick({ Asn, Le, Ftu2 }, trace) as N;
    },
  });
}

export const pullOutUNC = makePullOutUNC<Nominal<'pull-out'>>(document);
