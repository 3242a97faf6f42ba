/** Words the engine puts into an answer that a paper prints in the language of the job, in English. */
import type { Practice } from '../../connections/connection.ts';
import type { PanelInput, SupportKind } from '../../job/cover-input.ts';
import type { Job } from '../../job/job.ts';
import type { RoofInput } from '../../job/roof-input.ts';
import type { WindInput } from '../../job/wind-input.ts';
import type { headForms, Item, pointForms } from '../../shelf/item.ts';
import type { Coating, Metal } from '../../shelf/metals.ts';

type Listed<K extends string> = Readonly<Record<K, string>>;
type Enclosure = 'enclosed' | 'partially enclosed' | 'partially open' | 'open';

export const enTerms = {
  overhang: 'overhang',
  /** Names the short forms of a roof give its planes. */
  plane: { north: 'north', south: 'south', east: 'east', west: 'west', wing: 'wing', main: 'main' },
  practice: {
    code: 'code',
    'government guidance': 'government guidance',
    'association practice': 'association practice',
    'common practice': 'common practice',
  } satisfies Listed<Practice['kind']>,
  /** Plies by the first words of their names; a species or stock number after them is kept. */
  ply: {
    panel: 'panel',
    trim: 'trim',
    'clip base': 'clip base',
    clip: 'clip',
    'bearing plate': 'bearing plate',
    bracket: 'bracket',
    'plywood deck': 'plywood deck',
    'OSB deck': 'OSB deck',
    'lumber deck': 'lumber deck',
    'steel deck': 'steel deck',
    'wood purlin': 'wood purlin',
    'cold-formed purlin': 'cold-formed purlin',
    'hat channel': 'hat channel',
    'structural steel': 'structural steel',
    'treated sill': 'treated sill',
    'edge member': 'edge member',
    'edge member (none named between the purlins)': 'edge member (none named between the purlins)',
    'self-adhering underlayment': 'self-adhering underlayment',
    'slip sheet': 'slip sheet',
    'rigid polyisocyanurate': 'rigid polyisocyanurate',
  },
  fact: {
    'basic wind speed, strength level': 'basic wind speed, strength level',
    'velocity pressure at mean roof height': 'velocity pressure at mean roof height',
    'mean roof height': 'mean roof height',
    'width of the edge strip': 'width of the edge strip',
  },
  kind: {
    screw: 'screw',
    nail: 'nail',
    rivet: 'rivet',
    clip: 'clip',
    plate: 'plate',
    washer: 'washer',
    bit: 'bit',
  } satisfies Listed<Item['kind']>,
  metal: {
    'carbon steel': 'carbon steel',
    'stainless 304': 'stainless 304',
    'stainless 316': 'stainless 316',
    'stainless 410': 'stainless 410',
    'bi-metal 304': 'bi-metal 304',
    aluminium: 'aluminium',
    copper: 'copper',
    zinc: 'zinc',
    'galvanized steel': 'galvanized steel',
    'aluminium-zinc coated steel': 'aluminium-zinc coated steel',
    brass: 'brass',
  } satisfies Listed<Metal>,
  coating: {
    none: 'none',
    'zinc electroplate': 'zinc electroplate',
    'mechanical zinc class 55': 'mechanical zinc class 55',
    'hot-dip zinc': 'hot-dip zinc',
    'zinc flake 1000 h': 'zinc flake 1000 h',
    'organic topcoat over zinc 1000 h': 'organic topcoat over zinc 1000 h',
    'zinc-aluminium cast head': 'zinc-aluminium cast head',
    painted: 'painted',
  } satisfies Listed<Coating>,
  point: {
    drill: 'drill',
    sharp: 'sharp',
    gimlet: 'gimlet',
    'type 17': 'type 17',
    'chip-free': 'chip-free',
  } satisfies Listed<(typeof pointForms)[number]>,
  head: {
    pancake: 'pancake',
    'low profile': 'low profile',
    'hex washer': 'hex washer',
    flat: 'flat',
    'round washer': 'round washer',
    pan: 'pan',
  } satisfies Listed<(typeof headForms)[number]>,
  /** Inputs that are a choice from a list of the engine. */
  input: {
    system: {
      'standing seam on clips': 'standing seam on clips',
      'nail flange': 'nail flange',
      'exposed ribbed': 'exposed ribbed',
      corrugated: 'corrugated',
    } satisfies Listed<PanelInput['system']>,
    metal: {
      steel: 'steel',
      aluminium: 'aluminium',
      copper: 'copper',
      stainless: 'stainless',
      zinc: 'zinc',
    } satisfies Listed<PanelInput['metal']>,
    coating: { none: 'none', galvanized: 'galvanized', 'aluminium-zinc': 'aluminium-zinc' } satisfies Listed<
      PanelInput['coating']
    >,
    support: {
      plywood: 'plywood',
      OSB: 'OSB',
      'lumber deck': 'lumber deck',
      'wood purlins': 'wood purlins',
      'steel deck': 'steel deck',
      'cold-formed purlins': 'cold-formed purlins',
      'hat channels': 'hat channels',
      'structural steel': 'structural steel',
    } satisfies Listed<SupportKind>,
    enclosure: {
      enclosed: 'enclosed',
      'partially enclosed': 'partially enclosed',
      'partially open': 'partially open',
      open: 'open',
    } satisfies Listed<Enclosure>,
    by: { standard: 'standard', engineer: 'engineer' } satisfies Listed<WindInput['by']>,
    surroundings: {
      rural: 'rural',
      town: 'town',
      industrial: 'industrial',
      'animal building': 'animal building',
      'pool hall': 'pool hall',
    } satisfies Listed<Job['place']['surroundings']>,
    below: { hidden: 'hidden', 'in view': 'in view' } satisfies Listed<Job['place']['below']>,
    form: {
      monoslope: 'monoslope',
      gable: 'gable',
      hip: 'hip',
      joined: 'joined',
      planes: 'planes',
    } satisfies Listed<RoofInput['form']>,
    other: {
      strength: 'strength',
      'like the supports': 'like the supports',
      none: 'none',
      dry: 'dry',
      wet: 'wet',
      borate: 'borate',
      copper: 'copper',
      true: 'true',
      false: 'false',
    },
  },
} as const;
