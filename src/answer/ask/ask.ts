/**
 * What to ask next. Every unknown is tried over its plausible values while the others stand at a reference: what is
 * assumed, or what is usual. One that moves nothing there is tried once more with all others at their worst, so that
 * it is not left unasked because another unknown hid it. This is one at a time and one joint corner, not every
 * combination.
 */
import type { Job } from '../../job/job.ts';
import { type Read, readJob } from '../../job/read-job.ts';
import { readShelf } from '../../shelf/read-shelf.ts';
import type { Shelf } from '../../shelf/shelf.ts';
import { briefOf, effectOf, wantedTest } from './effects.ts';
import { jointRobust, namedOf } from './joint.ts';
import { byMoves, isStill, type Moves, movesOver } from './moves.ts';
import type { Outcome } from './outcome.ts';
import { questionOf } from './questions.ts';
import type { AskReport, QuietQuestion, RankedQuestion } from './report.ts';
import { robustOver } from './robust.ts';
import { type Trial, trialOf } from './trial.ts';
import { atValues, unknownsOf } from './unknowns.ts';
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
  const solveAt = (at: readonly number[]) => variations.solve(atValues(document, list, at));
  const reference = solveAt(references);
  if (!reference.ok) return reference;
  const trials = list.map((unknown, u) =>
    trialOf(unknown, (value) =>
      value === unknown.reference ? reference : solveAt(references.with(u, value)),
    ),
  );
  const worst = trials.map((trial) => trial.worst);
  const corner = solveAt(worst);
  const present = variations.solve(document);
  const told = trials.map((trial, u) => {
    const moves = movesOf(trial.solved);
    if (!isStill(moves) || trial.solved.some(({ ok }) => !ok)) return { trial, moves, onlyAtWorst: false };
    const { values } = trial.unknown;
    const atWorst = values.map((_, value) => (value === worst[u] ? corner : solveAt(worst.with(u, value))));
    return { trial, moves: movesOf(atWorst), onlyAtWorst: true };
  });
  const still = (one: (typeof told)[number]) => one.onlyAtWorst && isStill(one.moves);
  const questions = told
    .filter((one) => !still(one))
    .sort((a, b) => Number(a.onlyAtWorst) - Number(b.onlyAtWorst) || byMoves(a.moves, b.moves))
    .map(({ trial, moves, onlyAtWorst }, i) => ({
      ...ranked(trial, moves, reference.value, variations),
      onlyAtWorst,
      rank: i + 1,
    }));
  return {
    ok: true,
    value: {
      currency: shelf.currency,
      present: present.ok ? briefOf(present.value) : undefined,
      reference: briefOf(reference.value),
      questions,
      needNotBeAsked: told.filter(still).map(({ trial }) => tried(trial, reference.value)),
      withoutRange,
      joint: list.length === 0 ? undefined : jointRobust(trials, solveAt, reference.value, variations),
    },
  };
}

/** Values that cannot be solved move nothing here; they are told by themselves. */
const movesOf = (solved: readonly Read<Outcome>[]): Moves =>
  movesOver(solved.flatMap((one) => (one.ok ? [one.value] : [])));

function tried({ unknown, solved }: Trial, reference: Outcome): QuietQuestion {
  const { path, standing, own, range } = unknown;
  return {
    path,
    standing,
    own,
    question: questionOf(path),
    values: solved.map((one, value) => effectOf(unknown, value, one, reference)),
    range: { source: range.source, origin: range.origin },
  };
}

function ranked(
  trial: Trial,
  moves: Moves,
  reference: Outcome,
  variations: Variations,
): Omit<RankedQuestion, 'rank' | 'onlyAtWorst'> {
  const sufficient = trial.unknown.path === 'panel.upliftTest' ? { wantedTest: wantedTest(reference) } : {};
  return { ...tried(trial, reference), moves, robust: robustOver(namedOf(trial), variations), ...sufficient };
}
