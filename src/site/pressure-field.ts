/** Wind on this roof: its zones, cut on the planes, and the net uplift in each for any effective wind area. */
import type { Psf, SqFt } from '../quantities/quantity.ts';
import type { Unit } from '../quantities/unit.ts';
import type { ZonePiece } from '../roof/cut-zones.ts';
import type { Outcome } from '../trace/refusal.ts';
import type { Trace } from '../trace/step.ts';

export interface FieldZone {
  /** As the standard names it. */
  readonly name: string;
  readonly overhang: boolean;
  /** Name for people: "2e", "3 overhang". */
  readonly label: string;
  readonly planArea_ft2: number;
  readonly slopeArea_ft2: number;
  /** Order of severity, 0 mildest, for hatching. */
  readonly severity: number;
}

export interface FieldPiece extends ZonePiece {
  /** Index of the zone. */
  readonly index: number;
}

/** A number the pressures stand on, for the papers. */
export interface SiteFact {
  readonly symbol: string;
  readonly means: string;
  readonly value: number;
  readonly unit: Unit;
}

export interface PressureField {
  readonly source: 'standard' | 'engineer';
  /** Document and edition, or the engineer's letter. */
  readonly cites: string;
  readonly zones: readonly FieldZone[];
  readonly pieces: readonly FieldPiece[];
  /**
   * Net uplift on a zone at the level of the job's method, positive away from the roof.
   * @param area effective wind area of the fastener or clip
   */
  readonly uplift: (zone: number, area: SqFt, trace?: Trace) => Outcome<Psf>;
  readonly facts: readonly SiteFact[];
  /** Working of the velocity pressure and the measures of the zones. */
  readonly trace: Trace;
  /** Above the speed where public guidance tightens flashings. Nothing while the speed is not known. */
  readonly highWind: boolean | undefined;
  readonly readings: readonly string[];
}
