/** From a job and a shelf to the answer. Reads as a table of contents. */

import { chooseItem } from '../choose/choose-items.ts';
import type { Design } from '../choose/design.ts';
import { ruleOut } from '../choose/rule-out.ts';
import type { ConnectionChoice } from '../choose/schedule.ts';
import { settingFor } from '../choose/setting.ts';
import type { Parts } from '../connections/build-ups.ts';
import type { Connection } from '../connections/connection.ts';
import { listConnections } from '../connections/list-connections.ts';
import { basisOf } from '../job/basis.ts';
import type { Job } from '../job/job.ts';
import { type Read, readJob } from '../job/read-job.ts';
import { layOut } from '../layout/lay-out.ts';
import { linkContext } from '../links/link-context.ts';
import { buildRoof } from '../roof/build-roof.ts';
import type { Roof } from '../roof/roof.ts';
import type { Item, ItemOf } from '../shelf/item.ts';
import { readShelf } from '../shelf/read-shelf.ts';
import type { Shelf } from '../shelf/shelf.ts';
import { buildField } from '../site/build-field.ts';
import { takeOff } from '../takeoff/take-off.ts';
import type { Answer, VerdictCount } from './answer.ts';
import { checkOverrides } from './check-overrides.ts';
import { checkReferences } from './check-references.ts';
import { inputsOf } from './inputs.ts';
import { remarksOf } from './remarks.ts';

/** An answer, and the design it was made from, so that any line of it can be proved. */
export interface Solved {
  readonly answer: Answer;
  readonly design: Design;
}

/** Reads, solves and returns everything, or every fault with its field path. */
export function solveJob(document: unknown, shelfDocument: unknown): Read<Solved> {
  const job = readJob(document);
  const shelf = readShelf(shelfDocument);
  if (!job.ok || !shelf.ok) {
    const shelfFaults = shelf.ok
      ? []
      : shelf.faults.map((fault) => ({ ...fault, path: `shelf: ${fault.path}` }));
    return { ok: false, faults: [...(job.ok ? [] : job.faults), ...shelfFaults] };
  }
  return solve(job.value, shelf.value, inputsOf(document));
}

/** Solves a job already read, on a shelf already read. */
export function solve(job: Job, shelf: Shelf, inputs: Answer['inputs']): Read<Solved> {
  const prepared = prepare(job, shelf);
  if (!prepared.ok) return prepared;
  const { design, connections } = prepared.value;
  const choices = connections.map((connection) => chooseItem(connection, design));
  const layout = layOut(choices, design);
  const takeoff = takeOff(choices, layout, design, shelf.currency);
  const { name, edition, date, currency } = shelf;
  const answer: Answer = {
    job,
    basis: design.basis,
    shelf: { name, edition, date, currency },
    inputs,
    roof: design.roof,
    field: design.field,
    choices,
    layout,
    takeoff,
    count: countVerdicts(choices),
    remarks: remarksOf(design, choices),
  };
  return { ok: true, value: { answer, design } };
}

/** What is fixed before any item is chosen, and the joints to choose for. */
export interface Prepared {
  readonly design: Design;
  readonly connections: readonly Connection[];
}

/** Roof, wind, joints and parts of a job; every fault that shows only when they meet. */
export function prepare(job: Job, shelf: Shelf): Read<Prepared> {
  const built = buildRoof(job.roof);
  if (!built.ok) return built;
  const { roof } = built;
  const faults = checkReferences(job, roof, shelf.items);
  if (faults.length > 0) return { ok: false, faults };

  const basis = basisOf(job);
  const placed = buildField(job, roof, basis);
  if (!placed.ok) return placed;
  const field = placed.value;
  const parts = partsOf(job, roof, shelf.items);
  const connections = listConnections(job, roof, parts, field.highWind ?? true);
  const decisions = checkOverrides(job, connections, field);
  if (decisions.length > 0) return { ok: false, faults: decisions };
  const links = linkContext(job, basis, parts, shelf.items);
  return {
    ok: true,
    value: { design: { job, basis, roof, field, items: shelf.items, parts, links }, connections },
  };
}

/** The clip named in the job, or the cheapest for its seam that some screw can serve; the plate named in the job. */
function partsOf(job: Job, roof: Roof, items: readonly Item[]): Parts {
  const plate = items.find(
    (item): item is ItemOf<'plate'> => item.kind === 'plate' && item.id === job.insulation?.plate,
  );
  if (job.panel.system !== 'standing seam on clips') return { clip: undefined, plate };
  const clips = items.filter((item) => item.kind === 'clip');
  if (job.panel.clip !== undefined) return { clip: clips.find(({ id }) => id === job.panel.clip), plate };
  const fitting = clips
    .filter(({ seamHeight }) => seamHeight === job.panel.seamHeight)
    .sort((a, b) => a.price - b.price || (a.id < b.id ? -1 : 1));
  return {
    clip: fitting.find((clip) => canBeServed(job, roof, { clip, plate }, items)) ?? fitting[0],
    plate,
  };
}

function canBeServed(job: Job, roof: Roof, parts: Parts, items: readonly Item[]): boolean {
  const [connection] = listConnections(job, roof, parts, true);
  const setting = connection && settingFor(connection, job, parts);
  return (
    setting !== undefined &&
    items.some((item) => item.kind === 'screw' && ruleOut(item, setting) === undefined)
  );
}

export function countVerdicts(choices: readonly ConnectionChoice[]): VerdictCount {
  const verdicts = choices.flatMap((choice) => choice.lines.map((line) => line.verdict));
  const of = (wanted: (typeof verdicts)[number]) => verdicts.filter((verdict) => verdict === wanted).length;
  return { holds: of('holds'), fallsShort: of('falls short'), unproven: of('unproven') };
}
