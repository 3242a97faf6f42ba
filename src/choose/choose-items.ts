/** The item for each connection: every candidate through its chain in every zone; the soundest, then the cheapest. */
import type { Connection } from '../connections/connection.ts';
import { holdingPly } from '../connections/ply.ts';
import { chainCapacities } from '../links/chain.ts';
import { deckToFrame } from '../links/deck-to-frame.ts';
import { metalFinding, treatedWoodFinding } from '../links/metal-rules.ts';
import { pryingOf } from '../links/prying.ts';
import { type LinkCheck, misfit, openQuestion, type Verdict } from '../links/verdict.ts';
import type { Item, Rivet, Screw } from '../shelf/item.ts';
import type { Trace } from '../trace/step.ts';
import type { Design } from './design.ts';
import type { Chain } from './evaluate-line.ts';
import { evaluateLine, withCheck } from './evaluate-line.ts';
import { findLine, overriddenLine, roughCount } from './find-spacing.ts';
import type { Rejection } from './rejection.ts';
import { ruleOut } from './rule-out.ts';
import { touchedByHead } from './rule-out-by-head.ts';
import type { ConnectionChoice, ScheduleLine } from './schedule.ts';
import { settingFor } from './setting.ts';
import { type Occurrence, occurrences } from './where.ts';

/** To set one fastener, in the currency of the shelf: an assumption, so that fewer fasteners count for something. */
const LABOUR_EACH = 0.25;

interface Candidate {
  readonly item: Screw | Rivet;
  readonly chain: Chain;
  readonly lines: readonly ScheduleLine[];
  readonly fallsShort: number;
  /** Checks that fall short, over all lines: of two that fall short the one that does so in fewer ways is sounder. */
  readonly shortChecks: number;
  readonly unproven: number;
  readonly cost: number;
}

export function chooseItem(connection: Connection, design: Design): ConnectionChoice {
  const where = occurrences(connection, design);
  const setting = settingFor(connection, design.job, design.parts);
  const rejected: Rejection[] = [];
  const candidates: Candidate[] = [];
  const wanted = itemOverride(connection, design)?.item;
  for (const item of design.items) {
    if (item.kind !== 'screw' && item.kind !== 'rivet') continue;
    const ruling = ruleOut(item, setting);
    if (ruling && item.id !== wanted) {
      if (ruling.rule !== 'kind') rejected.push({ item: item.id, ...ruling });
      continue;
    }
    candidates.push(tryItem(item, connection, where, design, ruling?.because));
  }
  candidates.sort(
    (a, b) =>
      a.fallsShort - b.fallsShort ||
      a.shortChecks - b.shortChecks ||
      a.unproven - b.unproven ||
      a.cost - b.cost ||
      (a.item.id < b.item.id ? -1 : 1),
  );
  const chosen = candidates.find((one) => one.item.id === wanted) ?? candidates[0];
  const others = candidates
    .filter((one) => one !== chosen)
    .map((one) => lostTo(one, chosen as Candidate, connection, design));
  return answerFor(connection, design, where, chosen, candidates, [...others, ...rejected]);
}

function answerFor(
  connection: Connection,
  design: Design,
  where: readonly Occurrence[],
  chosen: Candidate | undefined,
  candidates: readonly Candidate[],
  rejected: readonly Rejection[],
): ConnectionChoice {
  const chain = chosen?.chain ?? chainWithoutItem(connection, design);
  const lines = chosen?.lines ?? where.map((at) => findLine(chain, at, design));
  return {
    connection,
    item: chosen?.item,
    clip: connection.duty === 'clip' ? design.parts.clip : undefined,
    because: reason(chosen, candidates, design),
    lines,
    rejected,
    prying: chain.prying,
    besides: chain.besides,
    overridden: ownOverrides(connection, design).map((one) => one.because),
    conflicts: chosen ? conflictsOf(chosen.item, connection, design) : [],
  };
}

export function chainOf(item: Screw | Rivet, connection: Connection, design: Design, trace?: Trace): Chain {
  const clip = connection.duty === 'clip' ? design.parts.clip : undefined;
  const prying = connection.duty !== 'clip' ? 1 : clip ? pryingOf(clip, trace) : undefined;
  return {
    connection,
    capacities: chainCapacities(item, connection, design.links, trace !== undefined),
    prying,
    besides: [...editionQuestion(design), ...metalQuestion(item, connection, design)],
  };
}

/** Nothing on the shelf fits: the deck is checked all the same, and the missing fastener stays an open question. */
function chainWithoutItem(connection: Connection, design: Design): Chain {
  const deck = connection.primary ? deckToFrame(design.links) : undefined;
  return {
    connection,
    capacities: deck ? [deck] : [],
    prying: 1,
    besides: [
      ...editionQuestion(design),
      openQuestion('fit', 'nothing on the shelf fits this joint; every rejection says why'),
    ],
  };
}

/** Equations and factors change with the edition: with the code year open, no number of another edition is a pass. */
function editionQuestion({ basis }: Design): LinkCheck[] {
  if (basis.undecided.length === 0) return [];
  return [
    openQuestion(
      'edition',
      `the code year is not known, so neither are the editions for ${basis.undecided.join(', ')}`,
    ),
  ];
}

/** The distance to salt water is not known, and near it this item would not do: an open question, not a pass. */
function metalQuestion(item: Screw | Rivet, connection: Connection, { links }: Design): LinkCheck[] {
  if (links.surroundings.saltWater_ft !== undefined) return [];
  const bySea = { ...links.surroundings, saltWater_ft: 0 };
  for (const ply of connection.buildUp.plies) {
    if (ply.kind !== 'sheet' || !touchedByHead.includes(ply.role)) continue;
    const finding = metalFinding(item, ply.metal, bySea);
    if (finding.kind !== 'fits')
      return [
        openQuestion(
          'metals',
          `the distance to salt water is not known; near it: ${finding.kind === 'conflict' ? finding.text : finding.because}`,
        ),
      ];
  }
  return [];
}

function tryItem(
  item: Screw | Rivet,
  connection: Connection,
  where: readonly Occurrence[],
  design: Design,
  ruledOut: string | undefined,
): Candidate {
  const fitting = chainOf(item, connection, design);
  const chain =
    ruledOut === undefined ? fitting : { ...fitting, besides: [misfit(ruledOut), ...fitting.besides] };
  // The spacing is sought as if it fitted: no spacing mends a misfit.
  const sought = where.map((at) => lineFor(fitting, at, design));
  const lines = ruledOut === undefined ? sought : sought.map((line) => withCheck(line, misfit(ruledOut)));
  return {
    item,
    chain,
    lines,
    fallsShort: lines.filter((line) => line.verdict === 'falls short').length,
    shortChecks: countChecks(lines, 'falls short'),
    unproven: countChecks(lines, 'unproven'),
    cost: roughCost(item, lines, where, connection, design),
  };
}

/** Fasteners, the setting of them, and the clips and plates they hold, since fewer places save those too. */
export function roughCost(
  item: Screw | Rivet,
  lines: readonly ScheduleLine[],
  where: readonly Occurrence[],
  connection: Connection,
  { parts }: Pick<Design, 'parts'>,
): number {
  const hardware = connection.duty === 'clip' ? (parts.clip?.price ?? 0) + (parts.plate?.price ?? 0) : 0;
  return where.reduce((sum, at, i) => {
    const line = lines[i] as ScheduleLine;
    const each = item.price + LABOUR_EACH + hardware / line.each;
    return sum + roughCount(connection, line, at) * each;
  }, 0);
}

const countChecks = (lines: readonly ScheduleLine[], verdict: Verdict): number =>
  lines.reduce((sum, line) => sum + line.checks.filter((check) => check.verdict === verdict).length, 0);

function lineFor(chain: Chain, at: Occurrence, design: Design): ScheduleLine {
  const spacing = spacingOverride(chain.connection, at.zone, design)?.spacing;
  return spacing === undefined ? findLine(chain, at, design) : overriddenLine(chain, at, spacing, design);
}

/** The person's decision on the item of a connection, and on its spacing in one zone or in all. */
const ownOverrides = (connection: Connection, { job }: Design) =>
  job.overrides.filter((one) => one.connection === connection.id);

function itemOverride(connection: Connection, design: Design) {
  return ownOverrides(connection, design).find((one) => one.item !== undefined);
}

function spacingOverride(connection: Connection, zone: number, design: Design) {
  const own = ownOverrides(connection, design).filter((one) => one.spacing !== undefined);
  const label = design.field.zones[zone]?.label;
  return own.find((one) => one.zone === label) ?? own.find((one) => one.zone === undefined);
}

function lostTo(loser: Candidate, winner: Candidate, connection: Connection, design: Design): Rejection {
  const bad =
    loser.lines.find((line) => line.verdict === 'falls short') ??
    loser.lines.find((line) => line.verdict === 'unproven');
  if (bad && (loser.fallsShort > winner.fallsShort || loser.unproven > winner.unproven)) {
    const check = bad.checks[bad.governing];
    const zone = design.field.zones[bad.zone]?.label;
    const numbers =
      check?.ratio === undefined
        ? (check?.capacity.because ?? 'no evidence')
        : `${check.capacity.link} at ${check.ratio.toFixed(2)} of what it holds`;
    return {
      item: loser.item.id,
      rule: 'strength',
      because: `zone ${zone}, ${Number(bad.spacing_in.toFixed(2))} in: ${numbers}`,
    };
  }
  const holding = holdingPly(connection.buildUp).name;
  return {
    item: loser.item.id,
    rule: 'cost',
    because: `it serves in the ${holding} too, but set it costs ${apart(loser.cost, winner.cost)}`,
  };
}

/** Two sums, with as many decimals as it takes to tell them apart. */
function apart(a: number, b: number): string {
  const decimals = Math.round(a) === Math.round(b) ? 2 : 0;
  return `${a.toFixed(decimals)} against ${b.toFixed(decimals)}`;
}

function reason(chosen: Candidate | undefined, candidates: readonly Candidate[], design: Design): string {
  if (!chosen)
    return `nothing of the ${design.items.length} items on the shelf fits; each rejection says why`;
  const runnerUp = candidates.find((one) => one !== chosen);
  if (!runnerUp) return 'the only item on the shelf that fits';
  return `${candidates.length} items fit; it is the cheapest of the soundest, set for ${apart(chosen.cost, runnerUp.cost)} for ${runnerUp.item.id}`;
}

function conflictsOf(item: Item, connection: Connection, design: Design): string[] {
  if (item.kind !== 'screw' && item.kind !== 'rivet') return [];
  const found = connection.buildUp.plies.map((ply) => {
    if (ply.kind === 'wood') return treatedWoodFinding(item, ply.treatment);
    return ply.kind === 'sheet' ? metalFinding(item, ply.metal, design.links.surroundings) : undefined;
  });
  return [...new Set(found.flatMap((one) => (one?.kind === 'conflict' ? [one.text] : [])))];
}

/** The working of one schedule line: the same code once more, with a trace. */
export function proveLine(
  choice: ConnectionChoice,
  line: ScheduleLine,
  design: Design,
): { readonly line: ScheduleLine; readonly load: Trace } {
  const load: Trace = [];
  if (!choice.item) return { line, load };
  const chain = { ...chainOf(choice.item, choice.connection, design, load), besides: choice.besides };
  const proved = evaluateLine(
    chain,
    { zone: line.zone, spacing: line.spacing_in, each: line.each, setBy: line.setBy },
    design,
    load,
  );
  return { line: proved, load };
}
