import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inch, ratio } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { clausesOfNds2018 } from '../nds-2018/clauses.ts';
import { clausesOfNds2024 } from '../nds-2024/clauses.ts';
import { lagRows, nailRows, pullThroughRows, screwRows } from './12.2-withdrawal.table.ts';
import { screwAllowance } from './screw-allowance.ts';

const wood = { screwStandard: 'ASME B18.6.1' } as const;

test('the tables hold their rows', () => {
  expect([lagRows.length, screwRows.length, nailRows.length, pullThroughRows.length]).toEqual([
    121, 52, 39, 40,
  ]);
});

for (const [edition, nds] of [
  ['2018', clausesOfNds2018],
  ['2024', clausesOfNds2024],
] as const)
  describe(`reference withdrawal, NDS ${edition}`, () => {
    for (const { G, D, W, source, origin } of lagRows)
      test(`lag ${D} in, G ${G}: ${W} lb/in (${source}, ${origin})`, () => {
        expect(Math.abs(Number(nds.lagReference({ G: ratio(G), D: inch(D) })) - W)).toBeLessThanOrEqual(0.5);
      });

    for (const { G, D, W, tol, source, origin } of screwRows)
      test(`wood screw ${D} in, G ${G}: ${W} lb/in (${source}, ${origin})`, () => {
        expect(
          Math.abs(Number(nds.screwReference({ G: ratio(G), D: inch(D), ...wood })) - W),
        ).toBeLessThanOrEqual(tol);
      });

    for (const { shank, G, D, W, tol, source, origin } of nailRows)
      test(`${shank} nail ${D} in, G ${G}: ${W} lb/in (${source}, ${origin})`, () => {
        expect(
          Math.abs(Number(nds.nailReference({ G: ratio(G), D: inch(D), shank })) - W),
        ).toBeLessThanOrEqual(tol);
      });

    for (const { G, DH, tns, WH, tol, source, origin } of pullThroughRows)
      test(`head ${DH} in through ${tns} in, G ${G}: ${WH} lb (${source}, ${origin})`, () => {
        const outcome = nds.headPullThroughReference({ G: ratio(G), DH: inch(DH), tns: inch(tns) });
        expect(Math.abs(Number(outcome) - WH)).toBeLessThanOrEqual(tol);
      });
  });

const { headPullThroughReference, lagReference, nailReference, screwReference } = clausesOfNds2018;
const refusedInput = (outcome: unknown) => (isRefusal(outcome) ? outcome.input : outcome);

describe('limits', () => {
  const head = { G: ratio(0.42), DH: inch(0.3), tns: inch(0.5) };
  test('a head or washer wider than 1/2 in is refused', () => {
    expect(refusedInput(headPullThroughReference({ ...head, DH: inch(0.501) }))).toBe('DH');
    expect(refusedInput(headPullThroughReference({ ...head, DH: inch(0.233) }))).toBe('DH');
  });
  test('a panel thinner than 5/16 in or thicker than 1-1/2 in is refused', () => {
    expect(refusedInput(headPullThroughReference({ ...head, tns: inch(0.312) }))).toBe('tns');
    expect(refusedInput(headPullThroughReference({ ...head, tns: inch(1.501) }))).toBe('tns');
  });
  test('a side member outside the two gravities of the table is refused', () => {
    expect(refusedInput(headPullThroughReference({ ...head, G: ratio(0.41) }))).toBe('G');
    expect(refusedInput(headPullThroughReference({ ...head, G: ratio(0.51) }))).toBe('G');
  });
  test('gravity and diameter outside the withdrawal tables are refused', () => {
    for (const G of [0.3, 0.74]) {
      expect(refusedInput(lagReference({ G: ratio(G), D: inch(0.5) }))).toBe('G');
      expect(refusedInput(screwReference({ G: ratio(G), D: inch(0.19), ...wood }))).toBe('G');
      expect(refusedInput(nailReference({ G: ratio(G), D: inch(0.131), shank: 'smooth' }))).toBe('G');
    }
    for (const D of [0.249, 1.251])
      expect(refusedInput(lagReference({ G: ratio(0.5), D: inch(D) }))).toBe('D');
    for (const D of [0.137, 0.373])
      expect(refusedInput(screwReference({ G: ratio(0.5), D: inch(D), ...wood }))).toBe('D');
    for (const D of [0.091, 0.376])
      expect(refusedInput(nailReference({ G: ratio(0.5), D: inch(D), shank: 'ring' }))).toBe('D');
  });
});

test('both branches of pull-through give one number where they meet', () => {
  const at = (tns: number) =>
    Number(headPullThroughReference({ G: ratio(0.5), DH: inch(0.25), tns: inch(tns) }));
  expect(at(0.625 + 1e-9)).toBeCloseTo(at(0.625), 4);
  expect(at(1.5)).toBeCloseTo(at(0.7), 9);
});

test('a screw not made to ASME B18.6.1 carries the allowance in its working, a wood screw does not', () => {
  const working = (screwStandard: 'ASME B18.6.1' | 'other than ASME B18.6.1') => {
    const trace: Trace = [];
    screwReference({ G: ratio(0.42), D: inch(0.19), screwStandard }, trace);
    return trace.flatMap((step) => (step.kind === 'note' ? [step.text] : []));
  };
  expect(working('other than ASME B18.6.1')).toEqual([screwAllowance]);
  expect(working('ASME B18.6.1')).toEqual([]);
});

test('each edition is cited in its own working', () => {
  const cited = (nds: typeof clausesOfNds2018) => {
    const trace: Trace = [];
    nds.screwReference({ G: ratio(0.42), D: inch(0.19), ...wood }, trace);
    return trace.map((step) => step.clause);
  };
  expect([cited(clausesOfNds2018), cited(clausesOfNds2024)]).toEqual([
    ['NDS 2018 12.2.2 Eq. 12.2-2'],
    ['NDS 2024 12.2.2 Eq. 12.2-2'],
  ]);
});

test('heavier wood never holds less, and a thicker fastener never less', () => {
  const G = fc.double({ min: 0.31, max: 0.73, noNaN: true });
  const D = fc.double({ min: 0.25, max: 0.372, noNaN: true });
  fc.assert(
    fc.property(G, G, D, D, (g1, g2, d1, d2) => {
      const [low, high] = [
        { G: ratio(Math.min(g1, g2)), D: inch(Math.min(d1, d2)) },
        { G: ratio(Math.max(g1, g2)), D: inch(Math.max(d1, d2)) },
      ];
      return (
        Number(lagReference(low)) <= Number(lagReference(high)) &&
        Number(screwReference({ ...low, ...wood })) <= Number(screwReference({ ...high, ...wood })) &&
        Number(nailReference({ ...low, shank: 'ring' })) <= Number(nailReference({ ...high, shank: 'ring' }))
      );
    }),
  );
});
