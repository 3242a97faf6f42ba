import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inch, lbf, psi } from '../../quantities/quantity.ts';
import { isRefusal, type Outcome, refusalText } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { aisiS10016Clauses } from '../aisi-s100-16/clause-list.ts';
import { aisiS10016 } from '../aisi-s100-16/edition.ts';
import { pullOut as pullOut16 } from '../aisi-s100-16/j4.4.1-pull-out.ts';
import { pullOver as pullOver16 } from '../aisi-s100-16/j4.4.2-pull-over.ts';
import { available as available16 } from '../aisi-s100-16/j4-factors.ts';
import { aisiS10016S322Clauses } from '../aisi-s100-16-s3-22/clause-list.ts';
import { aisiS10016S322 } from '../aisi-s100-16-s3-22/edition.ts';
import { pullOut as pullOut22 } from '../aisi-s100-16-s3-22/j4.4.1-pull-out.ts';
import { pullOver as pullOver22 } from '../aisi-s100-16-s3-22/j4.4.2-pull-over.ts';
import { available as available22 } from '../aisi-s100-16-s3-22/j4-factors.ts';
import type { ScrewEdition } from './screw-edition.ts';
import { methods } from './screw-terms.ts';
import { textTable } from './text-table.ts';

function given<T extends number>(outcome: Outcome<T>): T {
  if (isRefusal(outcome)) throw new Error(refusalText(outcome));
  return outcome;
}

const thread = { tc: inch(0.0598), d: inch(0.25), Fu2: psi(65_000) };
const head = {
  bearing: 'head alone',
  pull: 'all round',
  d: inch(0.25),
  dh: inch(0.5),
  t1: inch(0.0239),
  Fu1: psi(65_000),
} as const;

describe('editions do not mix', () => {
  // The type check is the test: without the error that each line expects, the build fails. The type leaves no mark on
  // the number, so at run time the calls go through; they are here to be compiled.
  test('a nominal strength of one edition does not compile into the factors of the other', () => {
    const old = given(pullOut16(thread));
    const revised = given(pullOut22(thread));
    // @ts-expect-error S100-16 strength, S3-22 factor
    const first = available22('pull-out', old, 'ASD');
    // @ts-expect-error S3-22 strength, S100-16 factor
    const second = available16('pull-out', revised, 'ASD');
    expect([first, second].every(Number.isFinite)).toBe(true);
    expect(available16('pull-out', old, 'ASD')).toBeCloseTo(275.3, 1);
    expect(available22('pull-out', revised, 'ASD')).toBeCloseTo(289.6, 1);
  });
  test('nor does one limit state into the factor of another, nor a bare number', () => {
    const over = given(pullOver22(head));
    // @ts-expect-error pull-over strength, pull-out factor
    expect(Number.isFinite(available22('pull-out', over, 'ASD'))).toBe(true);
    // @ts-expect-error pull-over strength, pull-out factor
    expect(Number.isFinite(available16('pull-out', given(pullOver16(head)), 'ASD'))).toBe(true);
    // @ts-expect-error pounds of no edition
    expect(Number.isFinite(available16('pull-out', lbf(300), 'ASD'))).toBe(true);
  });
});

const editions: readonly ScrewEdition[] = [aisiS10016, aisiS10016S322];

describe('an edition as one object', () => {
  test('every clause carries the name of its own edition, and each id once', () => {
    for (const [list, folder, name] of [
      [aisiS10016Clauses, 'aisi-s100-16/', 'AISI S100-16 '],
      [aisiS10016S322Clauses, 'aisi-s100-16-s3-22/', 'AISI S100-16 w/S3-22 '],
    ] as const) {
      expect(list.length).toBeGreaterThan(15);
      expect(new Set(list.map((clause) => clause.about.id)).size).toBe(list.length);
      for (const { about } of list) {
        expect(about.id.startsWith(folder)).toBe(true);
        expect(about.cites.startsWith(name)).toBe(true);
      }
    }
    expect(aisiS10016Clauses.some(({ about }) => about.cites.includes('S3-22'))).toBe(false);
  });

  for (const edition of editions)
    test(`${edition.name}: the working of every strength cites this edition alone`, () => {
      const trace: Trace = [];
      const sheets = {
        t1: inch(0.0359),
        t2: inch(0.0598),
        d: inch(0.216),
        Fu1: psi(45_000),
        Fu2: psi(65_000),
      };
      given(edition.shear(sheets, 'LRFD', trace));
      given(edition.pullOut(thread, 'ASD', trace));
      given(edition.pullOver(head, 'LSD', trace));
      given(
        edition.endTearOut({ t: inch(0.03), e: inch(0.5), d: inch(0.25), Fu: psi(65_000) }, 'ASD', trace),
      );
      given(edition.screwShear({ Pnvs: lbf(2330) }, 'ASD', trace));
      given(edition.screwTension({ Pnts: lbf(2325) }, 'ASD', trace));
      const load = { V: lbf(100), T: lbf(80) };
      const out = {
        ...load,
        t2: inch(0.0598),
        tc: inch(0.0598),
        d: inch(0.216),
        Fu2: psi(65_000),
        Fy2: psi(50_000),
      };
      given(edition.shearAndPullOut(out, 'ASD', trace));
      const over = { ...load, ...sheets, t2: inch(0.1), dw: inch(0.5), pull: 'all round' } as const;
      given(edition.shearAndPullOver(over, 'ASD', trace));
      given(edition.shearAndTension({ ...load, Pnvs: lbf(2330), Pnts: lbf(2325) }, 'ASD', trace));
      given(edition.tensileStrengthForDesign({ ductility: 'grade 80', Fu: psi(82_000) }, trace));
      given(edition.minimumSpacing({ d: inch(0.25) }, trace));
      expect(trace.length).toBeGreaterThan(40);
      const cited = [...new Set(trace.map((step) => step.clause))];
      expect(cited.filter((clause) => !clause.startsWith(`${edition.name} `))).toEqual([]);
    });

  test('a refusal of the clause comes through, with its citation', () => {
    for (const edition of editions) {
      const outcome = edition.pullOut({ ...thread, d: inch(0.3125) }, 'ASD');
      expect(isRefusal(outcome) && [outcome.input, outcome.clause]).toEqual(['d', `${edition.name} J4.4.1`]);
    }
  });

  test('thicker sheet never lowers an available strength, in any edition and method', () => {
    const t = fc.double({ min: 0.012, max: 0.25, noNaN: true });
    const more = fc.double({ min: 1, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        t,
        more,
        fc.constantFrom(...methods),
        fc.constantFrom(...editions),
        (thin, k, method, edition) => {
          const pull = (tc: number) => given(edition.pullOut({ ...thread, tc: inch(tc) }, method));
          const over = (t1: number) => given(edition.pullOver({ ...head, t1: inch(t1) }, method));
          expect(pull(thin * k)).toBeGreaterThanOrEqual(pull(thin));
          expect(over(thin * k)).toBeGreaterThanOrEqual(over(thin));
        },
      ),
    );
  });
});

test('a table of check values that is empty, or a row that lacks a number, fails', () => {
  expect(() => textTable(['a'], '\n')).toThrow('empty');
  expect(() => textTable(['a', 'b'], 'row 1')).toThrow('row does not have 2');
  expect(() => textTable(['a'], 'row x')).toThrow('row does not have 1');
});
