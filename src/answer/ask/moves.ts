/** How far an answer moves over the values of an unknown, and which value is worst. */
import type { Outcome } from './outcome.ts';

export interface Moves {
  /** Cells of the schedule whose verdict is not the same at all values. */
  readonly verdicts: number;
  /** Connections whose item or clip is not. */
  readonly items: number;
  /** Cells whose spacing or number of fasteners is not, or that are not there at all values. */
  readonly spacings: number;
  /** Dearest order less cheapest. */
  readonly price: number;
}

export function movesOver(outcomes: readonly Outcome[]): Moves {
  const cells = new Set(outcomes.flatMap(({ cells: held }) => [...held.keys()]));
  const connections = new Set(outcomes.flatMap(({ items }) => [...items.keys()]));
  const prices = outcomes.map(({ price }) => price);
  const varies = (of: (outcome: Outcome) => unknown) => new Set(outcomes.map(of)).size > 1;
  const spacing = (outcome: Outcome, key: string) => {
    const cell = outcome.cells.get(key);
    return cell && `${cell.spacing_in} ${cell.each}`;
  };
  return {
    verdicts: countOf(cells, (key) => varies((outcome) => outcome.cells.get(key)?.verdict)),
    items: countOf(connections, (id) => varies(({ items }) => items.get(id))),
    spacings: countOf(cells, (key) => varies((outcome) => spacing(outcome, key))),
    price: prices.length === 0 ? 0 : difference(Math.max(...prices), Math.min(...prices)),
  };
}

/** Of two prices, in whole cents: both are sums of cents, and their difference must show no dust. */
export const difference = (a: number, b: number): number => Math.round((a - b) * 100) / 100;

function countOf(keys: ReadonlySet<string>, holds: (key: string) => boolean): number {
  let count = 0;
  for (const key of keys) if (holds(key)) count++;
  return count;
}

/** Nothing of the answer moves: the same verdicts, items and spacings, and the same order to the last figure. */
export const isStill = ({ verdicts, items, spacings, price }: Moves): boolean =>
  verdicts === 0 && items === 0 && spacings === 0 && price === 0;

/** Verdicts first, then items, then spacings, then price; the one that moves the answer most comes first. */
export const byMoves = (a: Moves, b: Moves): number =>
  b.verdicts - a.verdicts || b.items - a.items || b.spacings - a.spacings || b.price - a.price;

/** Index of the least sound outcome, of equally sound ones the dearest, of equally dear ones the most strained; values that cannot be solved are passed over. */
export function worstOf(outcomes: readonly (Outcome | undefined)[]): number | undefined {
  let worst: number | undefined;
  outcomes.forEach((outcome, i) => {
    if (!outcome) return;
    const held = worst === undefined ? undefined : outcomes[worst];
    if (!held || badness(outcome, held) > 0) worst = i;
  });
  return worst;
}

const badness = (a: Outcome, b: Outcome): number =>
  a.count.fallsShort - b.count.fallsShort ||
  a.count.unproven - b.count.unproven ||
  a.price - b.price ||
  a.strain[0] - b.strain[0] ||
  a.strain[1] - b.strain[1];
