/** For one item: the widest spacing in each zone at which every link holds, and what it then costs. */
import { type Connection, isPieceMeal } from '../connections/connection.ts';
import { misfit } from '../links/verdict.ts';
import type { Design } from './design.ts';
import { type Cell, type Chain, evaluateLine } from './evaluate-line.ts';
import type { ScheduleLine, SpacingReason } from './schedule.ts';
import { chalkable, type Occurrence } from './where.ts';

/** The person's or the owner's cap, or the usual one of the trade. */
function capOf(connection: Connection, design: Design): number {
  const owner = connection.primary ? design.job.spacingCap : undefined;
  return Math.min(owner ?? Number.POSITIVE_INFINITY, connection.practice.spacing_in);
}

/** A crew is asked for one screw beside a rib, or one on each side of it; never for more. */
const MOST_BESIDE_RIB = 2;

export function findLine(chain: Chain, at: Occurrence, design: Design): ScheduleLine {
  const { connection } = chain;
  const { placement } = connection;
  const try_ = (spacing: number, setBy: SpacingReason, each = connection.each) =>
    evaluateLine(chain, { zone: at.zone, spacing, each, setBy }, design);
  if (isPieceMeal(placement)) return try_(connection.practice.spacing_in, 'pieces', placement.perPiece);
  if (at.supportSpacing !== undefined) {
    const ribs = placement.by === 'field' && placement.lines === 'ribs';
    const spacing = at.supportSpacing;
    const cap = design.job.spacingCap;
    if (connection.primary && cap !== undefined && spacing > cap + 1e-6)
      return overCap(chain, at.zone, spacing, cap, design);
    const line = firstThatHolds(range(connection.each, ribs ? MOST_BESIDE_RIB : connection.each), (each) =>
      try_(spacing, 'supports', each),
    );
    return line.verdict === 'falls short' ? { ...line, ...mended(line, spacing, design, try_) } : line;
  }
  return freeLine(connection, design, try_);
}

/** An owner's cap that the supports themselves break: it falls short, whatever the fasteners carry. */
function overCap(chain: Chain, zone: number, spacing: number, cap: number, design: Design): ScheduleLine {
  const because = `the supports stand ${Number(spacing.toFixed(1))} in apart at most, the owner's cap is ${Number(cap.toFixed(1))} in`;
  const capped = { ...chain, besides: [misfit(because), ...chain.besides] };
  return {
    ...evaluateLine(capped, { zone, spacing, each: chain.connection.each, setBy: 'supports' }, design),
    holdsAt_in: cap,
  };
}

/** The support spacing at which the line would hold, for a row that cannot choose its own. */
function mended(
  line: ScheduleLine,
  spacing: number,
  design: Design,
  try_: (spacing: number, setBy: SpacingReason, each?: number) => ScheduleLine,
): { readonly holdsAt_in?: number } {
  const closer = chalkable(design.job.print.units).filter((s) => s < spacing);
  const at = closer.find((s) => try_(s, 'supports', line.each).verdict !== 'falls short');
  return at === undefined ? {} : { holdsAt_in: at };
}

/**
 * The calculation first, over everything a crew can chalk; the cap after it. Trims start from their usual spacing,
 * which the calculation may only tighten.
 */
function freeLine(
  connection: Connection,
  design: Design,
  try_: (spacing: number, setBy: SpacingReason) => ScheduleLine,
): ScheduleLine {
  const cap = capOf(connection, design);
  const all = chalkable(design.job.print.units);
  if (!connection.primary) {
    // Usual spacings are in inches; a metric crew chalks the next whole one below.
    const usual = design.job.print.units === 'SI' ? (all.find((s) => s <= cap) ?? cap) : cap;
    const list = [usual, ...all.filter((s) => s < usual)];
    return firstThatHolds(list, (s) => try_(s, s === usual ? 'practice' : 'calculation'));
  }
  const calculated = firstThatHolds(all, (s) => try_(s, 'calculation'));
  if (calculated.spacing_in <= cap) return calculated;
  // Closer rows carry no more on any fastener link; a tested panel table may not reach that far, so it is tried again.
  const within = all.filter((s) => s <= cap);
  return firstThatHolds(within.length === 0 ? [cap] : within, (s) => try_(s, 'cap'));
}

/** First that holds; else the first that does not fall short; else the last, tightest one. */
function firstThatHolds<T>(options: readonly T[], evaluate: (option: T) => ScheduleLine): ScheduleLine {
  let unproven: ScheduleLine | undefined;
  let tightest: ScheduleLine | undefined;
  for (const option of options) {
    const line = evaluate(option);
    if (line.verdict === 'holds') return line;
    if (line.verdict === 'unproven') unproven ??= line;
    tightest = line;
  }
  return (unproven ?? tightest) as ScheduleLine;
}

const range = (from: number, to: number): number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => from + i);

/** A line at what a person asked for, checked like any other. */
export function overriddenLine(chain: Chain, at: Occurrence, spacing: number, design: Design): ScheduleLine {
  const { placement, each } = chain.connection;
  const cell: Cell = {
    zone: at.zone,
    spacing,
    each: isPieceMeal(placement) ? placement.perPiece : each,
    setBy: 'override',
  };
  return evaluateLine(chain, cell, design);
}

/** Fasteners of a line, near enough to compare items by; the layout counts exactly. */
export function roughCount(connection: Connection, line: ScheduleLine, at: Occurrence): number {
  return isPieceMeal(connection.placement)
    ? at.amount * line.each
    : (at.amount / line.spacing_in) * line.each;
}
