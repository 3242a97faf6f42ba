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

/** A slope above nothing: a roof without fall does not drain and has no up-slope direction. */
export const slopeText = z.string().transform((text, context): number => {
  const slope = readSlope(text);
  const fault =
    slope === undefined
      ? `"${text}" is not a slope; write rise on twelve, degrees or percent, for example "4:12", "18.4 deg" or "33 %"`
      : slope <= 0
        ? 'a roof with no slope does not drain; give at least a slight slope, for example "1/4" as "0.25:12"'
        : slope > 4
          ? 'steeper than 48:12 is a wall; give the slope of the roof'
          : undefined;
  if (fault === undefined && slope !== undefined) return slope;
  context.addIssue({ code: 'custom', message: fault ?? 'not a slope' });
  return z.NEVER;
});

/** Slope length over plan length, sqrt(1 + m²). */
export const slopeFactor = (slope: number): number => Math.hypot(1, slope);

/** Hip or valley length over the common run at a square corner of equal slopes, sqrt(2 + m²). */
export const hipValleyFactor = (slope: number): number => Math.sqrt(2 + slope * slope);

export const slopeDegrees = (slope: number): number => (Math.atan(slope) * 180) / Math.PI;
