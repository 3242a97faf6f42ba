/**
 * NDS Table 11.3.1 applied to withdrawal: design capacity of one screw, lag or nail in side grain,
 * W' pt = W pt (CD, or KF φ λ) CM Ct. The fastener's own tension on its root section (12.2.1.4, 12.2.2.5) is a
 * separate check without wood factors. Lengths are the caller's: thread in the member for screws, thread without
 * the tip for lags, penetration for smooth nails, ring-shank length in the member for ring-shank nails.
 */
import { inch, type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { type Trace, taken } from '../../trace/step.ts';
import { makeMethodFactor, makeTemperature, makeWetService } from './11.3-service-factors.ts';
import { makeLagReference, makeNailReference, makeScrewReference } from './12.2-reference-withdrawal.ts';
import { grains, makeEndGrain } from './12.5-position-factors.ts';
import {
  atFabricationInput,
  gravityLimits,
  type HoldingMember,
  inServiceInput,
  loadInput,
  memberInput,
  methodInput,
  screwStandardInput,
  shanks,
  temperatureInput,
} from './conditions.ts';
import { citation, type NdsEdition } from './edition.ts';
import { noteHoldingMember } from './screw-allowance.ts';

const G = needs('1', 'specific gravity of the holding member, oven dry', gravityLimits);
const gives = { symbol: "W'pt", unit: 'lbf' } as const;
const service = {
  inService: inServiceInput,
  temperature: temperatureInput,
  method: methodInput,
  load: loadInput,
};

const productOf = (cites: string) =>
  equation({
    clause: cites,
    gives: "W'pt",
    unit: 'lbf',
    from: { W: 'lbf/in', pt: 'in', Kf: '1', CM: '1', Ct: '1' },
    is: 'W * pt * Kf * CM * Ct',
  });

/**
 * Specific gravity to use when a panel holds: its own, but no more than 0.42 for a screw (ratio to the average
 * tests near 5.8) and 0.40 for a nail (the plywood association's equivalent for smooth nails).
 */
function heldBy(
  edition: NdsEdition,
  member: HoldingMember,
  own: Ratio,
  panelLimit: Ratio,
  trace?: Trace,
): Ratio {
  noteHoldingMember(edition, member, trace);
  if (member === 'lumber' || own <= panelLimit) return own;
  const because = `${member} holding: at most ${panelLimit}, the panel's own ${own} is not used`;
  return taken(trace, { clause: citation(edition, '12.1.8'), symbol: 'G', unit: '1', because }, panelLimit);
}

/** One screw in side grain of lumber, or as an allowance in a plywood or OSB deck. */
export function makeScrewWithdrawal(edition: NdsEdition) {
  const cites = citation(edition, '12.2.2, Table 11.3.1');
  const reference = makeScrewReference(edition);
  const methodFactor = makeMethodFactor(edition);
  const wetService = makeWetService(edition);
  const temperatureFactor = makeTemperature(edition);
  const product = productOf(cites);
  return clause({
    id: `${edition.id}/11.3-screw-withdrawal`,
    title: 'withdrawal of one screw, design capacity',
    cites,
    inputs: {
      G,
      D: needs('in', 'nominal diameter', { min: 0.138, max: 0.372 }),
      pt: needs('in', 'thread inside the holding member', { above: 0 }),
      member: memberInput,
      screwStandard: screwStandardInput,
      ...service,
    },
    gives,
    compute: ({ G, D, pt, member, screwStandard, inService, temperature, method, load }, trace) => {
      const W = reference({ G: heldBy(edition, member, G, ratio(0.42), trace), D, screwStandard }, trace);
      if (isRefusal(W)) return W;
      const Kf = methodFactor({ method, load }, trace);
      if (isRefusal(Kf)) return Kf;
      const wet = { D, atFabrication: inService, inService, arrangement: 'other' } as const;
      const CM = wetService({ kind: 'withdrawal of screw or lag', ...wet }, trace);
      if (isRefusal(CM)) return CM;
      const Ct = temperatureFactor({ temperature, inService }, trace);
      return isRefusal(Ct) ? Ct : product({ W, pt, Kf, CM, Ct }, trace);
    },
  });
}

/** One lag screw in lumber, side grain or end grain. */
export function makeLagWithdrawal(edition: NdsEdition) {
  const cites = citation(edition, '12.2.1, Table 11.3.1');
  const reference = makeLagReference(edition);
  const methodFactor = makeMethodFactor(edition);
  const wetService = makeWetService(edition);
  const temperatureFactor = makeTemperature(edition);
  const endGrain = makeEndGrain(edition);
  const product = equation({
    clause: cites,
    gives: "W'pt",
    unit: 'lbf',
    from: { W: 'lbf/in', pt: 'in', Kf: '1', CM: '1', Ct: '1', Ceg: '1' },
    is: 'W * pt * Kf * CM * Ct * Ceg',
  });
  return clause({
    id: `${edition.id}/11.3-lag-withdrawal`,
    title: 'withdrawal of one lag screw, design capacity',
    cites,
    inputs: {
      G,
      D: needs('in', 'nominal diameter', { min: 0.25, max: 1.25 }),
      pt: needs('in', 'thread inside the holding member, tip excluded', { above: 0 }),
      grain: oneOf(grains, 'what the lag is driven into'),
      ...service,
    },
    gives,
    compute: ({ G, D, pt, grain, inService, temperature, method, load }, trace) => {
      const W = reference({ G, D }, trace);
      if (isRefusal(W)) return W;
      const Kf = methodFactor({ method, load }, trace);
      if (isRefusal(Kf)) return Kf;
      const wet = { D, atFabrication: inService, inService, arrangement: 'other' } as const;
      const CM = wetService({ kind: 'withdrawal of screw or lag', ...wet }, trace);
      if (isRefusal(CM)) return CM;
      const Ct = temperatureFactor({ temperature, inService }, trace);
      if (isRefusal(Ct)) return Ct;
      const Ceg = endGrain({ fastener: 'lag screw', load: 'withdrawal', grain }, trace);
      return isRefusal(Ceg) ? Ceg : product({ W, pt, Kf, CM, Ct, Ceg }, trace);
    },
  });
}

/** One nail in side grain. A smooth nail takes 1/4 when the wood changes between wet and dry after driving. */
export function makeNailWithdrawal(edition: NdsEdition) {
  const cites = citation(edition, '12.2.3, Table 11.3.1');
  const reference = makeNailReference(edition);
  const methodFactor = makeMethodFactor(edition);
  const wetService = makeWetService(edition);
  const temperatureFactor = makeTemperature(edition);
  const product = productOf(cites);
  return clause({
    id: `${edition.id}/11.3-nail-withdrawal`,
    title: 'withdrawal of one nail, design capacity',
    cites,
    inputs: {
      G,
      D: needs('in', 'nominal shank diameter', { min: 0.092, max: 0.375 }),
      shank: oneOf(shanks, 'smooth (bright or galvanized), smooth stainless, or ring shank of ASTM F1667'),
      pt: needs('in', 'penetration of a smooth nail, or ring shank in the member', { above: inch(0) }),
      member: memberInput,
      atFabrication: atFabricationInput,
      ...service,
    },
    gives,
    compute: ({ G, D, shank, pt, member, atFabrication, inService, temperature, method, load }, trace) => {
      const W = reference({ G: heldBy(edition, member, G, ratio(0.4), trace), D, shank }, trace);
      if (isRefusal(W)) return W;
      const Kf = methodFactor({ method, load }, trace);
      if (isRefusal(Kf)) return Kf;
      const kind = shank === 'ring' ? 'withdrawal of ring-shank nail' : 'withdrawal of smooth nail';
      const CM = wetService({ kind, D, atFabrication, inService, arrangement: 'other' }, trace);
      if (isRefusal(CM)) return CM;
      const Ct = temperatureFactor({ temperature, inService }, trace);
      return isRefusal(Ct) ? Ct : product({ W, pt, Kf, CM, Ct }, trace);
    },
  });
}
