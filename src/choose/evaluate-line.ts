/** One cell of the schedule at one spacing: loads, every link checked, the verdict. */
import { type Connection, isPieceMeal } from '../connections/connection.ts';
import { tributaryOf } from '../connections/demand.ts';
import { insulationCapacity } from '../links/insulation-bearing.ts';
import { panelSystemCapacity } from '../links/panel-system.ts';
import { type Capacity, check, type LinkCheck, type Verdict, worst } from '../links/verdict.ts';
import { type SqFt, sqft } from '../quantities/quantity.ts';
import { isRefusal, refusalText } from '../trace/refusal.ts';
import type { Trace } from '../trace/step.ts';
import type { Design } from './design.ts';
import type { ScheduleLine, SpacingReason } from './schedule.ts';

/** What does not change with the spacing: the fastener's and the deck's capacities, the prying. */
export interface Chain {
  readonly connection: Connection;
  readonly capacities: readonly Capacity[];
  /** Screw tension over seam pull; 1 without a clip, nothing while the clip's lever arms are not known. */
  readonly prying: number | undefined;
  /** Checks that are no matter of strength: a misfit a person insists on, a question still open. */
  readonly besides: readonly LinkCheck[];
}

export interface Cell {
  readonly zone: number;
  readonly spacing: number;
  readonly each: number;
  readonly setBy: SpacingReason;
}

export function evaluateLine(chain: Chain, cell: Cell, design: Design, trace?: Trace): ScheduleLine {
  const { connection } = chain;
  const width = connection.tributaryWidth_in;
  const piece = isPieceMeal(connection.placement);
  // Pieces are squares of their own width; rows take the end of a run into account.
  const along = piece ? pieceLength(connection) : cell.spacing;
  const area = tributaryOf(width, along, cell.each, endOffset(connection, design));
  const place = pressure(design, cell.zone, area.place_ft2, connection.primary);
  const fastener = pressure(design, cell.zone, area.fastener_ft2, connection.primary, trace);
  const placeLoad = typeof place === 'number' ? Math.max(0, place) * area.place_ft2 : undefined;
  const bare = typeof fastener === 'number' ? Math.max(0, fastener) * area.fastener_ft2 : undefined;
  const fastenerLoad = bare === undefined || chain.prying === undefined ? undefined : bare * chain.prying;
  const demands = { place: placeLoad, fastener: fastenerLoad };
  const capacities = connection.primary
    ? [...spacingLinks(cell.spacing, area.place_ft2, design, trace), ...chain.capacities]
    : chain.capacities;
  const carried = capacities.map((capacity) => checkLink(capacity, demands, place, cell.zone, chain, design));
  const checks = [...chain.besides, ...carried];
  const governing = governingOf(checks);
  const decisive = checks[governing];
  const panel = checks.filter((c) => c.capacity.link === 'panel system').map((c) => c.verdict);
  return {
    zone: cell.zone,
    spacing_in: cell.spacing,
    setBy: cell.setBy,
    each: cell.each,
    ...area,
    placePressure_psf: typeof place === 'number' ? place : undefined,
    fastenerPressure_psf: typeof fastener === 'number' ? fastener : undefined,
    placeLoad_lbf: placeLoad,
    fastenerLoad_lbf: fastenerLoad,
    ...(typeof fastener === 'string' ? { noLoad: fastener } : {}),
    checks,
    governing,
    ratio: decisive?.ratio,
    verdict: worst(checks.map((c) => c.verdict)),
    fastenerVerdict: worst(checks.filter((c) => c.capacity.link !== 'panel system').map((c) => c.verdict)),
    panelVerdict: panel[0],
  };
}

/** Length of the piece that its fasteners share: an end lap is as long as a run is wide, a trim lap four inches. */
const TRIM_LAP = 4;

function pieceLength({ placement, tributaryWidth_in }: Connection): number {
  if (placement.by === 'end laps') return placement.pitch_in;
  return placement.by === 'trim joints' ? TRIM_LAP : tributaryWidth_in;
}

function endOffset(connection: Connection, { job }: Design): number {
  return connection.placement.by === 'field' && connection.placement.along === 'free'
    ? Math.max(job.ends.first, job.ends.last)
    : 0;
}

/** Links whose capacity changes with the spacing: the panel system, and insulation under the clips. */
function spacingLinks(
  spacing: number,
  place_ft2: number,
  { job, basis, links }: Design,
  trace: Trace | undefined,
): Capacity[] {
  const own: Trace | undefined = trace ? [] : undefined;
  const insulation = insulationCapacity(links, place_ft2);
  return [panelSystemCapacity(job.panel, spacing, basis.method, own), ...(insulation ? [insulation] : [])];
}

/** Net uplift less the weight of the panel, where that was asked for and rests on this joint; or why there is none. */
function pressure(
  design: Design,
  zone: number,
  area: number,
  deductible: boolean,
  trace?: Trace,
): number | string {
  const uplift = design.field.uplift(zone, sqft(area) as SqFt, trace);
  if (isRefusal(uplift)) return refusalText(uplift);
  const dead = design.basis.deadLoad;
  return dead && deductible ? uplift - dead.factor * dead.load_psf : uplift;
}

function checkLink(
  capacity: Capacity,
  demands: { readonly place: number | undefined; readonly fastener: number | undefined },
  place: number | string,
  zone: number,
  chain: Chain,
  design: Design,
): LinkCheck {
  if (capacity.of === 'place') return check(capacity, demands.place);
  if (capacity.of === 'fastener') {
    if (chain.prying === undefined && capacity.value !== undefined)
      return check(
        {
          ...capacity,
          because:
            'the lever arms of the clip are not known, so its prying on the screws is not; measure from seam to screw line and from screw line to the toe of the base',
        },
        undefined,
      );
    return check(capacity, demands.fastener);
  }
  if (capacity.of === 'snow') return checkSnow(capacity, design);
  const own = capacity.area_ft2 === undefined ? place : pressure(design, zone, capacity.area_ft2, true);
  return check(capacity, typeof own === 'number' ? Math.max(0, own) : undefined);
}

/** Insulation carries nothing worth checking where it is known that there is no snow. */
function checkSnow(capacity: Capacity, { links }: Design): LinkCheck {
  if (links.roofSnow_psf !== undefined) return check(capacity, links.roofSnow_psf);
  return check(
    {
      ...capacity,
      because: `the roof snow load is not known${links.snowAsked ? ' (asked)' : ''}; state 0 psf where there is none`,
    },
    undefined,
  );
}

const rank: Readonly<Record<Verdict, number>> = { 'falls short': 2, unproven: 1, holds: 0 };

/** The worst verdict decides; among equal ones the highest ratio. */
export function governingOf(checks: readonly LinkCheck[]): number {
  let best = 0;
  checks.forEach((one, i) => {
    const held = checks[best] as LinkCheck;
    const by = rank[one.verdict] - rank[held.verdict];
    if (by > 0 || (by === 0 && (one.ratio ?? 0) > (held.ratio ?? 0))) best = i;
  });
  return best;
}

/** A line with one more check, judged anew. */
export function withCheck(line: ScheduleLine, added: LinkCheck): ScheduleLine {
  const checks = [added, ...line.checks];
  const governing = governingOf(checks);
  return {
    ...line,
    checks,
    governing,
    ratio: checks[governing]?.ratio,
    verdict: worst(checks.map((c) => c.verdict)),
    fastenerVerdict: worst(checks.filter((c) => c.capacity.link !== 'panel system').map((c) => c.verdict)),
  };
}
