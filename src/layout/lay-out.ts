/** Every fastener of every connection, plane by plane. */

import type { Design } from '../choose/design.ts';
import type { ConnectionChoice } from '../choose/schedule.ts';
import { supportsOf } from '../choose/where.ts';
import type { Connection } from '../connections/connection.ts';
import { exposed } from '../connections/list-connections.ts';
import type { Plane } from '../roof/roof.ts';
import { type BorderLine, borderLines, upLines } from '../roof/runs.ts';
import type { FastenerSet } from './fastener-set.ts';
import { layEdges } from './lay-edge.ts';
import { type FieldLine, layField } from './lay-field.ts';
import { layEndLaps, layTrimJoints } from './lay-pieces.ts';
import { type PlaneZones, planeZones } from './line-stretches.ts';

export function layOut(choices: readonly ConnectionChoice[], design: Design): FastenerSet[] {
  return design.roof.planes.flatMap((plane) => {
    const zones = planeZones(plane, design.field.pieces);
    return choices.flatMap((choice) => {
      const set = layConnection(choice, plane, zones, design);
      return set && set.count > 0 ? [set] : [];
    });
  });
}

function layConnection(
  { connection, lines }: ConnectionChoice,
  plane: Plane,
  zones: PlaneZones,
  design: Design,
): FastenerSet | undefined {
  const { placement } = connection;
  const spacings = new Map(lines.map((line) => [line.zone, line.spacing_in]));
  const counts = new Map(lines.map((line) => [line.zone, line.each]));
  // Every zone a row meets is scheduled; the fallback only guards a hairline strip of dust.
  const tightest = Math.min(...lines.map((line) => line.spacing_in));
  const spacingOf = (zone: number) => spacings.get(zone) ?? tightest;
  const eachOf = (zone: number) => counts.get(zone) ?? connection.each;
  if (placement.by === 'piece' || lines.length === 0) return undefined;
  if (placement.by === 'trim joints' || placement.by === 'end laps') {
    if (placement.plane !== plane.id) return undefined;
    return placement.by === 'trim joints'
      ? layTrimJoints(connection.id, placement, plane, design.field.pieces)
      : layEndLaps(
          connection.id,
          placement,
          plane,
          zones,
          design.job.panel.startOffset,
          supportsOf(design, plane),
        );
  }
  if (placement.by === 'edge') {
    const edges = plane.edges.filter((edge) => edge.tag === placement.tag);
    return layEdges({
      connection: connection.id,
      plane,
      pieces: design.field.pieces,
      edges,
      rows: placement.rows,
      spacingOf,
      each: connection.each,
      inset: connection.duty === 'bracket' ? BRACKET_ROW : TRIM_ROW,
    });
  }
  return layField({
    connection: connection.id,
    plane,
    zones,
    lines: linesOf(connection, plane, design),
    spacingOf,
    eachOf,
    ends: placement.by === 'side lap' ? HELD : design.job.ends,
    supports:
      placement.by === 'field' && placement.along === 'supports' ? supportsOf(design, plane) : undefined,
    endFactor:
      placement.by === 'field' && placement.lines === 'ribs' ? endFactor(lines.map((line) => line.each)) : 1,
  });
}

/** Of the first row of a trim and of a bracket's screws from the edge, apart from each other, in inches (common practice). */
const TRIM_ROW = 1.5;
const BRACKET_ROW = 3;

/** Lap screws stand between the rows at eave and ridge, which hold the lap there. */
const HELD = { first: 0, last: 0, held: true } as const;

/** Eave and ridge rows get both sides of each rib (common practice), unless the field has that already. */
const endFactor = (each: readonly number[]): number => (Math.min(...each) > 1 ? 1 : 2);

/** Of the fastener line along a border from it, clear of the trim's own row, and least distance between two lines, in inches. */
const BORDER_INSET = 2.5;
const LINES_APART = 3;

/** Seams or ribs, and in the field also the side borders, where the cut or outer edges of runs are held. */
function linesOf({ placement }: Connection, plane: Plane, { job }: Design): FieldLine[] {
  const pitch =
    placement.by === 'field' || placement.by === 'side lap' ? placement.pitch_in : job.panel.coverage;
  const offset =
    exposed(job) && placement.by === 'field' ? job.panel.startOffset % pitch : job.panel.startOffset;
  const lines: FieldLine[] = upLines(plane, pitch, offset).map(({ u }) => ({ u }));
  if (placement.by !== 'field') return lines;
  const borders = borderLines(plane, BORDER_INSET);
  const held = borders.map((border) => ({ ...border, border: true as const }));
  return [...held, ...lines.flatMap((line) => besides(line, borders))].sort((a, b) => a.u - b.u);
}

/** What is left of a line where border lines run too near beside it. */
function besides(line: FieldLine, borders: readonly BorderLine[]): FieldLine[] {
  const near = borders
    .filter((border) => Math.abs(border.u - line.u) <= LINES_APART)
    .sort((a, b) => a.low - b.low);
  const parts: FieldLine[] = [];
  let low = Number.NEGATIVE_INFINITY;
  for (const border of near) {
    if (border.low > low) parts.push({ u: line.u, low, high: border.low });
    low = Math.max(low, border.high);
  }
  return [...parts, { u: line.u, low, high: Number.POSITIVE_INFINITY }];
}
