/** Connections that are alike in everything but their place (the trim joints of each plane) share one page. */
import type { ConnectionChoice, ScheduleLine } from '../../choose/schedule.ts';

export interface ChoiceGroup {
  readonly first: ConnectionChoice;
  readonly all: readonly ConnectionChoice[];
  /** The choice and line that decide: the worst verdict, then the highest ratio of any link. */
  readonly governing: { readonly choice: ConnectionChoice; readonly line: ScheduleLine } | undefined;
}

export function choiceGroups(choices: readonly ConnectionChoice[]): ChoiceGroup[] {
  const groups = new Map<string, ConnectionChoice[]>();
  for (const choice of choices) {
    const [base = ''] = choice.connection.id.split(/,| \d+$/);
    const plies = choice.connection.buildUp.plies.map((ply) => `${ply.name} ${ply.thickness_in}`);
    const key = [base, choice.item?.id, ...plies, choice.conflicts.join(), choice.overridden.join()].join(
      '|',
    );
    const held = groups.get(key);
    if (held) held.push(choice);
    else groups.set(key, [choice]);
  }
  return [...groups.values()].map((all) => ({
    first: all[0] as ConnectionChoice,
    all,
    governing: governingOf(all),
  }));
}

const rank = { 'falls short': 2, unproven: 1, holds: 0 } as const;

const highest = (line: ScheduleLine): number => Math.max(0, ...line.checks.map((check) => check.ratio ?? 0));

function governingOf(all: readonly ConnectionChoice[]): ChoiceGroup['governing'] {
  const places = all.flatMap((choice) => choice.lines.map((line) => ({ choice, line })));
  return places.sort(
    (a, b) => rank[b.line.verdict] - rank[a.line.verdict] || highest(b.line) - highest(a.line),
  )[0];
}
