/**
 * Specific gravity of sawn lumber for connections: NDS Table 12.3.3A, oven-dry weight and oven-dry volume.
 * Published, two public copies that agree; the table is the same in the 2018 and 2024 editions where seen.
 * The wrong species is the largest single error of a wood connection (the screw value goes with the square), so an
 * unknown name gives nothing: there is no default species.
 */
export interface WoodSpecies {
  /** Species combination as the table prints it. */
  readonly species: string;
  /** Specific gravity for connection design. */
  readonly G: number;
  readonly origin: 'published' | 'memory';
  readonly source: string;
  /** Short forms in common use, besides the name. */
  readonly short: readonly string[];
}

const source = 'NDS Table 12.3.3A';
const row = (species: string, G: number, ...short: readonly string[]): WoodSpecies => ({
  species,
  G,
  origin: 'published',
  source,
  short,
});

export const woodSpecies: readonly WoodSpecies[] = [
  row('Alaska Cedar', 0.47),
  row('Alaska Hemlock', 0.46),
  row('Alaska Spruce', 0.41),
  row('Alaska Yellow Cedar', 0.46),
  row('Aspen', 0.39),
  row('Balsam Fir', 0.36),
  row('Beech-Birch-Hickory', 0.71),
  row('Coast Sitka Spruce', 0.39),
  row('Cottonwood', 0.41),
  row('Douglas Fir-Larch', 0.5, 'DF-L', 'DFL', 'D Fir-L', 'Doug Fir-Larch'),
  row('Douglas Fir-Larch (North)', 0.49, 'DF-L(N)', 'D Fir-L(N)', 'DF-L North'),
  row('Douglas Fir-South', 0.46, 'DF-South', 'DF-S', 'DFS'),
  row('Eastern Hemlock', 0.41),
  row('Eastern Hemlock-Tamarack', 0.41, 'EHT'),
  row('Eastern Hemlock-Tamarack (North)', 0.47, 'EHT(N)'),
  row('Eastern Softwoods', 0.36),
  row('Eastern Spruce', 0.41),
  row('Eastern White Pine', 0.36, 'EWP'),
  row('Engelmann Spruce-Lodgepole Pine', 0.38, 'ES-LP'),
  row('Hem-Fir', 0.43, 'HF'),
  row('Hem-Fir (North)', 0.46, 'HF(N)', 'Hem-Fir North'),
  row('Mixed Maple', 0.55),
  row('Mixed Oak', 0.68),
  row('Mixed Southern Pine', 0.51, 'Mixed SP', 'MSP'),
  row('Mountain Hemlock', 0.47),
  row('Northern Pine', 0.42),
  row('Northern Red Oak', 0.68),
  row('Northern Species', 0.35),
  row('Northern White Cedar', 0.31),
  row('Ponderosa Pine', 0.43),
  row('Red Maple', 0.58),
  row('Red Oak', 0.67),
  row('Red Pine', 0.44),
  row('Redwood', 0.37),
  row('Sitka Spruce', 0.43),
  row('Southern Pine', 0.55, 'SP', 'SYP', 'Southern Yellow Pine'),
  row('Spruce-Pine-Fir', 0.42, 'SPF', 'S-P-F'),
  row('Spruce-Pine-Fir (South)', 0.36, 'SPF(S)', 'SPF-S', 'SPFS', 'SPF South'),
  row('Western Cedars', 0.36),
  row('Western Cedars (North)', 0.35),
  row('Western Hemlock', 0.47),
  row('Western Hemlock (North)', 0.46),
  row('Western Juniper', 0.42),
  row('Western White Pine', 0.4),
  row('Western Woods', 0.36),
  row('White Oak', 0.73),
  row('Yellow Poplar', 0.43),
];

// "DF-L (N)", "df l(n)" and "DFLN" would be one; "Spruce-Pine-Fir (South)" and "Spruce-Pine-Fir South" too.
const plain = (name: string): string => name.toLowerCase().replace(/[^a-z]/g, '');

/** The row of a species by its name or a short form in common use; nothing when it is not in the table. */
export function findSpecies(name: string): WoodSpecies | undefined {
  const wanted = plain(name);
  if (wanted === '') return undefined;
  return woodSpecies.find((row) => [row.species, ...row.short].some((each) => plain(each) === wanted));
}

/**
 * Specific gravity of a species for connection design, or nothing when it is not in the table.
 * @example specificGravityOf('SYP') // 0.55
 */
export function specificGravityOf(name: string): number | undefined {
  return findSpecies(name)?.G;
}
