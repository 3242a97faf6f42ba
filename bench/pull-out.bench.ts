/** Pull-out of a million (screw, sheet) pairs: the clause over columns, and with its trace, against a bare loop of the same formula. */
import { inch, psi } from '../src/quantities/quantity.ts';
import { pullOut, pullOutColumn } from '../src/standards/aisi-s100-16/j4.4.1-pull-out.ts';
import type { Trace } from '../src/trace/step.ts';
import { best, report, seeded } from './timing.ts';

const COUNT = 1_000_000;
const random = seeded(7);
const tc = Float64Array.from({ length: COUNT }, () => 0.018 + 0.1 * random());
const d = Float64Array.from({ length: COUNT }, () => 0.138 + 0.112 * random());
const Fu2 = Float64Array.from({ length: COUNT }, () => 45_000 + 37_000 * random());
const out = new Float64Array(COUNT);

function bareLoop(): number {
  for (let i = 0; i < COUNT; i++) out[i] = 0.85 * (tc[i] as number) * (d[i] as number) * (Fu2[i] as number);
  return out.reduce((sum, value) => sum + value, 0);
}

const column = pullOutColumn();
function clauseColumn(): number {
  const { values } = column({ tc, d, Fu2 }, COUNT, out);
  return values.reduce((sum, value) => sum + value, 0);
}

/** One trace of one step for each pair, dropped at once, as a caller does who shows one proof at a time. */
function withTrace(): number {
  let sum = 0;
  for (let i = 0; i < COUNT; i++) {
    const trace: Trace = [];
    sum += pullOut(
      { tc: inch(tc[i] as number), d: inch(d[i] as number), Fu2: psi(Fu2[i] as number) },
      trace,
    ) as number;
    sum += trace.length - 1;
  }
  return sum;
}

const bare = best(bareLoop, 7);
const fast = best(clauseColumn, 7);
const traced = best(withTrace, 5);
report('pull-out of 1,000,000 pairs', [
  ['bare loop over typed arrays', bare, ''],
  ['clause over columns, limits checked', fast, `${(fast.ms / bare.ms).toFixed(2)} times bare (at most 2)`],
  ['clause one by one, with trace', traced, `${(traced.ms / bare.ms).toFixed(1)} times bare (at most 40)`],
]);
