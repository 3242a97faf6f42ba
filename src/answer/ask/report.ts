/** What to ask next, as a document: questions ranked by how far the answer moves, and what need not be asked. */
import type { VerdictCount } from '../answer.ts';
import type { Moves } from './moves.ts';
import type { PlausibleRange } from './plausible-range.ts';
import type { Question } from './questions.ts';
import type { Robust } from './robust.ts';
import type { Unknown, WithoutRange } from './unknowns.ts';

export interface Brief {
  readonly count: VerdictCount;
  readonly price: number;
}

/** What one value of an unknown makes of the answer, against the value the other questions are compared at. */
export interface ValueEffect {
  readonly text: string;
  readonly isReference: boolean;
  /** Why the job cannot be solved with this value; then there is nothing else. */
  readonly cannot?: string;
  readonly answer?: Brief;
  readonly priceDifference?: number;
  readonly items?: readonly { readonly connection: string; readonly from: string; readonly to: string }[];
  readonly verdicts?: readonly {
    readonly connection: string;
    readonly zone: string;
    readonly from: string;
    readonly to: string;
  }[];
  /** Cells with another spacing or number of fasteners, or that are not there with the other value. */
  readonly spacings?: number;
}

/** What a tested uplift table must at least allow, at the level of the job's method. */
export interface WantedTest {
  readonly spacing_in: number;
  readonly allowable_psf: number;
}

interface Tried extends Pick<Unknown, 'path' | 'standing' | 'own'> {
  readonly question: Question;
  readonly values: readonly ValueEffect[];
  readonly range: Pick<PlausibleRange, 'source' | 'origin'>;
}

export interface RankedQuestion extends Tried {
  /** 1 is asked first. */
  readonly rank: number;
  readonly moves: Moves;
  /** It moves the answer only where the other unknowns stand at their worst; its values are told as they are there. */
  readonly onlyAtWorst: boolean;
  /** Where the others stand then. */
  readonly othersAt?: readonly { readonly path: string; readonly text: string }[];
  readonly robust: Robust;
  readonly wantedTest?: readonly WantedTest[];
}

/** Nothing of the answer moves over the values, with the other unknowns at their reference, at their worst, and at the worst fasteners can answer for. */
export type QuietQuestion = Tried;

export interface JointRobust {
  /** Of each unknown the worst value that fasteners can answer for. */
  readonly corner: readonly { readonly path: string; readonly text: string }[];
  /** The answer solved at that corner; nothing when it cannot be solved. */
  readonly answer: Brief | undefined;
  /**
   * One specification as sound as the best at the corner, and at every value tried alone whose answer is as sound as
   * the corner's (with the others at their reference, a value may do worse for reasons that are theirs).
   */
  readonly robust: Robust;
  /** Unknowns left out of it, since their values make another roof, other joints or other zones. */
  readonly without: readonly string[];
}

export interface AskReport {
  readonly currency: string;
  /** The job as it stands; nothing while it cannot be solved at all. */
  readonly present: Brief | undefined;
  /** Every unknown at the value the others are compared at. */
  readonly reference: Brief;
  readonly questions: readonly RankedQuestion[];
  readonly needNotBeAsked: readonly QuietQuestion[];
  /** Open, and no plausible range is shipped to try: to be asked as they stand. */
  readonly withoutRange: readonly WithoutRange[];
  readonly joint: JointRobust | undefined;
}
