/** What each value of an unknown makes of the answer, and what a test would have to show. */
import type { Read } from '../../job/read-job.ts';
import { difference } from './moves.ts';
import type { Outcome } from './outcome.ts';
import type { Brief, ValueEffect, WantedTest } from './report.ts';
import type { Unknown } from './unknowns.ts';

export const briefOf = ({ count, price }: Outcome): Brief => ({ count, price });

export function effectOf(
  unknown: Unknown,
  index: number,
  solved: Read<Outcome>,
  reference: Outcome,
): ValueEffect {
  const text = unknown.values[index]?.text ?? '';
  const isReference = index === unknown.reference;
  if (!solved.ok)
    return {
      text,
      isReference,
      cannot: solved.faults.map(({ path, message }) => `${path} ${message}`).join('; '),
    };
  const outcome = solved.value;
  return {
    text,
    isReference,
    answer: briefOf(outcome),
    priceDifference: difference(outcome.price, reference.price),
    ...differences(outcome, reference),
  };
}

function differences(
  outcome: Outcome,
  reference: Outcome,
): Pick<Required<ValueEffect>, 'items' | 'verdicts' | 'spacings'> {
  const ids = [...new Set([...reference.items.keys(), ...outcome.items.keys()])];
  const items = ids.flatMap((connection) => {
    const [from = 'no such joint', to = 'no such joint'] = [
      reference.items.get(connection),
      outcome.items.get(connection),
    ];
    return from === to ? [] : [{ connection, from, to }];
  });
  const cells = [...new Set([...reference.cells.keys(), ...outcome.cells.keys()])].map(
    (key) => [reference.cells.get(key), outcome.cells.get(key)] as const,
  );
  const verdicts = cells.flatMap(([from, to]) =>
    from && to && from.verdict !== to.verdict
      ? [{ connection: to.connection, zone: to.zone, from: from.verdict, to: to.verdict }]
      : [],
  );
  const spacings = cells.filter(
    ([from, to]) => from?.spacing_in !== to?.spacing_in || from?.each !== to?.each,
  ).length;
  return { items, verdicts, spacings };
}

/** Uplift at each spacing of the panel's own rows: a table that allows it there is sufficient. */
export function wantedTest({ choices }: Outcome): WantedTest[] {
  const wanted = new Map<number, number>();
  for (const { connection, lines } of choices)
    for (const { spacing_in, placePressure_psf: pressure } of connection.primary ? lines : [])
      if (pressure !== undefined) wanted.set(spacing_in, Math.max(wanted.get(spacing_in) ?? 0, pressure));
  return [...wanted]
    .map(([spacing_in, allowable_psf]) => ({ spacing_in, allowable_psf }))
    .sort((a, b) => a.spacing_in - b.spacing_in);
}
