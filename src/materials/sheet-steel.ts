/**
 * Sheet steel by the names a job uses: gauges and framing thicknesses to base metal, grades to strengths.
 * Thickness is of the base metal: a galvanized gauge is 0.0037 in thicker over its coating, 20 % of a 26 gauge sheet.
 * Strengths are as specified; for design see the low-ductility clause of AISI S100 A3.1 (SS80 counts 61.5 ksi, not 82).
 */
import { type Inch, inch, type Psi, psi } from '../quantities/quantity.ts';
import type { Ductility } from '../standards/aisi-s100-common/sheet-strength.ts';

export type Origin = 'published' | 'computed' | 'memory';

export interface SteelThickness {
  /** As written on orders: "24 ga", "54 mil". */
  readonly name: string;
  /** Design thickness of the base metal. */
  readonly designThickness: Inch;
  /** Least base metal that may be delivered: 0.95 of the design thickness. */
  readonly minimumThickness: Inch;
  /** Nominal thickness of the galvanized sheet of this gauge, coating included; recalled from 22 gauge on. */
  readonly coatedThickness?: Inch;
  readonly source: string;
  readonly origin: Origin;
}

const LEAST_SHARE = 0.95;
const toTenthMil = (value: number): Inch => inch(Number(value.toFixed(4)));

const MSG = "Manufacturers' Standard Gauge for uncoated sheet steel";
const published = `${MSG}, public gauge tables`;
/** The gauge is a weight: thickness = weight per square foot / 41.82, rounded to a tenth of a mil. */
const byWeight = `${MSG}, from the weight of the gauge over 41.82 lb/ft² per inch`;

/** Gauge, design thickness in, coated thickness in, how the design thickness is known. */
const gaugeRows: readonly (readonly [number, number, number | undefined, 'published' | 'computed'])[] = [
  [10, 0.1345, undefined, 'published'],
  [12, 0.1046, 0.1084, 'published'],
  [13, 0.0897, undefined, 'published'],
  [14, 0.0747, 0.0785, 'published'],
  [15, 0.0673, undefined, 'published'],
  [16, 0.0598, 0.0635, 'published'],
  [17, 0.0538, undefined, 'computed'],
  [18, 0.0478, 0.0516, 'published'],
  [19, 0.0418, undefined, 'computed'],
  [20, 0.0359, 0.0396, 'published'],
  [21, 0.0329, undefined, 'computed'],
  [22, 0.0299, 0.0336, 'published'],
  [23, 0.0269, undefined, 'computed'],
  [24, 0.0239, 0.0276, 'published'],
  [25, 0.0209, undefined, 'computed'],
  [26, 0.0179, 0.0217, 'published'],
  [27, 0.0164, undefined, 'computed'],
  [28, 0.0149, 0.0187, 'published'],
  [29, 0.0135, 0.0172, 'published'],
  [30, 0.012, 0.0157, 'published'],
];

const gauges: readonly SteelThickness[] = gaugeRows.map(([gauge, design, coated, origin]) => ({
  name: `${gauge} ga`,
  designThickness: inch(design),
  minimumThickness: toTenthMil(LEAST_SHARE * design),
  ...(coated === undefined ? {} : { coatedThickness: inch(coated) }),
  source: origin === 'published' ? published : byWeight,
  origin,
}));

/** Mil, least base metal in, design thickness in, how the least is known. Design = least / 0.95 (AISI S240, A1003). */
const framingRows: readonly (readonly [number, number, number, Origin])[] = [
  [18, 0.0179, 0.0188, 'published'],
  [27, 0.0269, 0.0283, 'memory'],
  [30, 0.0296, 0.0312, 'published'],
  [33, 0.0329, 0.0346, 'published'],
  [43, 0.0428, 0.0451, 'published'],
  [54, 0.0538, 0.0566, 'published'],
  [68, 0.0677, 0.0713, 'published'],
  [97, 0.0966, 0.1017, 'published'],
  [118, 0.118, 0.1242, 'published'],
];

const framing: readonly SteelThickness[] = framingRows.map(([mil, minimum, design, origin]) => ({
  name: `${mil} mil`,
  designThickness: inch(design),
  minimumThickness: inch(minimum),
  source: 'AISI S240 / ASTM A1003 framing thickness, public gauge page',
  origin,
}));

export const steelThicknesses: readonly SteelThickness[] = [...gauges, ...framing];

export interface SteelGrade {
  /** Short name: "SS50"; the class where one name has several strengths. */
  readonly name: string;
  readonly Fy: Psi;
  readonly Fu: Psi;
  /** Specified elongation in 2 in, percent; nothing where none is specified. */
  readonly elongation: number | undefined;
  readonly ductility: Ductility;
  readonly source: string;
  readonly origin: Origin;
}

const coated = 'ASTM A653, A792 structural steel grades';

/** Name, Fy ksi, Fu ksi, elongation %, class, origin. SS50 without a class is class 1. */
const gradeRows: readonly (readonly [string, number, number, number | undefined, Ductility, Origin])[] = [
  ['SS33', 33, 45, 20, 'normal', 'published'],
  ['SS37', 37, 52, 18, 'normal', 'memory'],
  ['SS40', 40, 55, 16, 'normal', 'memory'],
  ['SS50', 50, 65, 12, 'normal', 'published'],
  ['SS50 class 3', 50, 70, 12, 'normal', 'memory'],
  ['SS50 class 4', 50, 60, 12, 'normal', 'memory'],
  ['SS55', 55, 70, 11, 'normal', 'memory'],
  ['SS60', 60, 70, 10, 'normal', 'memory'],
  ['SS70', 70, 80, 9, 'low', 'memory'],
  ['SS80', 80, 82, undefined, 'grade 80', 'published'],
];

export const steelGrades: readonly SteelGrade[] = gradeRows.map(
  ([name, Fy, Fu, elongation, ductility, origin]) => ({
    name,
    Fy: psi(Fy * 1000),
    Fu: psi(Fu * 1000),
    elongation,
    ductility,
    source: coated,
    origin,
  }),
);

const thicknessByName = new Map(steelThicknesses.map((row) => [row.name, row]));
const gradeByName = new Map(steelGrades.map((row) => [row.name.toLowerCase(), row]));

/**
 * Thickness by its name, or nothing. Reads "24 ga", "24ga", "24 gauge", "24 gage" and "54 mil".
 * @example steelThickness('24 gauge')?.designThickness // 0.0239
 */
export function steelThickness(name: string): SteelThickness | undefined {
  const match = /^(\d+)\s*-?\s*(ga|ga\.|gauge|gage|mil|mils)$/i.exec(name.trim());
  if (!match) return undefined;
  const unit = match[2]?.toLowerCase().startsWith('mil') ? 'mil' : 'ga';
  return thicknessByName.get(`${Number(match[1])} ${unit}`);
}

/**
 * Grade by its name, or nothing. Reads "SS50", "SS 50", "Grade 50", "Gr 50", "SS50 class 1"; case does not matter.
 * @example steelGrade('Grade 80')?.ductility // 'grade 80'
 */
export function steelGrade(name: string): SteelGrade | undefined {
  const match =
    /^(?:ss|structural steel)?\s*-?\s*(?:grade|gr\.?)?\s*(\d+)(?:\s*,?\s*(?:class|cl\.?)\s*(\d))?$/i.exec(
      name.trim(),
    );
  if (!match || /^\d+$/.test(name.trim())) return undefined;
  const base = `ss${match[1]}`;
  return gradeByName.get(match[2] && match[2] !== '1' ? `${base} class ${match[2]}` : base);
}
