/** What a crew must know of each kind of joint, from the schedule: item, bit, spacing by zone, number at a place. */

import type { Answer } from '../../answer/answer.ts';
import type { ConnectionChoice, ScheduleLine } from '../../choose/schedule.ts';
import { isPieceMeal } from '../../connections/connection.ts';
import { type Verdict, worst } from '../../links/verdict.ts';
import { tapeLength } from '../print-units.ts';
import { choiceGroups } from '../submittal/groups.ts';
import { zoneName } from '../words/terms.ts';
import { connectionName, type Words, wordsOf } from '../words/words.ts';

export interface CrewRow {
  readonly choice: ConnectionChoice;
  readonly verdict: Verdict;
  readonly names: (words: Words) => string;
  readonly item: string;
  readonly designation: string;
  readonly bit: string;
  /** Zones of one spacing together: "1, 2" and the spacing, or nothing for pieces. */
  readonly spacings: readonly { readonly zones: string; readonly text: string }[];
  /** At each place; the greatest where zones differ. */
  readonly each: number;
  /** How many zones it stands in. */
  readonly zones: number;
}

export function crewRows(answer: Answer): CrewRow[] {
  return choiceGroups(answer.choices).map(({ first, all }) => {
    const lines = all.flatMap((choice) => choice.lines);
    const { item } = first;
    return {
      choice: first,
      verdict: worst(lines.map((line) => line.verdict)),
      names: (words) => namesOf(all, words),
      item: item?.id ?? '–',
      designation: item?.designation ?? '',
      bit: item === undefined ? '' : item.kind === 'screw' ? item.drive : item.hole.drill,
      spacings: isPieceMeal(first.connection.placement) ? [] : spacingsOf(answer, lines),
      zones: new Set(lines.map((line) => line.zone)).size,
      each: Math.max(...lines.map((line) => line.each), first.connection.each),
    };
  });
}

/** "trim joints", without the list of planes when there are several. */
function namesOf(all: readonly ConnectionChoice[], words: Words): string {
  const [first] = all;
  if (!first) return '';
  const id = first.connection.id;
  return connectionName(all.length > 1 ? (id.split(/,| \d+$/)[0] ?? id) : id, words);
}

function spacingsOf(answer: Answer, lines: readonly ScheduleLine[]): CrewRow['spacings'] {
  const zonesBySpacing = new Map<string, string[]>();
  for (const line of lines) {
    const text = tapeLength(line.spacing_in, answer.job.print.units);
    const zone = zoneName(answer.field.zones[line.zone], wordsOf(answer.job.print.language));
    const held = zonesBySpacing.get(text);
    if (held) held.push(zone);
    else zonesBySpacing.set(text, [zone]);
  }
  return [...zonesBySpacing].map(([text, zones]) => ({ text, zones: [...new Set(zones)].join(', ') }));
}
