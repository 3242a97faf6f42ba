/**
 * What would break it: for each line of a schedule, item and spacing held, the wind speed, spacing, thickness of the
 * support and of the panel between which it holds; where it does not, the value at which it would start to. A tested
 * uplift table is held as it is: another panel would need another test.
 */
import type { Design } from '../../choose/design.ts';
import type { ConnectionChoice, ScheduleLine } from '../../choose/schedule.ts';
import { supportPly } from '../../connections/build-ups.ts';
import { isPieceMeal } from '../../connections/connection.ts';
import { panelSheet } from '../../connections/sheet-ply.ts';
import type { Verdict } from '../../links/verdict.ts';
import type { Solved } from '../solve-job.ts';
import { type Altered, atPanel, atSpeed, atSupport, remembered, speedOf } from './altered.ts';
import { decisive, type Margin, marginOf } from './boundary.ts';
import { type Held, lineAgain } from './held-line.ts';

export interface LineMargins {
  readonly connection: string;
  readonly item: string | undefined;
  readonly zone: string;
  readonly spacing_in: number;
  readonly each: number;
  readonly verdict: Verdict;
  readonly governing: string;
  readonly margins: {
    readonly windSpeed_mph: Margin;
    readonly spacing_in: Margin;
    /** Of the deck or purlin under the roof: plywood, lumber, or base metal. */
    readonly supportThickness_in: Margin;
    /** Base metal. */
    readonly panelThickness_in: Margin;
  };
  readonly strip: StripMargin;
}

/** A line does not know how wide its zone is. What matters is whether it would hold where a severer zone grew over it. */
export interface StripMargin {
  /** Severer zones in which the same item at the same spacing does not hold: their strips may not be wider than drawn. */
  readonly failsIn: readonly string[];
  /** Width of the edge strip as it is, ft. */
  readonly a_ft: number | undefined;
}

/** Limits of what is tried, as wide as a job document may say. */
const SPEEDS = { low: 60, high: 300 };
const SPACINGS = { low: 1, high: 240 };
const WOODS = { low: 0.1, high: 12 };
const SHEETS = { low: 0.008, high: 0.99 };

export function marginsOf({ answer, design }: Solved): LineMargins[] {
  const connections = new Map(answer.choices.map(({ connection }) => [connection.id, connection]));
  const bench: Bench = {
    design,
    bySpeed: remembered((value) => atSpeed(design, connections, value)),
    bySupport: remembered((value) => atSupport(design, value)),
    byPanel: remembered((value) => atPanel(design, value)),
  };
  return answer.choices.flatMap((choice) => choice.lines.map((line) => marginsOfLine(choice, line, bench)));
}

interface Bench {
  readonly design: Design;
  readonly bySpeed: (value: number) => Altered;
  readonly bySupport: (value: number) => Altered;
  readonly byPanel: (value: number) => Altered;
}

const none = (because: string): Margin => ({ kind: 'none', because });

function marginsOfLine(choice: ConnectionChoice, line: ScheduleLine, bench: Bench): LineMargins {
  const { connection, item } = choice;
  const { design } = bench;
  const common = {
    connection: connection.id,
    item: item?.id,
    zone: design.field.zones[line.zone]?.label ?? '',
    spacing_in: line.spacing_in,
    each: line.each,
    verdict: line.verdict,
    governing: decisive(line),
  };
  if (!item) {
    const nothing = none('nothing on the shelf fits this joint');
    return {
      ...common,
      margins: {
        windSpeed_mph: nothing,
        spacing_in: nothing,
        supportThickness_in: nothing,
        panelThickness_in: nothing,
      },
      strip: { failsIn: [], a_ft: undefined },
    };
  }
  const held = { item, line };
  return {
    ...common,
    margins: {
      windSpeed_mph: speedMargin(held, choice, bench),
      spacing_in: spacingMargin(held, choice, bench),
      supportThickness_in: supportMargin(held, choice, bench),
      panelThickness_in: panelMargin(held, choice, bench),
    },
    strip: stripMargin(held, choice, bench),
  };
}

function speedMargin(held: Held, { connection }: ConnectionChoice, { design, bySpeed }: Bench): Margin {
  const present = speedOf(design.job);
  if (present === undefined)
    return none(
      design.job.wind.by === 'engineer'
        ? 'the pressures are those of the engineer; no speed stands behind them here'
        : 'the wind speed is not known',
    );
  return marginOf({
    present,
    ...SPEEDS,
    eases: 'down',
    at: remembered((speed) => lineAgain(held, connection, bySpeed(speed).design)),
  });
}

function spacingMargin(held: Held, { connection }: ConnectionChoice, { design }: Bench): Margin {
  if (isPieceMeal(connection.placement))
    return none('a set number of fasteners at each piece; there is no spacing');
  return marginOf({
    present: held.line.spacing_in,
    ...SPACINGS,
    eases: 'down',
    at: remembered((spacing) => lineAgain(held, connection, design, { spacing })),
  });
}

function supportMargin(held: Held, choice: ConnectionChoice, { design, bySupport }: Bench): Margin {
  const ply = supportPly(design.job);
  if (ply.thickness_in === undefined) return none('the thickness of the support is not known');
  return thicknessMargin(held, choice, ply.thickness_in, ply.kind === 'wood' ? WOODS : SHEETS, bySupport);
}

function panelMargin(held: Held, choice: ConnectionChoice, { design, byPanel }: Bench): Margin {
  const present = panelSheet(design.job.panel).thickness_in;
  if (present === undefined) return none('the thickness of the panel is not known');
  return thicknessMargin(held, choice, present, SHEETS, byPanel);
}

function thicknessMargin(
  held: Held,
  { connection }: ConnectionChoice,
  present: number,
  range: { readonly low: number; readonly high: number },
  by: (value: number) => Altered,
): Margin {
  const at = remembered((value: number) => {
    const { design, connections } = by(value);
    return lineAgain(held, connections.get(connection.id) ?? connection, design);
  });
  return marginOf({ present, ...range, eases: 'up', at });
}

function stripMargin(held: Held, { connection }: ConnectionChoice, { design }: Bench): StripMargin {
  const { zones, facts } = design.field;
  const own = zones[held.line.zone];
  const a_ft = facts.find(({ symbol }) => symbol === 'a')?.value;
  if (!own || held.line.verdict !== 'holds') return { failsIn: [], a_ft };
  const failsIn = zones.flatMap((zone, index) => {
    if (zone.overhang !== own.overhang || zone.severity <= own.severity) return [];
    return lineAgain(held, connection, design, { zone: index }).verdict === 'holds' ? [] : [zone.label];
  });
  return { failsIn, a_ft };
}
