/** What a program tells its caller of an answer. */
import type { VerdictCount } from './answer.ts';

export const exitCodes = { allHold: 0, fallsShort: 1, unproven: 2, badInput: 3 } as const;

/** 0 all hold, 1 something falls short, 2 nothing falls short but something is unproven or nothing was checked. */
export function exitCodeOf(count: VerdictCount): 0 | 1 | 2 {
  if (count.fallsShort > 0) return exitCodes.fallsShort;
  return count.unproven > 0 || count.holds === 0 ? exitCodes.unproven : exitCodes.allHold;
}
