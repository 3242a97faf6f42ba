/** The firm's own test of an item in a substrate: better evidence than an equation, reduced as the report says. */
import type { Ply } from '../connections/ply.ts';
import { lbf, ratio } from '../quantities/quantity.ts';
import type { OwnTest } from '../shelf/item.ts';
import { safetyFactorFromTests } from '../standards/aisi-s100-16/k2.1.1-factor-from-tests.ts';
import { equation } from '../trace/equation.ts';
import { isRefusal } from '../trace/refusal.ts';
import type { Trace } from '../trace/step.ts';
import type { Capacity } from './verdict.ts';

/** LRFD over ASD, from Ω = 1.6/φ of the strength-from-tests section (AISI S100 K2.1). */
export const LRFD_OVER_ASD = 1.6;

/** Fewer pulls than this prove nothing (AISI S100 K2.1.1 asks for three). */
const LEAST_TESTS = 3;

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

/**
 * The capacity a test gives, or nothing when there is no test of this item in this substrate, or too few pulls.
 * The mean is divided by the report's safety factor or by that of AISI S100 K2.1.1 for its number and scatter,
 * whichever is larger; for wood that section is used as our own rule.
 */
export function ownTestCapacity(
  tests: readonly OwnTest[],
  load: OwnTest['load'],
  ply: Ply,
  method: 'ASD' | 'LRFD',
  trace: Trace | undefined,
): Pick<Capacity, 'value' | 'evidence' | 'cites' | 'remarks'> | undefined {
  const key = substrateKey(ply);
  const found = tests.find((one) => one.load === load && one.substrate === key && one.n >= LEAST_TESTS);
  if (!found) return undefined;
  const { n, mean, coefficientOfVariation: scatter, safetyFactor: stated } = found;
  const statistical = safetyFactorFromTests(
    { n: ratio(n), Pm: ratio(1), VP: ratio(scatter), kind: 'connection not listed' },
    trace,
  );
  const Ω = isRefusal(statistical) ? stated : Math.max(stated, statistical);
  const value = reduced(
    { Tm: lbf(mean), n: ratio(method === 'LRFD' ? LRFD_OVER_ASD : 1), Ω: ratio(Ω) },
    trace,
  );
  const rule = Ω > stated ? 'that of AISI S100 K2.1.1 for this number and scatter' : 'that of the report';
  return {
    value,
    evidence: 'own test',
    cites: `${found.source}, ${found.date}`,
    remarks: [
      `Own test in ${found.substrate}: mean of ${n}, coefficient of variation ${scatter}, safety factor ${Number(Ω.toFixed(2))}, ${rule}.`,
    ],
  };
}
