/**
 * NDS 12.3 with Table 11.3.1: lateral design capacity of one screw or nail in single shear in side grain.
 * The yield equations take the bearing length there is; where penetration is below 10 D the value tabulated for
 * 10 D, reduced by p / 10 D, is calculated as well and the lesser is used. From 1/4 in on the group and geometry
 * factors must be given, and an angle to grain left out is taken as 90 degrees, which is the least.
 */
import {
  degree,
  type Inch,
  inch,
  type Lbf,
  lbf,
  type Psi,
  type Quantity,
  type Ratio,
  ratio,
} from '../../quantities/quantity.ts';
import { type ClauseValues, clause, mayNeed, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { isRefusal, type Outcome, type Refusal, refuse } from '../../trace/refusal.ts';
import { note, type Trace, taken } from '../../trace/step.ts';
import { makeMethodFactor, makeTemperature, makeWetService } from './11.3-service-factors.ts';
import { makeBearingLength, makePenetrationFactor } from './12.1-lengths.ts';
import { makeBendingYield } from './12.3.1-yield-limits.ts';
import { makeLateralReference } from './12.3.1-yield-modes.ts';
import {
  bearingPanels,
  makePanelBearing,
  makeSteelBearing,
  makeWoodBearing,
} from './12.3.3-dowel-bearing.ts';
import { makeDiaphragm } from './12.5-position-factors.ts';
import {
  atFabricationInput,
  gravityLimits,
  type HoldingMember,
  inServiceInput,
  loadInput,
  memberInput,
  methodInput,
  screwStandardInput,
  temperatureInput,
} from './conditions.ts';
import { citation, type NdsEdition } from './edition.ts';
import { noteScrewStandard } from './screw-allowance.ts';

const joint = {
  G: needs('1', 'specific gravity of the main member, which holds the point', gravityLimits),
  member: memberInput,
  p: needs('in', 'penetration in the main member, tip included', { above: 0 }),
  side: oneOf(['steel', 'wood', ...bearingPanels], 'side member, under the head'),
  ts: needs('in', 'thickness of the side member', { above: 0 }),
  Gs: mayNeed('1', 'specific gravity of a wood side member', gravityLimits),
  Fus: mayNeed('psi', 'tensile strength of a steel side member', { above: 0 }),
  Fyb: mayNeed('psi', 'bending yield strength; left out, that of Table I1', { above: 0 }),
};
const service = {
  atFabrication: atFabricationInput,
  inService: inServiceInput,
  temperature: temperatureInput,
  method: methodInput,
  load: loadInput,
};

type Joint = ClauseValues<typeof joint>;
interface Fastener {
  readonly kind: 'wood screw' | 'nail';
  readonly D: Inch;
  readonly Dy: Inch;
  readonly θ: Quantity<'deg'>;
}

/** Reference lateral value with the length rules, shared by screw and nail. */
function makeReferenceValue(edition: NdsEdition) {
  const woodBearing = makeWoodBearing(edition);
  const panelBearing = makePanelBearing(edition);
  const steelBearing = makeSteelBearing(edition);
  const bendingYield = makeBendingYield(edition);
  const penetrationFactor = makePenetrationFactor(edition);
  const bearingLength = makeBearingLength(edition);
  const { singleShear } = makeLateralReference(edition);
  const cites = citation(edition, '12.3.1, Tables 12L to 12P footnote 3');
  const reduced = equation({
    clause: cites,
    gives: 'Z',
    unit: 'lbf',
    from: { Z10: 'lbf', f: '1' },
    is: 'Z10 * f',
  });

  const mainBearing = ({ member, G }: Joint, { D, θ }: Fastener, trace?: Trace) => {
    if (member === 'lumber') return woodBearing({ G, D, θ, reading: 'tabulated' }, trace);
    const panel = member === 'OSB' ? 'OSB' : 'plywood, other or unknown';
    return panelBearing({ panel, D }, trace);
  };
  const sideBearing = ({ side, Gs, Fus, ts }: Joint, { D, θ }: Fastener, trace?: Trace): Outcome<Psi> => {
    if (side === 'wood') {
      if (Gs === undefined)
        return refuse(cites, 'Gs', undefined, 'specific gravity of the side member', 'missing-input');
      return woodBearing({ G: Gs, D, θ, reading: 'tabulated' }, trace);
    }
    if (side !== 'steel') return panelBearing({ panel: side, D }, trace);
    if (Fus === undefined)
      return refuse(cites, 'Fus', undefined, 'tensile strength of the side member', 'missing-input');
    // Tables 12M and 12P begin at 20 gage, 0.036 in: no roof sheet is in them.
    if (ts < 0.036) note(trace, cites, thinSheet);
    return steelBearing({ Fu: Fus, rolling: 'cold-formed' }, trace);
  };

  return (at: Joint, fastener: Fastener, trace?: Trace): Outcome<Lbf> => {
    const { kind, D, Dy, θ } = fastener;
    const { p, ts } = at;
    const factor = penetrationFactor({ fastener: kind, D, p }, trace);
    if (isRefusal(factor)) return at.member === 'lumber' ? factor : panelAlone(factor, at.member);
    const Fem = mainBearing(at, fastener, trace);
    if (isRefusal(Fem)) return Fem;
    const Fes = sideBearing(at, fastener, trace);
    if (isRefusal(Fes)) return Fes;
    const Fyb = at.Fyb ?? bendingYield({ D, steel: 'nail, wood screw or lag' }, trace);
    if (isRefusal(Fyb)) return Fyb;
    const withPenetration = (penetration: Inch) => {
      const lm = bearingLength({ fastener: kind, D, p: penetration }, trace);
      return isRefusal(lm) ? lm : singleShear({ D, Dy, lm, ls: ts, Fem, Fes, Fyb, θ }, trace);
    };
    const Z = withPenetration(p);
    if (isRefusal(Z) || factor === 1) return Z;
    const Z10 = withPenetration(inch(10 * D));
    if (isRefusal(Z10)) return Z10;
    const tabulated = reduced({ Z10, f: factor }, trace);
    const because =
      'lesser of the equations with the true length and of the tabulated value reduced for penetration';
    return taken(trace, { clause: cites, symbol: 'Z', unit: 'lbf', because }, lbf(Math.min(Z, tabulated)));
  };
}

const thinSheet =
  'The steel is thinner than any row of the tables. The equations give the wood side only: bearing and tilting in ' +
  'the sheet and its pull-over must hold by the cold-formed standard.';

function panelAlone(refusal: Refusal, member: HoldingMember): Refusal {
  const allowed = `${refusal.allowed}; it does not fit this ${member} panel: reach the framing, or use a test`;
  return { ...refusal, allowed };
}

function makeService(edition: NdsEdition) {
  const methodFactor = makeMethodFactor(edition);
  const wetService = makeWetService(edition);
  const temperatureFactor = makeTemperature(edition);
  return (values: ClauseValues<typeof service>, D: Inch, trace?: Trace) => {
    const { atFabrication, inService, temperature, method, load } = values;
    const Kf = methodFactor({ method, load }, trace);
    if (isRefusal(Kf)) return Kf;
    const CM = wetService({ kind: 'lateral', D, atFabrication, inService, arrangement: 'other' }, trace);
    if (isRefusal(CM)) return CM;
    const Ct = temperatureFactor({ temperature, inService }, trace);
    return isRefusal(Ct) ? Ct : { Kf, CM, Ct };
  };
}

const gives = { symbol: "Z'", unit: 'lbf' } as const;
const factors = { Z: 'lbf', Kf: '1', CM: '1', Ct: '1' } as const;

/** One screw, root diameter in the yield equations. A panel alone holds six diameters only when it is thick. */
export function makeScrewLateral(edition: NdsEdition) {
  const cites = citation(edition, '12.3, Table 11.3.1');
  const referenceValue = makeReferenceValue(edition);
  const serviceFactors = makeService(edition);
  const product = equation({
    clause: cites,
    gives: "Z'",
    unit: 'lbf',
    from: { ...factors, Cg: '1', CΔ: '1' },
    is: 'Z * Kf * CM * Ct * Cg * CΔ',
  });
  const atMostOne = { above: 0, max: 1 } as const;
  return clause({
    id: `${edition.id}/11.3-screw-lateral`,
    title: 'lateral capacity of one screw in single shear, design',
    cites,
    inputs: {
      D: needs('in', 'nominal diameter', { min: 0.138, max: 0.372 }),
      Dr: needs('in', 'root diameter of the thread', { min: 0.1, max: 0.372 }),
      ...joint,
      screwStandard: screwStandardInput,
      θ: mayNeed('deg', 'largest angle of load to grain; matters from 1/4 in on', { min: 0, max: 90 }),
      Cg: mayNeed('1', 'group action factor; needed from 1/4 in on', atMostOne),
      CΔ: mayNeed('1', 'geometry factor; needed from 1/4 in on', atMostOne),
      ...service,
    },
    gives,
    compute: (values, trace) => {
      const { D, Dr } = values;
      if (Dr > D) return refuse(cites, 'Dr', Dr, `at most the nominal diameter, ${D} in`);
      const group = groupFactors(cites, values);
      if (isRefusal(group)) return group;
      noteScrewStandard(edition, values.screwStandard, trace);
      const θ = values.θ ?? degree(D < 0.25 ? 0 : 90);
      const Z = referenceValue(values, { kind: 'wood screw', D, Dy: Dr, θ }, trace);
      if (isRefusal(Z)) return Z;
      const got = serviceFactors(values, D, trace);
      return isRefusal(got) ? got : product({ Z, ...got, ...group }, trace);
    },
  });
}

interface GroupFactors {
  readonly D: Inch;
  readonly Cg?: Ratio | undefined;
  readonly CΔ?: Ratio | undefined;
}

/** Below 1/4 in both factors are 1 whatever is given; from there on they must be given. */
function groupFactors(cites: string, { D, Cg, CΔ }: GroupFactors): { Cg: Ratio; CΔ: Ratio } | Refusal {
  if (D < 0.25) return { Cg: ratio(1), CΔ: ratio(1) };
  const missing = (name: string) =>
    refuse(cites, name, undefined, 'a factor for fasteners of 1/4 in and larger', 'missing-input');
  if (Cg === undefined) return missing('Cg');
  return CΔ === undefined ? missing('CΔ') : { Cg, CΔ };
}

/** One nail, shank diameter in the yield equations (ring-shank nails too, from the 2018 edition on). */
export function makeNailLateral(edition: NdsEdition) {
  const cites = citation(edition, '12.3, Table 11.3.1');
  const referenceValue = makeReferenceValue(edition);
  const serviceFactors = makeService(edition);
  const diaphragm = makeDiaphragm(edition);
  const product = equation({
    clause: cites,
    gives: "Z'",
    unit: 'lbf',
    from: { ...factors, Cdi: '1' },
    is: 'Z * Kf * CM * Ct * Cdi',
  });
  return clause({
    id: `${edition.id}/11.3-nail-lateral`,
    title: 'lateral capacity of one nail in single shear, design',
    cites,
    inputs: {
      // From 1/4 in on a nail would need the angle and group rules of larger dowels: no roof nail does.
      D: needs('in', 'nominal shank diameter', { min: 0.092, max: 0.2499 }),
      ...joint,
      use: oneOf(['diaphragm', 'other'], 'what the nails belong to'),
      ...service,
    },
    gives,
    compute: (values, trace) => {
      const { D, use } = values;
      const Z = referenceValue(values, { kind: 'nail', D, Dy: D, θ: degree(0) }, trace);
      if (isRefusal(Z)) return Z;
      const got = serviceFactors(values, D, trace);
      if (isRefusal(got)) return got;
      const Cdi = diaphragm({ use }, trace);
      return isRefusal(Cdi) ? Cdi : product({ Z, ...got, Cdi }, trace);
    },
  });
}
