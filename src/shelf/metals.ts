/** Metals of fasteners and sheets, as the trade names them; the vocabulary of every metal rule. */
export const metals = [
  'carbon steel',
  'stainless 304',
  'stainless 316',
  'stainless 410',
  'bi-metal 304',
  'aluminium',
  'copper',
  'zinc',
  'galvanized steel',
  'aluminium-zinc coated steel',
  'brass',
] as const;
export type Metal = (typeof metals)[number];

export const coatings = [
  'none',
  'zinc electroplate',
  'mechanical zinc class 55',
  'hot-dip zinc',
  'zinc flake 1000 h',
  'organic topcoat over zinc 1000 h',
  'zinc-aluminium cast head',
  'painted',
] as const;
export type Coating = (typeof coatings)[number];
