/** One figure of roof coefficients, as rows. */
import type { GcpCurve } from './gcp-curve.ts';
import type { GcpRule } from './gcp-rule.ts';

export interface RoofFigure {
  /** Document, edition and figure, as cited. */
  readonly cites: string;
  /** From the mildest to the most severe for small areas. */
  readonly zones: readonly string[];
  /** Downward, on every zone. Absent where the figure has no such curve. */
  readonly positive?: GcpCurve;
  readonly negative: Readonly<Record<string, GcpRule>>;
  /** Curves for overhangs, top and bottom together. Absent: roof above plus wall below. */
  readonly overhang?: { readonly cites: string; readonly negative: Readonly<Record<string, GcpRule>> };
  /** What a parapet of 3 ft or more all round changes. */
  readonly parapet?: {
    readonly negativeAs: Readonly<Record<string, string>>;
    /** Zones whose positive coefficient becomes that of the wall. */
    readonly wallPositiveIn: readonly string[];
  };
}

/** All zone names of all figures; which of them a figure has stands in the figure. */
export const roofZones: readonly string[] = ["1'", '1', '2', "2'", '2e', '2n', '2r', '3', "3'", '3e', '3r'];
