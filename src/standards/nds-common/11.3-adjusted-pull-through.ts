/**
 * NDS 12.2.5 with Table 11.3.1: design capacity of a head in a wood side member, and of a nail that holds roof
 * sheathing: the lesser of its withdrawal from the framing and of the panel pulled over its head. Withdrawal takes
 * the framing's specific gravity, pull-through the panel's.
 */
import { lbf } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { taken } from '../../trace/step.ts';
import { makeNailWithdrawal } from './11.3-adjusted-withdrawal.ts';
import { makeMethodFactor, makeTemperature, makeWetService } from './11.3-service-factors.ts';
import { makeHeadPullThroughReference, pullThroughInputs } from './12.2.5-head-pull-through.ts';
import {
  atFabricationInput,
  gravityLimits,
  inServiceInput,
  loadInput,
  methodInput,
  shanks,
  temperatureInput,
} from './conditions.ts';
import { citation, type NdsEdition } from './edition.ts';

const service = {
  inService: inServiceInput,
  temperature: temperatureInput,
  method: methodInput,
  load: loadInput,
};

/** One head pulling through its side member. */
export function makeHeadPullThrough(edition: NdsEdition) {
  const cites = citation(edition, '12.2.5, Table 11.3.1');
  const reference = makeHeadPullThroughReference(edition);
  const methodFactor = makeMethodFactor(edition);
  const wetService = makeWetService(edition);
  const temperatureFactor = makeTemperature(edition);
  const product = equation({
    clause: cites,
    gives: "WH'",
    unit: 'lbf',
    from: { WH: 'lbf', Kf: '1', CM: '1', Ct: '1' },
    is: 'WH * Kf * CM * Ct',
  });
  return clause({
    id: `${edition.id}/11.3-head-pull-through`,
    title: 'round head pulling through a wood side member, design capacity',
    cites,
    inputs: { ...pullThroughInputs, ...service },
    gives: { symbol: "WH'", unit: 'lbf' },
    compute: ({ G, DH, tns, inService, temperature, method, load }, trace) => {
      const WH = reference({ G, DH, tns }, trace);
      if (isRefusal(WH)) return WH;
      const Kf = methodFactor({ method, load }, trace);
      if (isRefusal(Kf)) return Kf;
      const wet = { D: DH, atFabrication: inService, inService, arrangement: 'other' } as const;
      const CM = wetService({ kind: 'head pull-through', ...wet }, trace);
      if (isRefusal(CM)) return CM;
      const Ct = temperatureFactor({ temperature, inService }, trace);
      return isRefusal(Ct) ? Ct : product({ WH, Kf, CM, Ct }, trace);
    },
  });
}

/** Uplift capacity of one nail through roof sheathing into lumber framing. */
export function makeNailedSheathing(edition: NdsEdition) {
  const cites = citation(edition, '12.2.3, 12.2.5');
  const withdrawal = makeNailWithdrawal(edition);
  const pullThrough = makeHeadPullThrough(edition);
  return clause({
    id: `${edition.id}/12.2-nailed-sheathing`,
    title: 'uplift capacity of one nail through roof sheathing into framing',
    cites,
    inputs: {
      Gframing: needs('1', 'specific gravity of the framing', gravityLimits),
      Gpanel: pullThroughInputs.G,
      D: needs('in', 'nominal shank diameter', { min: 0.092, max: 0.375 }),
      DH: pullThroughInputs.DH,
      tns: pullThroughInputs.tns,
      pt: needs('in', 'penetration of a smooth nail into the framing, or ring shank in it', { above: 0 }),
      shank: oneOf(shanks, 'smooth, smooth stainless, or ring shank of ASTM F1667'),
      atFabrication: atFabricationInput,
      ...service,
    },
    gives: { symbol: 'R', unit: 'lbf' },
    compute: ({ Gframing, Gpanel, DH, tns, ...rest }, trace) => {
      const { inService, temperature, method, load } = rest;
      const out = withdrawal({ G: Gframing, member: 'lumber', ...rest }, trace);
      if (isRefusal(out)) return out;
      const through = pullThrough({ G: Gpanel, DH, tns, inService, temperature, method, load }, trace);
      if (isRefusal(through)) return through;
      const because =
        out <= through ? 'withdrawal from the framing governs' : 'the panel pulling over the head governs';
      return taken(trace, { clause: cites, symbol: 'R', unit: 'lbf', because }, lbf(Math.min(out, through)));
    },
  });
}
