/** The take-off as rows of an order, the same for CSV and XLSX. */

import type { Answer } from '../../answer/answer.ts';
import type { LinkName } from '../../links/verdict.ts';
import { termOf, zoneName } from '../words/terms.ts';
import { connectionName, type Words, wordsOf } from '../words/words.ts';

export interface OrderRow {
  readonly item: string;
  readonly designation: string;
  readonly kind: string;
  readonly colour: string;
  readonly serves: string;
  readonly count: number;
  readonly withWaste: number;
  readonly pack: number;
  readonly packs: number;
  readonly ordered: number;
  readonly unitPrice: number;
  readonly price: number;
  readonly weight_lbf: number;
}

const en = wordsOf('en');

/** In English unless asked otherwise: that is what programs read. */
export function orderRows({ takeoff }: Answer, words: Words = en): OrderRow[] {
  return takeoff.lines.map(({ uses, colour, ...line }) => ({
    ...line,
    kind: termOf('kind', line.kind, words),
    colour: colour ?? '',
    serves: [...new Set(uses.map((use) => connectionName(use.connection, words)))].join('; '),
  }));
}

export interface ZoneCountRow {
  readonly item: string;
  readonly connection: string;
  readonly zone: string;
  readonly count: number;
}

/** Counts before waste, item by connection by zone. */
export function zoneCountRows({ takeoff, field }: Answer, words: Words = en): ZoneCountRow[] {
  return takeoff.lines.flatMap(({ item, uses }) =>
    uses.flatMap(({ connection, zones }) =>
      zones.map(({ zone, count }) => ({
        item,
        connection: connectionName(connection, words),
        zone: zoneName(field.zones[zone], words),
        count,
      })),
    ),
  );
}

export interface ScheduleRow {
  readonly connection: string;
  readonly item: string;
  readonly zone: string;
  readonly spacing_in: number;
  readonly each: number;
  readonly load_lbf: number | undefined;
  readonly governing: string;
  readonly ratio: number | undefined;
  readonly verdict: string;
}

export function scheduleRows({ choices, field }: Answer, words: Words = en): ScheduleRow[] {
  return choices.flatMap(({ connection, item, lines }) =>
    lines.map((line) => ({
      connection: connectionName(connection.id, words),
      item: item?.id ?? '',
      zone: zoneName(field.zones[line.zone], words),
      spacing_in: line.spacing_in,
      each: line.each,
      load_lbf: line.fastenerLoad_lbf,
      governing: linkName(line.checks[line.governing]?.capacity.link, words),
      ratio: line.ratio,
      verdict: words.verdict[line.verdict],
    })),
  );
}

const linkName = (link: LinkName | undefined, words: Words): string => (link ? words.link[link] : '');
