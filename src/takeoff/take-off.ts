/** The order: every item once, with what it serves, waste, packs, price and weight; and the bits to drive it. */

import type { Design } from '../choose/design.ts';
import type { ConnectionChoice } from '../choose/schedule.ts';
import type { FastenerSet } from '../layout/fastener-set.ts';
import { runCount, upLines } from '../roof/runs.ts';
import type { Item } from '../shelf/item.ts';
import { type ConnectionCount, countFasteners, packsFor } from './count.ts';
import type { Takeoff, TakeoffLine } from './takeoff.ts';

type Use = TakeoffLine['uses'][number];

/** Money is rounded once, half up, where a line is priced; the total adds rounded lines. */
const toCents = (amount: number): number => Math.round(amount * 100 + 1e-6) / 100;

export function takeOff(
  choices: readonly ConnectionChoice[],
  layout: readonly FastenerSet[],
  design: Design,
  currency: string,
): Takeoff {
  const uses = new Map<string, { item: Item; uses: Use[] }>();
  const use = (item: Item | undefined, one: Use) => {
    if (!item || one.count === 0) return;
    const held = uses.get(item.id);
    if (held) held.uses.push(one);
    else uses.set(item.id, { item, uses: [one] });
  };
  for (const choice of choices) {
    const count = countFasteners(choice, layout);
    use(choice.item, { connection: count.connection, zones: count.zones, count: count.fasteners });
    if (choice.connection.duty !== 'clip') continue;
    use(design.parts.clip, perPlace(count, choice));
    use(design.parts.plate, perPlace(count, choice));
  }
  const lines = [...uses.values()].map(({ item, uses: list }) => lineFor(item, list, design));
  const all = [...lines, ...bitLines(lines, design)];
  return {
    lines: all,
    currency,
    total: toCents(all.reduce((sum, line) => sum + line.price, 0)),
    weight_lbf: all.reduce((sum, line) => sum + line.weight_lbf, 0),
    runs: runsOf(design),
    edges: edgesOf(design),
  };
}

function perPlace(count: ConnectionCount, choice: ConnectionChoice): Use {
  const each = choice.connection.each;
  return {
    connection: count.connection,
    zones: count.zones.map(({ zone, count: n }) => ({ zone, count: n / each })),
    count: count.places,
  };
}

function lineFor(item: Item, uses: readonly Use[], { job }: Design): TakeoffLine {
  const count = uses.reduce((sum, one) => sum + one.count, 0);
  const { withWaste, packs, ordered } = packsFor(count, job.waste.fasteners, item.pack);
  const colour =
    job.panel.colour !== undefined && item.colours.includes(job.panel.colour)
      ? { colour: job.panel.colour }
      : {};
  return {
    item: item.id,
    designation: item.designation,
    kind: item.kind,
    uses,
    ...colour,
    count,
    withWaste,
    pack: item.pack,
    packs,
    ordered,
    unitPrice: item.price,
    price: toCents(ordered * item.price),
    weight_lbf: ordered * item.weight,
  };
}

/** One bit or socket for each thousand screws of its drive, at least two (common practice). */
const SCREWS_PER_BIT = 1000;

function bitLines(lines: readonly TakeoffLine[], design: Design): TakeoffLine[] {
  const drives = new Map<string, { connections: string[]; screws: number }>();
  for (const line of lines) {
    const item = design.items.find(({ id }) => id === line.item);
    if (item?.kind !== 'screw') continue;
    const held = drives.get(item.drive) ?? { connections: [], screws: 0 };
    drives.set(item.drive, {
      connections: [...held.connections, ...line.uses.map((one) => one.connection)],
      screws: held.screws + line.count,
    });
  }
  return [...drives].flatMap(([drive, { connections, screws }]) => {
    const bit = design.items.find((item) => item.kind === 'bit' && item.drives === drive);
    if (!bit) return [];
    const count = Math.max(2, Math.ceil(screws / SCREWS_PER_BIT));
    const { packs, ordered } = packsFor(count, 0, bit.pack);
    const uses = connections.map((connection) => ({ connection, zones: [], count: 0 }));
    return [
      {
        item: bit.id,
        designation: bit.designation,
        kind: 'bit' as const,
        uses,
        count,
        withWaste: count,
        pack: bit.pack,
        packs,
        ordered,
        unitPrice: bit.price,
        price: toCents(ordered * bit.price),
        weight_lbf: ordered * bit.weight,
      },
    ];
  });
}

function runsOf({ roof, job: { panel } }: Design): Takeoff['runs'] {
  return roof.planes.map((plane) => ({
    plane: plane.id,
    runs: runCount(plane, panel.coverage, panel.startOffset),
    seams: upLines(plane, panel.coverage, panel.startOffset).length,
    slopeArea_ft2: plane.slopeArea_ft2,
  }));
}

function edgesOf({ roof }: Design): Takeoff['edges'] {
  const shared = new Set(['ridge', 'hip', 'valley']);
  const sums = new Map<string, number>();
  for (const plane of roof.planes)
    for (const edge of plane.edges)
      sums.set(edge.tag, (sums.get(edge.tag) ?? 0) + edge.length / 12 / (shared.has(edge.tag) ? 2 : 1));
  return [...sums].map(([tag, length_ft]) => ({ tag, length_ft }));
}
