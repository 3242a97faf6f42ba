/** The plies of each kind of joint, put together from the panel, the support and what lies between. */
import type { Job } from '../job/job.ts';
import { known } from '../job/stated.ts';
import { specificGravityOf } from '../materials/wood-species.ts';
import type { Clip, Plate } from '../shelf/item.ts';
import type { Metal } from '../shelf/metals.ts';
import type { BuildUp, Ply, SheetPly, SoftPly, WoodPly } from './ply.ts';
import { coatedSteel, panelSheet, steelSheet } from './sheet-ply.ts';

export interface Parts {
  readonly clip: Clip | undefined;
  readonly plate: Plate | undefined;
}

/** Clip base to deck or purlin. The holes of clip and plate are punched: nothing is drilled there. */
export function clipBuildUp(job: Job, parts: Parts): BuildUp {
  const base: SheetPly = {
    kind: 'sheet',
    role: 'clip base',
    name: parts.clip ? `clip ${parts.clip.id}` : 'clip base',
    family: clipFamily(parts.clip?.metal),
    metal:
      parts.clip?.metal === 'carbon steel' || parts.clip === undefined
        ? 'galvanized steel'
        : parts.clip.metal,
    thickness_in: parts.clip?.baseThickness,
    Fu_psi: parts.clip?.tensileStrength,
    Fy_psi: undefined,
    ductility: 'normal',
    punched: true,
  };
  const plate = parts.plate ? [plateSheet(parts.plate)] : [];
  return endingIn([base, ...plate, ...between(job)], supportPly(job));
}

/** Sheet family of a clip base, for the standard that covers it. */
function clipFamily(metal: Metal | undefined): SheetPly['family'] {
  if (metal === 'stainless 304' || metal === 'stainless 316') return 'stainless';
  return metal === 'aluminium' || metal === 'copper' || metal === 'zinc' ? metal : 'steel';
}

/** A panel flange (slotted) or a panel drilled through. */
export function panelBuildUp(job: Job, punched: boolean): BuildUp {
  return endingIn([{ ...panelSheet(job.panel), role: 'panel', punched }, ...between(job)], supportPly(job));
}

/**
 * A trim screwed through what lies on the deck into the support or the edge member.
 * @param punched starters and valley edges come slotted from the shop; face trims are drilled through
 */
export function trimToSupport(job: Job, punched: boolean): BuildUp {
  return endingIn([{ ...trimSheet(job), punched }, ...between(job)], edgePly(job));
}

/** On purlins a trim needs a member of its own along the edge; as long as none is named, nothing of it is known. */
function edgePly(job: Job): SheetPly | WoodPly {
  const ply = supportPly(job);
  if (!('spacing' in job.support) || known(job.details.edgeMember) !== undefined) return ply;
  return { ...ply, name: 'edge member (none named between the purlins)', thickness_in: undefined };
}

/** A trim screwed to a wood member of its own, such as a treated sill. */
export function trimToWood(job: Job, wood: WoodPly): BuildUp {
  return endingIn([trimSheet(job)], wood);
}

/** A trim or panel lapped on the panel: two sheets, the lower one holds. */
export function sheetToSheet(job: Job, top: 'panel' | 'trim'): BuildUp {
  const panel = panelSheet(job.panel);
  const upper: SheetPly = top === 'trim' ? trimSheet(job) : { ...panel, role: 'panel', punched: false };
  return { plies: [upper, { ...panel, role: 'second sheet', punched: false }], holding: 1 };
}

/** The lap of two trims. */
export function trimToTrim(job: Job): BuildUp {
  const trim = trimSheet(job);
  return { plies: [trim, { ...trim, role: 'second sheet' }], holding: 1 };
}

/** A bracket of 14 gauge coated steel, punched, on the support. */
export function bracketToSupport(job: Job): BuildUp {
  const bracket: SheetPly = {
    ...coatedSteel('bracket', 0.0747, 45_000, 33_000),
    role: 'trim',
    punched: true,
  };
  return endingIn([bracket, ...between(job)], edgePly(job));
}

function endingIn(above: readonly Ply[], holding: Ply): BuildUp {
  return { plies: [...above, holding], holding: above.length };
}

/** Trims are folded from the panel's own sheet. */
function trimSheet(job: Job): SheetPly {
  return { ...panelSheet(job.panel), role: 'trim', name: 'trim', punched: false };
}

function underlayment(job: Job): SoftPly[] {
  if (!job.underlayment) return [];
  return [
    {
      kind: 'soft',
      role: 'underlayment',
      name: job.underlayment.name,
      thickness_in: job.underlayment.thickness,
      compressiveStrength_psi: undefined,
    },
  ];
}

function between(job: Job): SoftPly[] {
  if (!job.insulation) return underlayment(job);
  const insulation: SoftPly = {
    kind: 'soft',
    role: 'insulation',
    name: job.insulation.name,
    thickness_in: job.insulation.thickness,
    compressiveStrength_psi: known(job.insulation.compressiveStrength),
  };
  return [...underlayment(job), insulation];
}

function plateSheet(plate: Plate): SheetPly {
  return {
    kind: 'sheet',
    role: 'plate',
    name: `bearing plate ${plate.id}`,
    family: 'steel',
    metal: 'galvanized steel',
    thickness_in: plate.thickness,
    Fu_psi: plate.tensileStrength,
    Fy_psi: undefined,
    ductility: 'normal',
    punched: true,
  };
}

/** The ply under everything: what the thread holds in. */
export function supportPly(job: Job): SheetPly | WoodPly {
  const { support } = job;
  switch (support.kind) {
    case 'plywood':
    case 'OSB':
      return {
        kind: 'wood',
        role: 'deck',
        name: `${support.kind} deck`,
        product: support.kind,
        thickness_in: known(support.thickness),
        specificGravity: known(support.specificGravity),
        moisture: support.moisture,
        treatment: support.treatment,
      };
    case 'lumber deck':
      return lumber('deck', 'lumber deck', known(support.thickness), known(support.species), support);
    case 'wood purlins':
      return lumber('purlin', 'wood purlin', known(support.depth), known(support.species), support);
    case 'steel deck':
      return {
        ...steelSheet('steel deck', known(support.thickness), known(support.grade)),
        role: 'deck',
        punched: false,
      };
    default:
      return {
        ...steelSheet(support.kind.replace(/s$/, ''), known(support.thickness), known(support.grade)),
        role: 'purlin',
        punched: false,
      };
  }
}

export function lumber(
  role: 'deck' | 'purlin',
  name: string,
  thickness: number | undefined,
  species: string | undefined,
  { moisture, treatment }: { readonly moisture: 'dry' | 'wet'; readonly treatment: WoodPly['treatment'] },
): WoodPly {
  const gravity = species === undefined ? undefined : specificGravityOf(species);
  return {
    kind: 'wood',
    role,
    name: species ? `${name}, ${species}` : name,
    product: 'lumber',
    thickness_in: thickness,
    specificGravity: gravity,
    moisture,
    treatment,
  };
}
