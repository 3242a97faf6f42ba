/** Where a verdict changes along one quantity: walked in steps of eight percent, then halved to a quarter percent. */
import type { ScheduleLine } from '../../choose/schedule.ts';

/** A bound of holding, and the link that decides beyond it. */
export interface Bound {
  readonly value: number;
  readonly by: string;
}

export type Margin =
  /** It holds, down to the least and up to the most; a bound left out was not met within the range. */
  | {
      readonly kind: 'holds';
      readonly least?: Bound;
      readonly most?: Bound;
      /** Once it stops it does not hold again farther on, at any step walked. */
      readonly steady: boolean;
    }
  /**
   * It does not hold; it starts to at this value, the first met going the way that eases it, then the other way.
   * Coming from below, what is larger holds; coming from above, what is smaller.
   */
  | { readonly kind: 'starts'; readonly value: number; readonly from: 'above' | 'below' }
  /** It holds at no value tried, or nothing of it depends on the quantity; `judged` is then the margin of the links that can be judged. */
  | { readonly kind: 'none'; readonly because: string; readonly judged?: Margin };

export interface Quantity {
  readonly present: number;
  readonly low: number;
  readonly high: number;
  /** Which way eases the line. */
  readonly eases: 'up' | 'down';
  readonly at: (value: number) => ScheduleLine;
}

const STEP = 1.08;
/** A boundary is known to this part of its value: half of what is promised. */
const CLOSE = 0.0025;

type Holds = (line: ScheduleLine) => boolean;
const holds: Holds = (line) => line.verdict === 'holds';
/** Of the links whose load and capacity are known, none falls short, and nothing is unfit. */
const judgedHold: Holds = ({ checks }) =>
  checks.some(({ ratio }) => ratio !== undefined) && checks.every(({ verdict }) => verdict !== 'falls short');

/** The margin of a line; of one that stays unproven, also that of the links that can be judged. */
export function marginOf(quantity: Quantity): Margin {
  const whole = marginBy(quantity, holds);
  const here = quantity.at(quantity.present);
  if (whole.kind !== 'none' || here.verdict !== 'unproven') return whole;
  const judged = marginBy(quantity, judgedHold);
  return judged.kind === 'none' ? whole : { ...whole, judged };
}

function marginBy(quantity: Quantity, holds: Holds): Margin {
  const { present, at, eases } = quantity;
  const here = at(present);
  const up = walk(quantity, 'up');
  const down = walk(quantity, 'down');
  if (!enters(here, [...up, ...down].map(at)))
    return { kind: 'none', because: 'no link of the line depends on it' };
  if (holds(here)) {
    const [least, most] = [down, up].map((values) => stop(present, values, at, holds));
    return {
      kind: 'holds',
      ...(least ? { least } : {}),
      ...(most ? { most } : {}),
      steady: isSteady(up, at, holds) && isSteady(down, at, holds),
    };
  }
  const [first, second] = eases === 'up' ? [up, down] : [down, up];
  const value = start(present, first, at, holds) ?? start(present, second, at, holds);
  if (value !== undefined) return { kind: 'starts', value, from: value > present ? 'below' : 'above' };
  return { kind: 'none', because: `at no value tried; as it stands: ${whyNot(here)}` };
}

/** Values from the present one outward, ending on the end of the range. */
function walk({ present, low, high }: Quantity, way: 'up' | 'down'): number[] {
  const values: number[] = [];
  const end = way === 'up' ? high : low;
  const beyond = (value: number) => (way === 'up' ? value >= end : value <= end);
  for (
    let value = way === 'up' ? present * STEP : present / STEP;
    !beyond(value);
    value = way === 'up' ? value * STEP : value / STEP
  )
    values.push(value);
  return beyond(present) ? values : [...values, end];
}

type At = Quantity['at'];

/** The last value at which it still holds, and what decides beyond it. */
function stop(present: number, values: readonly number[], at: At, holds: Holds): Bound | undefined {
  const index = values.findIndex((value) => !holds(at(value)));
  if (index < 0) return undefined;
  const { holding, failing } = halved(values[index - 1] ?? present, values[index] as number, at, holds);
  return { value: holding, by: decisive(at(failing)) };
}

/** The first value at which it holds. */
function start(present: number, values: readonly number[], at: At, holds: Holds): number | undefined {
  const index = values.findIndex((value) => holds(at(value)));
  return index < 0
    ? undefined
    : halved(values[index] as number, values[index - 1] ?? present, at, holds).holding;
}

function halved(
  holding: number,
  failing: number,
  at: At,
  holds: Holds,
): { readonly holding: number; readonly failing: number } {
  if (Math.abs(holding - failing) <= CLOSE * Math.min(holding, failing)) return { holding, failing };
  const middle = (holding + failing) / 2;
  return holds(at(middle)) ? halved(middle, failing, at, holds) : halved(holding, middle, at, holds);
}

function isSteady(values: readonly number[], at: At, holds: Holds): boolean {
  const verdicts = values.map((value) => holds(at(value)));
  const first = verdicts.indexOf(false);
  return first < 0 || !verdicts.slice(first).includes(true);
}

/** Whether any check of the line has another ratio or verdict at any of the lines. */
function enters(here: ScheduleLine, lines: readonly ScheduleLine[]): boolean {
  const face = ({ checks }: ScheduleLine) =>
    checks.map(({ ratio, verdict }) => `${ratio?.toPrecision(9)} ${verdict}`).join();
  return lines.some((line) => face(line) !== face(here));
}

/** The link that decides a line, and why when that is no matter of numbers. */
export function decisive(line: ScheduleLine): string {
  const check = line.checks[line.governing];
  if (!check) return 'nothing is checked';
  const { link, because } = check.capacity;
  return check.ratio === undefined && because !== undefined ? `${link}: ${because}` : link;
}

const whyNot = (line: ScheduleLine): string => line.noLoad ?? decisive(line);
