/** The answer of one variation of a job, as far as variations are compared: schedule, order, verdicts. */
import type { Design } from '../../choose/design.ts';
import type { ConnectionChoice } from '../../choose/schedule.ts';
import type { Verdict } from '../../links/verdict.ts';
import type { VerdictCount } from '../answer.ts';
import { countVerdicts } from '../solve-job.ts';

/** One cell of the schedule. */
export interface Cell {
  readonly connection: string;
  readonly zone: string;
  readonly verdict: Verdict;
  readonly spacing_in: number;
  readonly each: number;
}

export interface Outcome {
  readonly design: Design;
  readonly choices: readonly ConnectionChoice[];
  readonly cells: ReadonlyMap<string, Cell>;
  /** Item, and clip where there is one, by connection. */
  readonly items: ReadonlyMap<string, string>;
  readonly count: VerdictCount;
  readonly price: number;
  /** Fasteners to the inch, then parts of what is held, summed over the schedule: tells which of two equal answers is nearer its end. */
  readonly strain: readonly [closeness: number, ratios: number];
}

export const NOTHING_FITS = 'nothing fits';

export function outcomeFrom(choices: readonly ConnectionChoice[], design: Design, price: number): Outcome {
  const cells = new Map<string, Cell>();
  const items = new Map<string, string>();
  let closeness = 0;
  let ratios = 0;
  for (const { connection, item, clip, lines } of choices) {
    const named = item?.id ?? NOTHING_FITS;
    items.set(connection.id, clip ? `${named} with ${clip.id}` : named);
    for (const { zone: index, verdict, spacing_in, each, checks } of lines) {
      const zone = design.field.zones[index]?.label ?? '';
      cells.set(`${connection.id}, ${zone}`, { connection: connection.id, zone, verdict, spacing_in, each });
      closeness += each / spacing_in;
      for (const { ratio } of checks) ratios += ratio ?? 0;
    }
  }
  return {
    design,
    choices,
    cells,
    items,
    count: countVerdicts(choices),
    price,
    strain: [closeness, ratios],
  };
}
