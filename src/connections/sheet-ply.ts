/** Sheet plies from the names a job uses: gauge or thickness, grade or alloy, to base metal and strengths. */
import type { PanelInput } from '../job/cover-input.ts';
import { known } from '../job/stated.ts';
import { aluminiumAlloy } from '../materials/sheet-aluminium.ts';
import { sheetStrength, sheetThickness } from '../materials/sheet-copper-stainless-zinc.ts';
import { steelGrade, steelThickness } from '../materials/sheet-steel.ts';
import { structuralSteel } from '../materials/structural-steel.ts';
import { isReadFault, readQuantity } from '../quantities/read-quantity.ts';
import type { Metal } from '../shelf/metals.ts';
import type { SheetPly } from './ply.ts';

type SheetMetal = PanelInput['metal'];

export interface SheetNameFault {
  readonly field: 'thickness' | 'grade';
  readonly message: string;
}

/** Faults of the names, for the reader of the job; a name not known yet is none. */
export function isKnownSheet(
  metal: SheetMetal,
  thickness: string | undefined,
  grade: string | undefined,
): SheetNameFault[] {
  const faults: SheetNameFault[] = [];
  if (thickness !== undefined && thicknessOf(metal, thickness) === undefined)
    faults.push({
      field: 'thickness',
      message: `"${thickness}" is no thickness of ${metal} sheet; write ${examples[metal].thickness} or a thickness with its unit, such as "0.032 in"`,
    });
  if (grade !== undefined && strengthOf(metal, grade) === undefined)
    faults.push({
      field: 'grade',
      message: `"${grade}" is no grade of ${metal} sheet known here; write for example ${examples[metal].grade}`,
    });
  return faults;
}

const examples: Readonly<Record<SheetMetal, { readonly thickness: string; readonly grade: string }>> = {
  steel: { thickness: '"24 ga" or "54 mil"', grade: '"SS50" or "A36"' },
  aluminium: { thickness: '"0.032 in"', grade: '"3105-H25"' },
  copper: { thickness: '"20 oz"', grade: '"H00"' },
  stainless: { thickness: '"26 ga"', grade: '"304"' },
  zinc: { thickness: '"0.7 mm"', grade: '"titanium zinc"' },
};

/** Base metal in inches. A thickness written out is taken as base metal. */
function thicknessOf(metal: SheetMetal, name: string): number | undefined {
  const named =
    metal === 'steel'
      ? steelThickness(name)?.designThickness
      : metal === 'aluminium'
        ? undefined
        : sheetThickness(metal, name)?.thickness;
  if (named !== undefined) return named;
  const read = readQuantity(name, 'in');
  return isReadFault(read) || !(read > 0 && read < 1) ? undefined : read;
}

interface Strength {
  readonly Fy: number;
  readonly Fu: number;
  readonly ductility: SheetPly['ductility'];
}

function strengthOf(metal: SheetMetal, name: string): Strength | undefined {
  if (metal === 'steel') {
    const grade = steelGrade(name) ?? structuralSteel(name);
    return (
      grade && { Fy: grade.Fy, Fu: grade.Fu, ductility: 'ductility' in grade ? grade.ductility : 'normal' }
    );
  }
  if (metal === 'aluminium') {
    const alloy = aluminiumAlloy(name);
    return alloy && { Fy: alloy.Fty, Fu: alloy.Ftu, ductility: 'normal' };
  }
  const other = sheetStrength(metal, name);
  return other && { Fy: other.Fy, Fu: other.Fu, ductility: 'normal' };
}

/** The surface the fastener touches: the coating of steel decides which metals may meet. */
function surfaceOf(metal: SheetMetal, coating: PanelInput['coating']): Metal {
  if (metal === 'steel')
    return coating === 'aluminium-zinc'
      ? 'aluminium-zinc coated steel'
      : coating === 'galvanized'
        ? 'galvanized steel'
        : 'carbon steel';
  return metal === 'stainless' ? 'stainless 304' : metal;
}

type BareSheet = Omit<SheetPly, 'role' | 'punched'>;

function sheet(
  name: string,
  family: SheetMetal,
  metal: Metal,
  thickness: string | undefined,
  grade: string | undefined,
): BareSheet {
  const strength = grade === undefined ? undefined : strengthOf(family, grade);
  return {
    kind: 'sheet',
    name,
    family,
    metal,
    thickness_in: thickness === undefined ? undefined : thicknessOf(family, thickness),
    Fu_psi: strength?.Fu,
    Fy_psi: strength?.Fy,
    ductility: strength?.ductility ?? 'unknown',
  };
}

export function panelSheet(panel: PanelInput): BareSheet {
  return sheet(
    'panel',
    panel.metal,
    surfaceOf(panel.metal, panel.coating),
    known(panel.thickness),
    known(panel.grade),
  );
}

/** Decks and purlins: steel whose coating the fastener's head never touches. */
export function steelSheet(
  name: string,
  thickness: string | undefined,
  grade: string | undefined,
): BareSheet {
  return sheet(name, 'steel', 'galvanized steel', thickness, grade);
}

/** A part of known coated steel, such as a bracket. */
export function coatedSteel(name: string, thickness_in: number, Fu_psi: number, Fy_psi: number): BareSheet {
  return {
    kind: 'sheet',
    name,
    family: 'steel',
    metal: 'galvanized steel',
    thickness_in,
    Fu_psi,
    Fy_psi,
    ductility: 'normal',
  };
}
