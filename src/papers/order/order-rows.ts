/** The take-off as rows of an order, the same for CSV and XLSX. */
import type { Answer } from '../../answer/answer.ts';

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

export function orderRows({ takeoff }: Answer): OrderRow[] {
  return takeoff.lines.map(({ uses, colour, ...line }) => ({
    ...line,
    colour: colour ?? '',
    serves: [...new Set(uses.map((use) => use.connection))].join('; '),
  }));
}

export interface ZoneCountRow {
  readonly item: string;
  readonly connection: string;
  readonly zone: string;
  readonly count: number;
}

/** Counts before waste, item by connection by zone. */
export function zoneCountRows({ takeoff, field }: Answer): ZoneCountRow[] {
  return takeoff.lines.flatMap(({ item, uses }) =>
    uses.flatMap(({ connection, zones }) =>
      zones.map(({ zone, count }) => ({ item, connection, zone: field.zones[zone]?.label ?? '', count })),
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

export function scheduleRows({ choices, field }: Answer): ScheduleRow[] {
  return choices.flatMap(({ connection, item, lines }) =>
    lines.map((line) => ({
      connection: connection.id,
      item: item?.id ?? '',
      zone: field.zones[line.zone]?.label ?? '',
      spacing_in: line.spacing_in,
      each: line.each,
      load_lbf: line.fastenerLoad_lbf,
      governing: line.checks[line.governing]?.capacity.link ?? '',
      ratio: line.ratio,
      verdict: line.verdict,
    })),
  );
}
