/** Roof slope as people write it: 5:12, 22.6 deg, 41.7 %. Kept as rise over run. */
import * as z from 'zod';

export function readSlope(text: string): number | undefined {
  const pitch = /^\s*(\d*\.?\d+)\s*:\s*12\s*$/.exec(text);
  if (pitch) return Number(pitch[1]) / 12;
  const other = /^\s*(\d*\.?\d+)\s*(deg|degrees|°|%)\s*$/.exec(text);
  if (!other) return undefined;
  const value = Number(other[1]);
  if (other[2] === '%') return value / 100;
  return value < 90 ? Math.tan((value * Math.PI) / 180) : undefined;
}

/** Flatter than this no panel drains, and steeper is a wall. */
const LEAST_ON_12 = 0.1;
const MOST_ON_12 = 48;
/** What readSlope can read, for the published schema; nothing is no slope. */
const WRITTEN = /^(?=\s*[\d.]*[1-9])\s*\d*\.?\d+\s*(?::\s*12|deg|degrees|°|%)\s*$/u;

function slopeFault(text: string): string | undefined {
  const slope = readSlope(text);
  if (slope === undefined)
    return `"${text}" is not a slope; write rise on twelve, degrees or percent, for example "4:12", "18.4 deg" or "33 %"`;
  if (slope * 12 < LEAST_ON_12 - 1e-9)
    return `a roof with no slope does not drain; give at least ${LEAST_ON_12}:12, for example "1/4" as "0.25:12"`;
  return slope * 12 > MOST_ON_12
    ? `steeper than ${MOST_ON_12}:12 is a wall; give the slope of the roof`
    : undefined;
}

/** A slope of at least 0.1:12: a roof without fall does not drain and has no up-slope direction. */
export const slopeText = z
  .string()
  .max(40, { error: 'is longer than any slope; write for example "4:12"', abort: true })
  .regex(WRITTEN, {
    error: (issue) => slopeFault(String(issue.input)) ?? 'is not a slope; write for example "4:12"',
    abort: true,
  })
  .transform((text, context): number => {
    const message = slopeFault(text);
    const slope = readSlope(text);
    if (message === undefined && slope !== undefined) return slope;
    context.addIssue({ code: 'custom', message: message ?? 'is not a slope' });
    return z.NEVER;
  });

/** Slope length over plan length, sqrt(1 + m²). */
export const slopeFactor = (slope: number): number => Math.hypot(1, slope);

/** Hip or valley length over the common run at a square corner of equal slopes, sqrt(2 + m²). */
export const hipValleyFactor = (slope: number): number => Math.sqrt(2 + slope * slope);

export const slopeDegrees = (slope: number): number => (Math.atan(slope) * 180) / Math.PI;
