/** The cheapest item that is as sound at every outcome as the one chosen there, with the closest of its spacings. */
import { chainOf, roughCost } from '../../choose/choose-items.ts';
import type { Design } from '../../choose/design.ts';
import { type Chain, evaluateLine } from '../../choose/evaluate-line.ts';
import { findLine } from '../../choose/find-spacing.ts';
import { ruleOut } from '../../choose/rule-out.ts';
import type { ConnectionChoice, ScheduleLine } from '../../choose/schedule.ts';
import { settingFor } from '../../choose/setting.ts';
import { type Occurrence, occurrences } from '../../choose/where.ts';
import type { Rivet, Screw } from '../../shelf/item.ts';
import type { Outcome } from './outcome.ts';

/** An item of a connection with its lines at each outcome: the same spacings, checked under the loads of each. */
export interface Fixed {
  readonly item: Screw | Rivet | undefined;
  readonly lines: readonly (readonly ScheduleLine[])[];
}

interface View {
  readonly choice: ConnectionChoice;
  readonly design: Design;
  readonly where: readonly Occurrence[];
}

/** The common item of the connection at an index, or why there is none. */
export function commonItem(index: number, outcomes: readonly Outcome[]): Fixed | string {
  const choices = outcomes.map(({ choices: held }) => held[index] as ConnectionChoice);
  if (alike(choices)) return { item: choices[0]?.item, lines: choices.map(({ lines }) => lines) };
  const views = outcomes.map(({ design }, at): View => {
    const choice = choices[at] as ConnectionChoice;
    return { choice, design, where: occurrences(choice.connection, design) };
  });
  const chosen = [...new Map(choices.map(({ item }) => [item?.id, item])).values()].filter(
    (item) => item !== undefined,
  );
  return (
    cheapest(chosen, views) ??
    cheapest(fasteners(views), views) ??
    `no one item serves ${choices[0]?.connection.id} at all values as well as the best at each`
  );
}

const fasteners = (views: readonly View[]) =>
  (views[0]?.design.items ?? []).filter((item) => item.kind === 'screw' || item.kind === 'rivet');

/** The same item at the same spacings everywhere: nothing to look for. */
function alike(choices: readonly ConnectionChoice[]): boolean {
  const [first] = choices;
  const shape = ({ item, lines }: ConnectionChoice) =>
    `${item?.id} ${lines.map(({ zone, spacing_in, each }) => `${zone} ${spacing_in} ${each}`).join()}`;
  return first !== undefined && choices.every((choice) => shape(choice) === shape(first));
}

function cheapest(items: readonly (Screw | Rivet)[], views: readonly View[]): Fixed | undefined {
  let best: { readonly fixed: Fixed; readonly cost: number } | undefined;
  for (const item of items) {
    const lines = fixedLines(item, views);
    if (!lines) continue;
    const { choice, where, design } = views[0] as View;
    const cost = roughCost(item, lines[0] ?? [], where, choice.connection, design);
    if (!best || cost < best.cost) best = { fixed: { item, lines }, cost };
  }
  return best?.fixed;
}

/** Lines of an item at the closest spacing any outcome wants, or nothing where it is less sound than what was chosen. */
function fixedLines(item: Screw | Rivet, views: readonly View[]): (readonly ScheduleLine[])[] | undefined {
  const chains = views.map((view) => chainAt(item, view));
  if (!chains.every((chain) => chain !== undefined)) return undefined;
  const own = views.map((view, v) => ownLines(item, chains[v] as Chain, view));
  const count = own[0]?.length ?? 0;
  const closest = Array.from({ length: count }, (_, i) => ({
    spacing: closestOf(own.flatMap((lines) => lines[i] ?? [])),
    each: Math.max(...own.map((lines) => lines[i]?.each ?? 0)),
  }));
  const fixed = views.map((view, v) =>
    (own[v] ?? []).map((line, i) => {
      const { spacing, each } = closest[i] as { spacing: number; each: number };
      return line.spacing_in === spacing && line.each === each
        ? line
        : evaluateLine(
            chains[v] as Chain,
            { zone: line.zone, spacing, each, setBy: line.setBy },
            view.design,
          );
    }),
  );
  const sound = fixed.every((lines, v) => !lessSound(lines, (views[v] as View).choice.lines));
  return sound ? fixed : undefined;
}

/** Where a line falls short at every spacing, the tightest of them buys nothing and does not count. */
function closestOf(lines: readonly ScheduleLine[]): number {
  const useful = lines.filter(({ verdict }) => verdict !== 'falls short');
  return Math.min(...(useful.length > 0 ? useful : lines).map(({ spacing_in }) => spacing_in));
}

/** Nothing where the item is ruled out, unless a person insisted on it. */
function chainAt(item: Screw | Rivet, { choice, design }: View): Chain | undefined {
  const { connection } = choice;
  const insisted = design.job.overrides.some(
    (one) => one.connection === connection.id && one.item === item.id,
  );
  if (choice.item?.id === item.id) return { ...chainOf(item, connection, design), besides: choice.besides };
  if (insisted || ruleOut(item, settingFor(connection, design.job, design.parts))) return undefined;
  return chainOf(item, connection, design);
}

function ownLines(item: Screw | Rivet, chain: Chain, { choice, design, where }: View): ScheduleLine[] {
  if (choice.item?.id === item.id) return [...choice.lines];
  return where.map((at, i) => {
    const held = choice.lines[i];
    return held?.setBy === 'override'
      ? evaluateLine(
          chain,
          { zone: at.zone, spacing: held.spacing_in, each: held.each, setBy: 'override' },
          design,
        )
      : findLine(chain, at, design);
  });
}

const lessSound = (lines: readonly ScheduleLine[], than: readonly ScheduleLine[]): boolean =>
  shortOf(lines) > shortOf(than) ||
  (shortOf(lines) === shortOf(than) && unprovenOf(lines) > unprovenOf(than));

const shortOf = (lines: readonly ScheduleLine[]): number =>
  lines.filter(({ verdict }) => verdict === 'falls short').length;
const unprovenOf = (lines: readonly ScheduleLine[]): number =>
  lines.reduce((sum, line) => sum + line.checks.filter(({ verdict }) => verdict === 'unproven').length, 0);
