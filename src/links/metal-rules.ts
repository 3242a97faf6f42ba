/**
 * Which fastener metals may touch which sheets, as a first gate. Guidance, not strength: each rule says what kind
 * of guidance it is. Where two publications collide, nothing is excluded and both are shown.
 */
import type { Coating, Metal } from '../shelf/metals.ts';

export interface Surroundings {
  /** Distance to salt water in feet; nothing while it is not known. */
  readonly saltWater_ft: number | undefined;
  readonly place: 'rural' | 'town' | 'industrial' | 'animal building' | 'pool hall';
}

export interface FastenerMetal {
  readonly metal: Metal;
  readonly coating: Coating;
}

export type MetalFinding =
  | { readonly kind: 'fits' }
  | { readonly kind: 'conflict'; readonly text: string }
  | { readonly kind: 'ruled out'; readonly because: string };

/** FEMA P-499 and P-55: within this distance of the ocean shoreline clips and fasteners of 300-series stainless. */
export const SALT_LINE_FT = 3000;

const stainless300: readonly Metal[] = ['stainless 304', 'stainless 316', 'bi-metal 304'];
const bare: readonly Coating[] = ['none'];

const out = (because: string): MetalFinding => ({ kind: 'ruled out', because });
const fits: MetalFinding = { kind: 'fits' };

export function metalFinding(fastener: FastenerMetal, sheet: Metal, around: Surroundings): MetalFinding {
  const stainless = stainless300.includes(fastener.metal);
  const bySheet = sheetRule(fastener, sheet, stainless);
  if (bySheet.kind === 'ruled out') return bySheet;
  const nearSea = around.saltWater_ft !== undefined && around.saltWater_ft <= SALT_LINE_FT;
  if (around.place === 'pool hall' && fastener.metal !== 'stainless 316')
    return out(
      'a pool hall wants stainless 316 fasteners (common practice: chlorides crack or pit lesser grades)',
    );
  if (nearSea) return seaRule(fastener, sheet, stainless);
  return bySheet;
}

function sheetRule(fastener: FastenerMetal, sheet: Metal, stainless: boolean): MetalFinding {
  const { metal } = fastener;
  const steel = metal === 'carbon steel' || metal === 'stainless 410';
  if (metal === 'carbon steel' && bare.includes(fastener.coating))
    return out('bare carbon steel rusts under any roof; give it a coating');
  if (sheet === 'copper' && !stainless && metal !== 'brass' && metal !== 'copper')
    return out(
      `${metal} beside copper is eaten by it; copper takes copper, brass or 300-series stainless (model building code, fasteners for metal panels)`,
    );
  if (sheet === 'aluminium' && !stainless && metal !== 'aluminium')
    return out(
      `aluminium sheet takes aluminium or 300-series stainless only (federal guide specification, structural standing seam)`,
    );
  if ((sheet === 'stainless 304' || sheet === 'stainless 316') && !stainless)
    return out('stainless sheet takes stainless fasteners, or the fastener is eaten (model building code)');
  if (sheet === 'zinc' && steel && fastener.coating !== 'hot-dip zinc')
    return out('zinc sheet takes stainless or hot-dip galvanized fasteners (common practice)');
  if (
    (sheet === 'galvanized steel' ||
      sheet === 'aluminium-zinc coated steel' ||
      sheet === 'zinc' ||
      sheet === 'aluminium') &&
    (metal === 'copper' || metal === 'brass')
  )
    return out(`${metal} on ${sheet} eats the sheet (model building code and sheet makers' association)`);
  return fits;
}

function seaRule(fastener: FastenerMetal, sheet: Metal, stainless: boolean): MetalFinding {
  if (sheet === 'aluminium-zinc coated steel') {
    const text = stainless
      ? `within ${SALT_LINE_FT} ft of salt water federal guidance (FEMA P-499) asks for 300-series stainless, while sheet makers' guidance warns that stainless eats bare aluminium-zinc sheet there: keep the contact dry or washer-isolated, or choose an aluminium panel`
      : `within ${SALT_LINE_FT} ft of salt water federal guidance (FEMA P-499) asks for 300-series stainless; sheet makers' guidance asks for coated carbon steel on aluminium-zinc sheet: both are shown, the buyer decides`;
    if (!stainless && !longLife.includes(fastener.coating))
      return out(
        `${fastener.coating === 'none' ? `bare ${fastener.metal}` : `a ${fastener.coating} finish`} is short-lived within ${SALT_LINE_FT} ft of salt water`,
      );
    return { kind: 'conflict', text };
  }
  if (!stainless && fastener.metal !== 'aluminium')
    return out(
      `within ${SALT_LINE_FT} ft of salt water clips and fasteners of 300-series stainless are asked for (FEMA P-499); this one is ${fastener.metal}`,
    );
  return fits;
}

const longLife: readonly Coating[] = [
  'zinc flake 1000 h',
  'organic topcoat over zinc 1000 h',
  'hot-dip zinc',
  'zinc-aluminium cast head',
];

/** Fasteners in preservative-treated wood by the model codes' wording. */
export function treatedWoodFinding(
  fastener: FastenerMetal,
  treatment: 'none' | 'borate' | 'copper',
): MetalFinding {
  if (treatment !== 'copper') return fits;
  if (fastener.metal === 'aluminium') return out('aluminium may not touch copper-treated wood');
  if (
    stainless300.includes(fastener.metal) ||
    fastener.metal === 'copper' ||
    fastener.metal === 'brass' ||
    fastener.coating === 'hot-dip zinc'
  )
    return fits;
  if (fastener.coating === 'mechanical zinc class 55')
    return {
      kind: 'conflict',
      text: 'mechanically galvanized class 55 screws in copper-treated wood pass the wording of the IRC (R317.3) and fail that of the IBC (2304.10): hot-dip zinc or stainless satisfies both',
    };
  return out(
    `copper-treated wood asks for hot-dip zinc (ASTM A153) or stainless fasteners (IBC 2304.10, IRC R317.3); this one has ${fastener.coating}`,
  );
}
