/**
 * NDS 12.2.1 to 12.2.3: reference withdrawal from side grain, in pounds an inch of what holds.
 * D is the nominal diameter (shank, or thread major diameter), never the root. Fitted equations in lb and in.
 * Seen: Table 12.2A as a scan, cells of 12.2B and 12.2C, equations quoted from the 2018 edition; 2024 keeps them.
 * Length to multiply by: lag, thread in the member without the tip; wood screw, thread in the member; smooth nail,
 * whole penetration; ring-shank nail, ring-shank length in the member (that last reading from memory).
 */
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { gravityLimits, screwStandardInput, shanks } from './conditions.ts';
import { citation, type NdsEdition } from './edition.ts';
import { noteScrewStandard } from './screw-allowance.ts';

const G = needs('1', 'specific gravity of the holding member, oven dry', gravityLimits);
const from = { G: '1', D: 'in' } as const;
const gives = { symbol: 'W', unit: 'lbf/in' } as const;

/** 12.2.1: lag screw, 1/4 to 1-1/4 in. */
export function makeLagReference(edition: NdsEdition) {
  const cites = citation(edition, '12.2.1 Eq. 12.2-1');
  const W = equation({
    clause: cites,
    gives: 'W',
    unit: 'lbf/in',
    from,
    is: '1800 * G^1.5 * D^0.75',
    fitted: true,
  });
  return clause({
    id: `${edition.id}/12.2.1-lag-withdrawal`,
    title: 'withdrawal of a lag screw, reference value per inch of thread without the tip',
    cites,
    inputs: { G, D: needs('in', 'nominal diameter', { min: 0.25, max: 1.25 }) },
    gives,
    compute: W,
  });
}

/** 12.2.2: wood screw, No. 6 to No. 24. For any other screw the allowance is recorded. */
export function makeScrewReference(edition: NdsEdition) {
  const cites = citation(edition, '12.2.2 Eq. 12.2-2');
  const W = equation({ clause: cites, gives: 'W', unit: 'lbf/in', from, is: '2850 * G^2 * D', fitted: true });
  return clause({
    id: `${edition.id}/12.2.2-screw-withdrawal`,
    title: 'withdrawal of a wood screw, reference value per inch of thread in the member',
    cites,
    inputs: {
      G,
      D: needs('in', 'nominal diameter', { min: 0.138, max: 0.372 }),
      screwStandard: screwStandardInput,
    },
    gives,
    compute: ({ G, D, screwStandard }, trace) => {
      noteScrewStandard(edition, screwStandard, trace);
      return W({ G, D }, trace);
    },
  });
}

/** 12.2.3: smooth nail, smooth stainless nail, roof-sheathing or post-frame ring-shank nail (ASTM F1667). */
export function makeNailReference(edition: NdsEdition) {
  const cites = citation(edition, '12.2.3');
  const formula = (number: string, is: string) =>
    equation({ clause: `${cites} Eq. ${number}`, gives: 'W', unit: 'lbf/in', from, is, fitted: true });
  const byShank = {
    smooth: formula('12.2-3', '1380 * G^2.5 * D'),
    'smooth stainless': formula('12.2-4', '465 * G^1.5 * D'),
    ring: formula('12.2-5', '1800 * G^2 * D'),
  } as const;
  return clause({
    id: `${edition.id}/12.2.3-nail-withdrawal`,
    title: 'withdrawal of a nail, reference value per inch of penetration or of ring shank',
    cites,
    inputs: {
      G,
      D: needs('in', 'nominal shank diameter', { min: 0.092, max: 0.375 }),
      shank: oneOf(shanks, 'smooth (bright or galvanized), smooth stainless, or ring shank of ASTM F1667'),
    },
    gives,
    compute: ({ G, D, shank }, trace) => byShank[shank]({ G, D }, trace),
  });
}
