/**
 * One specification for several outcomes: for each connection the item, and for each zone the spacing, that is as sound
 * at every one of them as the best that could be chosen there. It is found among the items chosen at one of the
 * outcomes, else on the whole shelf, and checked by evaluating it at each. Values at which no choice of fasteners is as
 * sound as at the others (a deck that is not held, a panel without a test) are told and left out: no fastener mends them.
 */
import type { ScheduleLine } from '../../choose/schedule.ts';
import type { VerdictCount } from '../answer.ts';
import { commonItem, type Fixed } from './common-item.ts';
import { difference } from './moves.ts';
import { NOTHING_FITS, type Outcome } from './outcome.ts';
import type { Variations } from './variations.ts';

export interface RobustItem {
  readonly connection: string;
  readonly item: string;
  readonly zones: readonly { readonly zone: string; readonly spacing_in: number; readonly each: number }[];
}

/** An outcome the specification serves. */
export interface Served {
  readonly name: string;
  /** Of this specification there, and of the order that could do once it is known: the cheaper of this and the one chosen there. */
  readonly price: number;
  readonly priceOnceKnown: number;
}

export type Robust =
  | {
      readonly found: true;
      readonly items: readonly RobustItem[];
      /** The dearest order of this specification over the outcomes; they differ only where zones do. */
      readonly price: number;
      /** Over the cheapest order that could do once the answer is known. */
      readonly overCheapest: number;
      readonly count: VerdictCount;
      readonly serves: readonly Served[];
      /** Names of the outcomes that no choice of fasteners makes as sound as the others. */
      readonly beyond: readonly string[];
    }
  | { readonly found: false; readonly because: string };

/** An outcome with what people call it. */
export interface Named {
  readonly name: string;
  readonly outcome: Outcome;
}

const none = (because: string): Robust => ({ found: false, because });

export function robustOver(tries: readonly Named[], variations: Variations): Robust {
  const serves = soundest(tries);
  const beyond = tries.filter((one) => !serves.includes(one)).map(({ name }) => name);
  const outcomes = serves.map(({ outcome }) => outcome);
  const [first] = outcomes;
  if (!first) return none('no value could be solved');
  const other = serves.find(({ outcome }) => sceneOf(outcome) !== sceneOf(first));
  if (other)
    return none(
      `with ${other.name} the joints, their parts or the wind zones are others; one schedule cannot serve both`,
    );
  const fixed: Fixed[] = [];
  for (const index of first.choices.keys()) {
    const one = commonItem(index, outcomes);
    if (typeof one === 'string') return none(one);
    fixed.push(one);
  }
  const laid = outcomes.map((outcome, at) =>
    variations.outcome(choicesOf(fixed, outcome, at), outcome.design),
  );
  const price = Math.max(...laid.map((one) => one.price));
  const served = serves.map(({ name, outcome }, at): Served => {
    const own = laid[at]?.price ?? price;
    return { name, price: own, priceOnceKnown: Math.min(own, outcome.price) };
  });
  return {
    found: true,
    items: fixed.map((one, index) => itemOf(one, index, first)),
    price,
    overCheapest: difference(price, Math.min(...served.map(({ priceOnceKnown }) => priceOnceKnown))),
    count: laid.map(({ count }) => count).reduce(worse),
    serves: served,
    beyond,
  };
}

/** The outcomes that are as sound as the soundest of them. */
export function soundest(tries: readonly Named[]): Named[] {
  const best = tries.reduce<Named | undefined>(
    (held, one) => (held && byCount(held.outcome.count, one.outcome.count) <= 0 ? held : one),
    undefined,
  );
  return tries.filter(({ outcome }) => best && byCount(outcome.count, best.outcome.count) === 0);
}

const byCount = (a: VerdictCount, b: VerdictCount): number =>
  a.fallsShort - b.fallsShort || a.unproven - b.unproven;
const worse = (a: VerdictCount, b: VerdictCount): VerdictCount => (byCount(a, b) > 0 ? a : b);

/** What must be the same for one schedule to serve: the joints, where their fasteners stand, the parts, the zones. */
export function sceneOf({ choices, design }: Outcome): string {
  return JSON.stringify([
    choices.map(({ connection: { id, placement, each }, lines }) => [
      id,
      placement,
      each,
      lines.map(({ zone }) => zone),
    ]),
    design.parts.clip?.id,
    design.parts.plate?.id,
    design.field.zones.map(({ label }) => label),
  ]);
}

function choicesOf(fixed: readonly Fixed[], outcome: Outcome, at: number) {
  return outcome.choices.map((choice, index) => {
    const one = fixed[index] as Fixed;
    return { ...choice, item: one.item, lines: one.lines[at] as readonly ScheduleLine[] };
  });
}

function itemOf({ item, lines }: Fixed, index: number, { choices, design }: Outcome): RobustItem {
  return {
    connection: choices[index]?.connection.id ?? '',
    item: item?.id ?? NOTHING_FITS,
    zones: (lines[0] ?? []).map(({ zone, spacing_in, each }) => ({
      zone: design.field.zones[zone]?.label ?? '',
      spacing_in,
      each,
    })),
  };
}
