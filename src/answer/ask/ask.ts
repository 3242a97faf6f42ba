/**
 * What to ask next. Every unknown is tried over its plausible values while the others stand at a reference: what is
 * assumed, or what is usual. One that moves nothing there is tried again with all others at their worst, and at the
 * worst that fasteners can answer for, so that it is not left unasked because another unknown hid it. This is one at a
 * time and two joint corners, not every combination.
 */
import type { Job } from '../../job/job.ts';
import { type Read, readJob } from '../../job/read-job.ts';
import { readShelf } from '../../shelf/read-shelf.ts';
import type { Shelf } from '../../shelf/shelf.ts';
import { briefOf, effectOf, wantedTest } from './effects.ts';
import { cornerOf, jointRobust, namedOf } from './joint.ts';
import { byMoves, isStill, type Moves, movesOver } from './moves.ts';
import type { Outcome } from './outcome.ts';
import { questionOf } from './questions.ts';
import type { AskReport, QuietQuestion, RankedQuestion } from './report.ts';
import { robustOver } from './robust.ts';
import { type Trial, trialOf } from './trial.ts';
import { atValues, type Unknown, unknownsOf } from './unknowns.ts';
import { Variations } from './variations.ts';

/** From documents: every fault of either, or the questions. */
export function askOf(document: unknown, shelfDocument: unknown): Read<AskReport> {
  const job = readJob(document);
  const shelf = readShelf(shelfDocument);
  if (job.ok && shelf.ok) return ask(document, job.value, shelf.value);
  const shelfFaults = shelf.ok
    ? []
    : shelf.faults.map((fault) => ({ ...fault, path: `shelf: ${fault.path}` }));
  return { ok: false, faults: [...(job.ok ? [] : job.faults), ...shelfFaults] };
}

/** With a shelf already read. */
export function ask(document: unknown, job: Job, shelf: Shelf): Read<AskReport> {
  const { list, withoutRange } = unknownsOf(document, job, shelf);
  const references = list.map(({ reference }) => reference);
  const variations = new Variations(shelf);
  const solved = new Map<string, Read<Outcome>>();
  const solveAt = (at: readonly number[]): Read<Outcome> => {
    const found = solved.get(at.join()) ?? variations.solve(atValues(document, list, at));
    solved.set(at.join(), found);
    return found;
  };
  const reference = solveAt(references);
  if (!reference.ok) return reference;
  const trials = list.map((unknown, u) => trialOf(unknown, (value) => solveAt(references.with(u, value))));
  const corner = cornerOf(trials, reference.value);
  const ends = [trials.map(({ worst }) => worst), corner.at];
  const told = trials.map((trial, u) =>
    tell(trial, reference.value, ends, (at, value) => solveAt(at.with(u, value))),
  );
  const questions = told
    .filter(({ still }) => !still)
    .sort((a, b) => Number(a.at !== undefined) - Number(b.at !== undefined) || byMoves(a.moves, b.moves))
    .map((one, i) => ranked(one, i + 1, list, variations));
  const present = variations.solve(document);
  return {
    ok: true,
    value: {
      currency: shelf.currency,
      present: present.ok ? briefOf(present.value) : undefined,
      reference: briefOf(reference.value),
      questions,
      needNotBeAsked: told.filter(({ still }) => still).map(tried),
      withoutRange,
      joint: list.length === 0 ? undefined : jointRobust(trials, corner, solveAt, variations),
    },
  };
}

/** What a trial shows, and against which answer; `at` is where the others stand when it is not their reference. */
interface Told {
  readonly trial: Trial;
  readonly base: Outcome;
  readonly moves: Moves;
  readonly still: boolean;
  readonly at?: readonly number[];
}

/** The trial as it is, or, where it moves nothing, at the first end of the others at which it does. */
function tell(
  trial: Trial,
  reference: Outcome,
  ends: readonly (readonly number[])[],
  solveAt: (at: readonly number[], value: number) => Read<Outcome>,
): Told {
  const here = { trial, base: reference, ...stillness(trial) };
  if (!here.still) return here;
  for (const at of ends) {
    const there = trialOf(trial.unknown, (value) => solveAt(at, value));
    const base = [there.solved[trial.unknown.reference], ...there.solved].find((one) => one?.ok);
    const found = stillness(there);
    if (!found.still && base?.ok) return { trial: there, base: base.value, ...found, at };
    if (!found.still) return { ...here, still: false };
  }
  return here;
}

/** A value that cannot be solved moves nothing that can be counted, but it is not still either. */
function stillness({ solved }: Trial): Pick<Told, 'moves' | 'still'> {
  const moves = movesOver(solved.flatMap((one) => (one.ok ? [one.value] : [])));
  return { moves, still: isStill(moves) && solved.every(({ ok }) => ok) };
}

const textsAt = (list: readonly Unknown[], at: readonly number[], but: Unknown) =>
  list.flatMap(({ path, values }, u) =>
    path === but.path ? [] : [{ path, text: values[at[u] as number]?.text ?? '' }],
  );

function tried({ trial: { unknown, solved }, base }: Told): QuietQuestion {
  const { path, standing, own, range } = unknown;
  return {
    path,
    standing,
    own,
    question: questionOf(path),
    values: solved.map((one, value) => effectOf(unknown, value, one, base)),
    range: { source: range.source, origin: range.origin },
  };
}

function ranked(told: Told, rank: number, list: readonly Unknown[], variations: Variations): RankedQuestion {
  const { trial, base, moves, at } = told;
  return {
    rank,
    ...tried(told),
    moves,
    onlyAtWorst: at !== undefined,
    ...(at ? { othersAt: textsAt(list, at, trial.unknown) } : {}),
    ...(trial.unknown.path === 'panel.upliftTest' ? { wantedTest: wantedTest(base) } : {}),
    robust: robustOver(namedOf(trial), variations),
  };
}
