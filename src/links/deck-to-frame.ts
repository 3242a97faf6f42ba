/**
 * The deck that holds the screws must itself be held: nails of a wood deck, or the fastening of an old steel deck.
 * On purlins the screw goes into the framing itself and this link does not exist.
 */
import type { SupportInput } from '../job/cover-input.ts';
import { known } from '../job/stated.ts';
import { specificGravityOf } from '../materials/wood-species.ts';
import { inch, ratio } from '../quantities/quantity.ts';
import type { Item, Nail } from '../shelf/item.ts';
import type { WoodEdition } from '../standards/nds-common/wood-edition.ts';
import { isRefusal, refusalText } from '../trace/refusal.ts';
import type { Trace } from '../trace/step.ts';
import { LRFD_OVER_ASD } from './own-test.ts';
import type { Capacity } from './verdict.ts';

export interface DeckContext {
  readonly support: SupportInput;
  readonly items: readonly Item[];
  readonly wood: WoodEdition;
  readonly method: 'ASD' | 'LRFD';
}

type NailedDeck = Extract<SupportInput, { kind: 'plywood' | 'OSB' | 'lumber deck' }>;
type SteelDeck = Extract<SupportInput, { kind: 'steel deck' }>;

const base = { link: 'deck to frame', of: 'pressure', unit: 'psf' } as const;

export function deckToFrame(context: DeckContext, trace?: Trace): Capacity | undefined {
  const { support } = context;
  if (support.kind === 'plywood' || support.kind === 'OSB' || support.kind === 'lumber deck')
    return nailedDeck(support, context, trace);
  return support.kind === 'steel deck' ? steelDeck(support, context.method) : undefined;
}

const unproven = (because: string, cites = 'no deck fastening given'): Capacity => ({
  ...base,
  value: undefined,
  evidence: 'assumed',
  cites,
  because,
  remarks: [],
});

function nailedDeck(support: NailedDeck, context: DeckContext, trace: Trace | undefined): Capacity {
  const nailing = known(support.nailing);
  if (!nailing) {
    const asked = support.nailing?.standing === 'asked' ? ` (asked: ${support.nailing.question})` : '';
    return unproven(`how the deck is nailed to the framing is not known${asked}`);
  }
  const nail = context.items.find((item): item is Nail => item.kind === 'nail' && item.id === nailing.nail);
  if (!nail)
    return unproven(
      `${nailing.nail} holds the deck but is no nail; its uplift capacity is not computed here`,
    );
  const thickness = known(support.thickness);
  const framing = specificGravityOf(nailing.framingSpecies);
  const panel =
    'specificGravity' in support
      ? known(support.specificGravity)
      : specificGravityOf(known(support.species) ?? '');
  if (thickness === undefined || framing === undefined || panel === undefined)
    return unproven('deck thickness, panel or framing wood is not known', context.wood.name);
  const into = nail.length - thickness;
  const perNail = context.wood.nailedSheathing(
    {
      Gframing: ratio(framing),
      Gpanel: ratio(panel),
      D: inch(nail.diameter),
      DH: inch(nail.headDiameter),
      tns: inch(thickness),
      pt: inch(nail.shank === 'ring' ? Math.min(into, nail.ringLength) : into),
      shank: nail.shank,
      atFabrication: support.moisture,
      inService: support.moisture,
      temperature: 'to 100 F',
      method: context.method,
      load: 'wind or earthquake',
    },
    trace,
  );
  if (isRefusal(perNail)) return unproven(refusalText(perNail), perNail.clause);
  // Field nails carry the middle of the sheet: the wider spacing of edge and field decides.
  const area = (Math.max(nailing.edge, nailing.field) * nailing.framing) / 144;
  return {
    ...base,
    value: perNail / area,
    area_ft2: area,
    evidence: 'equation of a standard',
    cites: `${context.wood.name} 12.2.3, 12.2.5`,
    remarks: [
      `The deck is held by ${nail.designation} nails, ${nailing.edge} in at edges and ${nailing.field} in the field, on framing ${nailing.framing} in apart.`,
    ],
    ...(trace ? { trace } : {}),
  };
}

function steelDeck(support: SteelDeck, method: 'ASD' | 'LRFD'): Capacity {
  const fastening = known(support.fastening);
  if (!fastening) {
    const asked = support.fastening?.standing === 'asked' ? ` (asked: ${support.fastening.question})` : '';
    return unproven(`how the steel deck is fastened to the frame is not known${asked}`);
  }
  return {
    ...base,
    value: fastening.allowable * (method === 'LRFD' ? LRFD_OVER_ASD : 1),
    evidence: 'published test',
    cites: fastening.source,
    remarks: [],
  };
}
