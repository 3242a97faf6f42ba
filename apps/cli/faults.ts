/** Faults on the error stream, one a line, with the field and how to mend it. */
import type { Fault } from '../../src/quantities/fault.ts';
import { ink, printable } from './terminal.ts';

export const BAD_INPUT = 3;

/** A person mends a screenful at a time; a hostile document may hold hundreds of thousands. */
const MOST_SHOWN = 50;

export function reportFaults(what: string, faults: readonly Fault[]): number {
  const red = ink('red', process.stderr);
  process.stderr.write(
    `${red(`${what}: ${faults.length} fault${faults.length === 1 ? '' : 's'}, nothing done.`)}\n`,
  );
  for (const fault of faults.slice(0, MOST_SHOWN))
    process.stderr.write(`  ${printable(fault.path)}  ${printable(fault.message)}\n`);
  if (faults.length > MOST_SHOWN)
    process.stderr.write(`  and ${faults.length - MOST_SHOWN} more; mend these first\n`);
  return BAD_INPUT;
}

/** A wrong call: an unknown option, a missing name. */
export function reportCall(message: string): number {
  process.stderr.write(`${printable(message)}\n`);
  return BAD_INPUT;
}
