/**
 * Plywood and OSB for roof decks: thickness by performance category, specific gravity for bearing and pull-through,
 * span ratings. The decimal thickness of a category is published (product standards PS 1, PS 2, as repeated in
 * public worksheets); the least thickness follows the tolerance of 1/32 in (5 percent above 13/16), from memory.
 */
export type Origin = 'published' | 'computed' | 'memory';

export interface PerformanceCategory {
  readonly category: string;
  readonly thickness_in: number;
  readonly leastThickness_in: number;
  readonly origin: { readonly thickness: Origin; readonly least: Origin };
  readonly source: string;
}

const row = (category: string, thickness: number, least: number): PerformanceCategory => ({
  category,
  thickness_in: thickness,
  leastThickness_in: least,
  origin: { thickness: 'published', least: 'memory' },
  source: 'PS 1 and PS 2, performance categories',
});

export const performanceCategories: readonly PerformanceCategory[] = [
  row('3/8', 0.375, 0.344),
  row('7/16', 0.4375, 0.406),
  row('15/32', 0.469, 0.438),
  row('1/2', 0.5, 0.469),
  row('19/32', 0.594, 0.563),
  row('5/8', 0.625, 0.594),
  row('23/32', 0.719, 0.688),
  row('3/4', 0.75, 0.719),
];

/** The row of a category written as "15/32", "15/32 in" or 15/32". */
export function findCategory(name: string): PerformanceCategory | undefined {
  const wanted = name.trim().replace(/\s*(in\.?|inch|")$/i, '');
  return performanceCategories.find(({ category }) => category === wanted);
}

export interface PanelGravity {
  readonly panel: 'plywood Structural I or Marine' | 'plywood, other or unknown' | 'OSB';
  /** Specific gravity for bearing and head pull-through of NDS Table 12.3.3B, not for holding a thread. */
  readonly G: number;
  readonly origin: Origin;
  readonly source: string;
}

export const panelGravities: readonly PanelGravity[] = [
  { panel: 'plywood Structural I or Marine', G: 0.5, origin: 'published', source: 'NDS Table 12.3.3B' },
  { panel: 'plywood, other or unknown', G: 0.42, origin: 'published', source: 'NDS Table 12.3.3B' },
  { panel: 'OSB', G: 0.5, origin: 'memory', source: 'NDS Table 12.3.3B, recalled' },
];

/** Specific gravity of a panel for bearing and pull-through. */
export function panelGravityOf(panel: PanelGravity['panel']): number | undefined {
  return panelGravities.find((row) => row.panel === panel)?.G;
}

export interface SpanRating {
  /** Roof span / floor span in inches, of sheathing with the long side across the supports. */
  readonly rating: string;
  /** The category the rating most often comes with; the stamp on the panel governs. */
  readonly category: string;
  readonly origin: Origin;
}

export const spanRatings: readonly SpanRating[] = [
  { rating: '24/16', category: '7/16', origin: 'memory' },
  { rating: '32/16', category: '15/32', origin: 'published' },
  { rating: '40/20', category: '19/32', origin: 'memory' },
  { rating: '48/24', category: '23/32', origin: 'published' },
];
