/** The firm's own test of an item in a substrate: better evidence than an equation, reduced as the report says. */
import type { Ply } from '../connections/ply.ts';
import { lbf, ratio } from '../quantities/quantity.ts';
import type { OwnTest } from '../shelf/item.ts';
import { equation } from '../trace/equation.ts';
import type { Trace } from '../trace/step.ts';
import type { Capacity } from './verdict.ts';

/** LRFD over ASD, from Ω = 1.6/φ of the strength-from-tests section (AISI S100 K2.1). */
export const LRFD_OVER_ASD = 1.6;

const reduced = equation({
  clause: 'own test',
  gives: 'Ta',
  unit: 'lbf',
  from: { Tm: 'lbf', n: '1', Ω: '1' },
  is: 'n * Tm / Ω',
});

/** How tests name what they were made in: "plywood 15/32 in", "steel 0.0566 in". */
export function substrateKey(ply: Ply): string | undefined {
  if (ply.thickness_in === undefined) return undefined;
  if (ply.kind === 'wood')
    return ply.product === 'lumber' ? ply.name : `${ply.product} ${fraction(ply.thickness_in)} in`;
  return ply.kind === 'sheet' ? `${ply.family} ${ply.thickness_in} in` : undefined;
}

function fraction(inches: number): string {
  for (const bottom of [1, 2, 4, 8, 16, 32]) {
    const top = inches * bottom;
    if (Math.abs(top - Math.round(top)) < 1e-6)
      return bottom === 1 ? String(Math.round(top)) : `${Math.round(top)}/${bottom}`;
  }
  return String(inches);
}

/** The capacity a test gives, or nothing when there is no test of this item in this substrate. */
export function ownTestCapacity(
  tests: readonly OwnTest[],
  load: OwnTest['load'],
  ply: Ply,
  method: 'ASD' | 'LRFD',
  trace: Trace | undefined,
): Pick<Capacity, 'value' | 'evidence' | 'cites' | 'remarks'> | undefined {
  const key = substrateKey(ply);
  const found = tests.find((one) => one.load === load && one.substrate === key);
  if (!found) return undefined;
  const value = reduced(
    { Tm: lbf(found.mean), n: ratio(method === 'LRFD' ? LRFD_OVER_ASD : 1), Ω: ratio(found.safetyFactor) },
    trace,
  );
  return {
    value,
    evidence: 'own test',
    cites: `${found.source}, ${found.date}`,
    remarks: [
      `Own test: mean of ${found.n}, coefficient of variation ${found.coefficientOfVariation}, safety factor ${found.safetyFactor}.`,
    ],
  };
}
