/** A schedule line held as it stands, item and spacing, while something under it changes; every link is made again. */
import { chainOf } from '../../choose/choose-items.ts';
import type { Design } from '../../choose/design.ts';
import { evaluateLine } from '../../choose/evaluate-line.ts';
import { ruleOut } from '../../choose/rule-out.ts';
import type { ScheduleLine } from '../../choose/schedule.ts';
import { settingFor } from '../../choose/setting.ts';
import type { Connection } from '../../connections/connection.ts';
import { misfit } from '../../links/verdict.ts';
import type { Rivet, Screw } from '../../shelf/item.ts';

export interface Held {
  readonly item: Screw | Rivet;
  readonly line: ScheduleLine;
}

/** The line again, on a connection and in a design that may have changed, in a zone and at a spacing. */
export function lineAgain(
  { item, line }: Held,
  connection: Connection,
  design: Design,
  { zone = line.zone, spacing = line.spacing_in } = {},
): ScheduleLine {
  const chain = chainOf(item, connection, design);
  const unfit = ruleOut(item, settingFor(connection, design.job, design.parts));
  const faults = [...(unfit ? [unfit.because] : []), ...overCap(line, connection, spacing, design)];
  const besides = [...faults.map(misfit), ...chain.besides];
  return evaluateLine({ ...chain, besides }, { zone, spacing, each: line.each, setBy: line.setBy }, design);
}

/** The owner's cap on rows that stand on supports, where nothing else keeps it. */
function overCap(line: ScheduleLine, connection: Connection, spacing: number, { job }: Design): string[] {
  const cap = job.spacingCap;
  if (line.setBy !== 'supports' || !connection.primary || cap === undefined || spacing <= cap + 1e-6)
    return [];
  return [`the owner's cap is ${Number(cap.toFixed(1))} in`];
}
