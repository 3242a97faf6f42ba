/**
 * What must be said when the wood screw equations are used for a roof screw: NDS covers screws made to
 * ASME B18.6.1; self-drilling and self-tapping roof screws are not. Their values stand on the allowance of
 * 12.1.8 and 11.1.1.3, and a test or an evaluation report of the screw itself is better evidence.
 */
import { note, type Trace } from '../../trace/step.ts';
import type { HoldingMember, ScrewStandard } from './conditions.ts';
import { citation, type NdsEdition } from './edition.ts';

export const screwAllowance =
  'This screw is not a wood screw of ASME B18.6.1, which the clause is written for. Eq. 12.2-2 and the yield ' +
  'equations are used for it as an allowance under 12.1.8 and 11.1.1.3; a withdrawal test or an evaluation report ' +
  'of the screw itself governs over this value.';

export function noteScrewStandard(
  edition: NdsEdition,
  standard: ScrewStandard,
  trace: Trace | undefined,
): void {
  if (standard === 'other than ASME B18.6.1')
    note(trace, citation(edition, '12.1.8, 11.1.1.3'), screwAllowance);
}

const panelAllowance =
  'NDS withdrawal is written for the side grain of lumber; it is used for a panel as an allowance, with a specific ' +
  'gravity of at most 0.42 for screws and 0.40 for nails whatever the panel grade. ';

/** What is known of a panel that holds a fastener, by product. */
export const panelAllowances: Readonly<Record<Exclude<HoldingMember, 'lumber'>, string>> = {
  plywood: `${panelAllowance}Against the average ultimate loads of the plywood association's note E830 (wood screws, 2895 D L, recalled) the screw value at G 0.42 keeps a ratio of 5.8; at G 0.50 it would be 4.1.`,
  OSB: `${panelAllowance}No published table of screw withdrawal from OSB was found to confirm it: test the deck where the value decides.`,
};

/** Records that a panel holds the fastener, with what is known about that. */
export function noteHoldingMember(
  edition: NdsEdition,
  member: HoldingMember,
  trace: Trace | undefined,
): void {
  if (member !== 'lumber') note(trace, citation(edition, '12.2, 12.1.8'), panelAllowances[member]);
}
