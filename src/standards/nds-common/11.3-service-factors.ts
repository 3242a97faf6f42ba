/**
 * NDS 11.3.2 to 11.3.4 and Appendix N: load duration, wet service, temperature, and the LRFD factors.
 * Values quoted from the 2018 edition; the time effect factors λ of Table N3 and the wet factor of head
 * pull-through (taken as 0.7) are from memory.
 */
import { type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { note, taken } from '../../trace/step.ts';
import {
  atFabricationInput,
  inServiceInput,
  type Load,
  loadInput,
  type Moisture,
  methodInput,
  temperatureInput,
} from './conditions.ts';
import { citation, type NdsEdition } from './edition.ts';

const CD: Readonly<Record<Load, Ratio>> = {
  permanent: ratio(0.9),
  'occupancy live': ratio(1),
  snow: ratio(1.15),
  'roof live': ratio(1.25),
  'wind or earthquake': ratio(1.6), // the ceiling for connections
};
/** Table N3: 1.4D, then combinations led by occupancy, snow or roof live load, then wind or earthquake. */
const λ: Readonly<Record<Load, Ratio>> = {
  permanent: ratio(0.6),
  'occupancy live': ratio(0.8),
  snow: ratio(0.8),
  'roof live': ratio(0.8),
  'wind or earthquake': ratio(1),
};

/** Load duration factor, ASD only. It does not apply where the steel of the fastener or plate governs. */
export function makeLoadDuration(edition: NdsEdition) {
  const cites = citation(edition, 'Table 2.3.2, 11.3.2');
  return clause({
    id: `${edition.id}/11.3.2-load-duration`,
    title: 'load duration factor of a connection',
    cites,
    inputs: { load: loadInput },
    gives: { symbol: 'CD', unit: '1' },
    compute: ({ load }, trace) =>
      taken(trace, { clause: cites, symbol: 'CD', unit: '1', because: load }, CD[load]),
  });
}

/** What turns a reference value into a design value for the method: CD in ASD, K_F φ λ in LRFD, never both. */
export function makeMethodFactor(edition: NdsEdition) {
  const cites = citation(edition, 'Table 11.3.1, Appendix N');
  const loadDuration = makeLoadDuration(edition);
  const product = equation({
    clause: cites,
    gives: 'Kf',
    unit: '1',
    from: { KF: '1', φ: '1', λ: '1' },
    is: 'KF * φ * λ',
  });
  return clause({
    id: `${edition.id}/11.3.1-method-factor`,
    title: 'factor of the design method on a reference value of a connection',
    cites,
    inputs: { method: methodInput, load: loadInput },
    gives: { symbol: 'Kf', unit: '1' },
    compute: ({ method, load }, trace) => {
      if (method === 'ASD') return loadDuration({ load }, trace);
      const of = (symbol: string, table: string, because: string, value: Ratio) =>
        taken(trace, { clause: citation(edition, table), symbol, unit: '1', because }, value);
      return product(
        {
          KF: of('KF', 'Table N1', 'connections', ratio(3.32)),
          φ: of('φ', 'Table N2', 'connections', ratio(0.65)),
          λ: of('λ', 'Table N3', load, λ[load]),
        },
        trace,
      );
    },
  });
}

interface Wetting {
  readonly D: number;
  readonly atFabrication: Moisture;
  readonly inService: Moisture;
  readonly arrangement: 'one fastener or one row along the grain' | 'other';
}

const wetOnly = ({ inService }: Wetting): number => (inService === 'wet' ? 0.7 : 1);

/** Wood that dries around a lateral fastener; small ones suffer less than rows of large ones. */
function lateralWetting({ D, atFabrication, inService, arrangement }: Wetting): number {
  if (inService === 'wet') return 0.7;
  if (atFabrication === 'dry') return 1;
  if (D < 0.25) return 0.7;
  return arrangement === 'other' ? 0.4 : 1;
}

const wetFactors = {
  lateral: lateralWetting,
  'withdrawal of screw or lag': wetOnly,
  'withdrawal of smooth nail': ({ atFabrication, inService }: Wetting) =>
    atFabrication === inService ? 1 : 0.25,
  'withdrawal of ring-shank nail': () => 1,
  'head pull-through': wetOnly,
} as const;

export const wetServiceKinds = Object.keys(wetFactors) as readonly (keyof typeof wetFactors)[];

/** Table 11.3.3. A smooth nail loses three quarters when the wood dries or wets after driving; a screw does not. */
export function makeWetService(edition: NdsEdition) {
  const cites = citation(edition, 'Table 11.3.3');
  return clause({
    id: `${edition.id}/11.3.3-wet-service`,
    title: 'wet service factor of a connection',
    cites,
    inputs: {
      kind: oneOf(wetServiceKinds, 'what is loaded and how'),
      D: needs('in', 'nominal diameter', { above: 0 }),
      atFabrication: atFabricationInput,
      inService: inServiceInput,
      arrangement: oneOf(
        ['one fastener or one row along the grain', 'other'],
        'for lateral load, 1/4 in and larger',
      ),
    },
    gives: { symbol: 'CM', unit: '1' },
    compute: (values, trace) => {
      const { kind, atFabrication, inService } = values;
      if (kind === 'head pull-through' && inService === 'wet')
        note(trace, cites, 'The wet factor of head pull-through was not seen in print; 0.7 is taken.');
      const because = `${kind}, ${atFabrication} when driven, ${inService} in service`;
      return taken(
        trace,
        { clause: cites, symbol: 'CM', unit: '1', because },
        ratio(wetFactors[kind](values)),
      );
    },
  });
}

/** Table 11.3.4: dry, wet. Under a dark metal roof the deck passes 125 F by day: judge whether that is sustained. */
const Ct = {
  'to 100 F': { dry: ratio(1), wet: ratio(1) },
  '100 to 125 F': { dry: ratio(0.8), wet: ratio(0.7) },
  '125 to 150 F': { dry: ratio(0.7), wet: ratio(0.5) },
} as const;

export function makeTemperature(edition: NdsEdition) {
  const cites = citation(edition, 'Table 11.3.4');
  return clause({
    id: `${edition.id}/11.3.4-temperature`,
    title: 'temperature factor of a connection',
    cites,
    inputs: { temperature: temperatureInput, inService: inServiceInput },
    gives: { symbol: 'Ct', unit: '1' },
    compute: ({ temperature, inService }, trace) =>
      taken(
        trace,
        { clause: cites, symbol: 'Ct', unit: '1', because: `${temperature}, ${inService}` },
        Ct[temperature][inService],
      ),
  });
}
