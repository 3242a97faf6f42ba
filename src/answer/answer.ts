/** Everything the engine says of one job. Papers, screens and the command line show this and compute nothing. */
import type { ConnectionChoice } from '../choose/schedule.ts';
import type { Basis } from '../job/basis.ts';
import type { Job } from '../job/job.ts';
import type { FastenerSet } from '../layout/fastener-set.ts';
import type { Roof } from '../roof/roof.ts';
import type { PressureField } from '../site/pressure-field.ts';
import type { Takeoff } from '../takeoff/takeoff.ts';
import type { InputStanding } from './inputs.ts';

export interface VerdictCount {
  readonly holds: number;
  readonly fallsShort: number;
  readonly unproven: number;
}

export interface Answer {
  readonly job: Job;
  readonly basis: Basis;
  readonly shelf: {
    readonly name: string;
    readonly edition: number;
    readonly date: string;
    readonly currency: string;
  };
  /** Every input by its standing: given, assumed with the reason, asked with the question. */
  readonly inputs: readonly InputStanding[];
  readonly roof: Roof;
  readonly field: PressureField;
  /** One for each kind of joint, with its schedule lines. */
  readonly choices: readonly ConnectionChoice[];
  readonly layout: readonly FastenerSet[];
  readonly takeoff: Takeoff;
  /** Verdicts of the schedule lines. */
  readonly count: VerdictCount;
  /** What a reader must know before using any of it. */
  readonly remarks: readonly string[];
}
