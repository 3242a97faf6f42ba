/** Hot-rolled structural steel by specification and grade: least strengths. Recalled from the specifications, not seen. */
import { type Psi, psi } from '../quantities/quantity.ts';

export interface StructuralSteel {
  readonly name: string;
  readonly Fy: Psi;
  readonly Fu: Psi;
  readonly source: string;
  readonly origin: 'memory';
}

const row = (name: string, Fy_ksi: number, Fu_ksi: number, source: string): StructuralSteel => ({
  name,
  Fy: psi(Fy_ksi * 1000),
  Fu: psi(Fu_ksi * 1000),
  source,
  origin: 'memory',
});

export const structuralSteels: readonly StructuralSteel[] = [
  row('A36', 36, 58, 'ASTM A36'),
  row('A572-50', 50, 65, 'ASTM A572 grade 50'),
  row('A992', 50, 65, 'ASTM A992'),
  row('A500-B', 46, 58, 'ASTM A500 grade B, shaped'),
];

const key = (name: string): string =>
  name
    .toUpperCase()
    .replace(/^ASTM/, '')
    .replace(/GRADE|GR\.?/g, '')
    .replace(/[\s-]/g, '');

/** Steel by its name, or nothing; spaces, dashes and case do not matter. */
export function structuralSteel(name: string): StructuralSteel | undefined {
  return structuralSteels.find((one) => key(one.name) === key(name));
}
