/** A joint of the roof: what it is made of, what it must carry, and where its fasteners can stand. */
import type { EdgeTag } from '../job/roof-input.ts';
import type { BuildUp } from './ply.ts';

/** What kind of fastener a connection takes, by how the head must bear and what it must seal. */
export const duties = [
  'clip',
  'flange',
  'panel',
  'stitch',
  'trim',
  'concealed trim',
  'bracket',
  'rivet',
] as const;
export type Duty = (typeof duties)[number];

/** A number that is a habit of the trade or a guide's, not a requirement of strength. */
export interface Practice {
  readonly spacing_in: number;
  readonly kind: 'code' | 'government guidance' | 'association practice' | 'common practice';
  readonly source: string;
}

/** Where fasteners of a connection may stand. */
export type Placement =
  /** On lines up the slope (seams or ribs); along them free on a deck, or on the supports. */
  | {
      readonly by: 'field';
      readonly lines: 'seams' | 'ribs';
      readonly pitch_in: number;
      readonly along: 'free' | 'supports';
    }
  /** In one row (or more) along every edge of a tag. */
  | { readonly by: 'edge'; readonly tag: EdgeTag; readonly rows: number }
  /** In the laps between panels, along the slope. */
  | { readonly by: 'side lap'; readonly pitch_in: number }
  /** A set number at each of a number of pieces, such as pipe boots, whose places are not drawn. */
  | { readonly by: 'piece'; readonly plane: string; readonly pieces: number; readonly perPiece: number }
  /** Across the laps of trims along the edges of a plane, one row at every joint. */
  | {
      readonly by: 'trim joints';
      readonly plane: string;
      readonly tags: readonly EdgeTag[];
      readonly every_in: number;
      readonly perPiece: number;
    }
  /** Across every run where sheets of the longest length end, measured along the slope from the eave. */
  | {
      readonly by: 'end laps';
      readonly plane: string;
      readonly every_in: number;
      readonly pitch_in: number;
      readonly perPiece: number;
    };

/** Placements of a set number of fasteners at each place, with no spacing along a row. */
export type PieceMeal = Extract<Placement, { readonly perPiece: number }>;

export const isPieceMeal = (placement: Placement): placement is PieceMeal => 'perPiece' in placement;

export interface Connection {
  readonly id: string;
  readonly duty: Duty;
  readonly buildUp: BuildUp;
  readonly placement: Placement;
  /** Width of roof or trim that hangs on one line of fasteners, in inches. */
  readonly tributaryWidth_in: number;
  /** How the load is stated, in one sentence, for the proof. */
  readonly loadRule: string;
  /** Screws at one place: of a clip, of a bracket. */
  readonly each: number;
  /** Load on one side of the head only: pull-over counts half. */
  readonly oneSided: boolean;
  /** Stands the whole chain of the roof on it: panel system and deck are links too. */
  readonly primary: boolean;
  /** Usual spacing; a cap for primary rows, the spacing itself for trims unless the check wants less. */
  readonly practice: Practice;
}
