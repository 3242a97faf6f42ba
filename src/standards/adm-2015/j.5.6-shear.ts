/**
 * ADM J.5.6: shear of one screw by bearing on the sheets, 2 D t Ftu (e t Ftu where the end is nearer than 2 D), and
 * tilting, 4.2 (t2³ D)^0.5 Ftu2, only where the sheet away from the head is not the thicker one.
 * Recalled, not seen.
 */
import type { Inch, Lbf } from '../../quantities/quantity.ts';
import { clause, mayNeed, needs } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { refuse } from '../../trace/refusal.ts';
import { note, type Trace } from '../../trace/step.ts';
import { type Document, RECALLED, screwDiameter } from './factors.ts';
import { document, type Nominal } from './nominal.ts';

export const shearInputs = {
  t1: needs('in', 'thickness of the sheet touching the head', { above: 0 }),
  t2: needs('in', 'thickness of the sheet not touching the head', { above: 0 }),
  D: needs('in', 'nominal screw diameter', screwDiameter),
  Ftu1: needs('psi', 'tensile ultimate strength of the sheet of t1', { above: 0 }),
  Ftu2: needs('psi', 'tensile ultimate strength of the sheet of t2', { above: 0 }),
  e1: mayNeed('in', 'end distance in the sheet of t1, where the force points at its end', { above: 0 }),
  e2: mayNeed('in', 'end distance in the sheet of t2, where the force points at its end', { above: 0 }),
};

function equations(cites: string) {
  const force = { clause: cites, unit: 'lbf' } as const;
  const length = { clause: cites, gives: 'e', unit: 'in' } as const;
  return {
    farEnd: equation({ ...length, from: { D: 'in' }, is: '2 * D' }),
    nearEnd: equation({ ...length, from: { e: 'in', D: 'in' }, is: 'min(e, 2 * D)' }),
    bearing: equation({ ...force, gives: 'Rb', from: { e: 'in', t: 'in', Ftu: 'psi' }, is: 'e * t * Ftu' }),
    tilting: equation({
      ...force,
      gives: 'Rtilt',
      from: { t2: 'in', D: 'in', Ftu2: 'psi' },
      is: '4.2 * sqrt(t2 ^ 3 * D) * Ftu2',
    }),
    leastOfTwo: equation({ ...force, gives: 'Rn', from: { Rb1: 'lbf', Rb2: 'lbf' }, is: 'min(Rb1, Rb2)' }),
    leastOfThree: equation({
      ...force,
      gives: 'Rn',
      from: { Rb1: 'lbf', Rb2: 'lbf', Rtilt: 'lbf' },
      is: 'min(Rb1, Rb2, Rtilt)',
    }),
  };
}

export function makeShear<N extends Lbf>(of: Document) {
  const cites = `${of.name} J.5.6`;
  const { farEnd, nearEnd, bearing, tilting, leastOfTwo, leastOfThree } = equations(cites);
  const bearingLength = (e: Inch | undefined, D: Inch, trace: Trace | undefined) =>
    e === undefined ? farEnd({ D }, trace) : nearEnd({ e, D }, trace);
  return clause({
    id: `${of.id}/j.5.6-shear`,
    title: 'shear of one screw by bearing and tilting in aluminium, nominal',
    cites,
    inputs: shearInputs,
    gives: { symbol: 'Rn', unit: 'lbf' },
    compute: ({ t1, t2, D, Ftu1, Ftu2, e1, e2 }, trace) => {
      if (e1 !== undefined && e1 < 1.5 * D) return refuse(cites, 'e1', e1, `at least 1.5 D = ${1.5 * D} in`);
      if (e2 !== undefined && e2 < 1.5 * D) return refuse(cites, 'e2', e2, `at least 1.5 D = ${1.5 * D} in`);
      note(trace, cites, RECALLED);
      const Rb1 = bearing({ e: bearingLength(e1, D, trace), t: t1, Ftu: Ftu1 }, trace);
      const Rb2 = bearing({ e: bearingLength(e2, D, trace), t: t2, Ftu: Ftu2 }, trace);
      if (t2 > t1) return leastOfTwo({ Rb1, Rb2 }, trace) as N;
      return leastOfThree({ Rb1, Rb2, Rtilt: tilting({ t2, D, Ftu2 }, trace) }, trace) as N;
    },
  });
}

export const shear = makeShear<Nominal<'shear'>>(document);
