/**
 * The zones of a roof figure as rules for whoever cuts the plan. A point of the roof takes the zone of the first
 * rule it meets. Distances are horizontal, square to the edge, from the outer edge including the overhang; the
 * edges are those of the point's own plane, 'outside' those of the whole roof.
 */
export interface Band {
  readonly edge: 'eave' | 'high edge' | 'rake' | 'ridge' | 'hip' | 'hip or ridge' | 'outside';
  /** The band reaches this many times the measure from the edge. */
  readonly within: number;
  /** Edge strip width a, or mean roof height h. */
  readonly measure: 'a' | 'h';
  /** On both bands of a group: the two edges meet in one outside corner, either way round. */
  readonly corner?: true;
}

export interface ZoneRule {
  readonly zone: string;
  /** Any group holds when all its bands hold. No group at all: the rest of the roof. */
  readonly where: readonly (readonly Band[])[];
}

export interface ZonePlan {
  readonly rules: readonly ZoneRule[];
  /** How an unclear plan was read, to be printed wherever its zones are. */
  readonly reading?: string;
}

export const within = (edge: Band['edge'], times: number, measure: Band['measure'] = 'a'): Band => ({
  edge,
  within: times,
  measure,
});

/** At an outside corner: within the one distance of one edge and the other of the next, either way round. */
export const atCorner = (one: number, other: number, measure: Band['measure']): readonly Band[] => [
  { edge: 'outside', within: one, measure, corner: true },
  { edge: 'outside', within: other, measure, corner: true },
];

export const rest = (zone: string): ZoneRule => ({ zone, where: [] });
