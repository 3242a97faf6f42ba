/** Sizes that stand behind numbers: screw numbers, penny sizes, wire gauge, metric tapping threads. */

/** Numbers beyond 24 are not made. */
export const MOST_SCREW_NUMBER = 24;

/** Nominal diameter of a screw number, in: 0.060 + 0.013 n, ASME B18.6.4 (published). */
export const screwNumberDiameter = (number: number): number => Math.round(60 + 13 * number) / 1000;

/** A note on numbers whose printed diameter is not the same everywhere. Origin: memory of trade tables. */
export function screwNumberNote(number: number): string {
  if (number === 14) return '; about a quarter inch, and many tables print 0.250';
  return number === 17 ? '; some tables print 0.290' : '';
}

export interface NailSize {
  readonly diameter_in: number;
  readonly length_in: number;
}

type Pennies = Readonly<Record<number, readonly [diameter: number, length: number]>>;

/** Steel wire nails, NDS appendix L, table L4 and ASTM F1667. Origin: memory. */
const nails: Readonly<Record<string, Pennies>> = {
  common: {
    6: [0.113, 2],
    7: [0.113, 2.25],
    8: [0.131, 2.5],
    10: [0.148, 3],
    12: [0.148, 3.25],
    16: [0.162, 3.5],
    20: [0.192, 4],
    30: [0.207, 4.5],
    40: [0.225, 5],
    50: [0.244, 5.5],
    60: [0.263, 6],
  },
  box: {
    6: [0.099, 2],
    7: [0.099, 2.25],
    8: [0.113, 2.5],
    10: [0.128, 3],
    12: [0.128, 3.25],
    16: [0.135, 3.5],
    20: [0.148, 4],
    30: [0.148, 4.5],
    40: [0.162, 5],
  },
  sinker: {
    7: [0.099, 2.125],
    8: [0.113, 2.375],
    10: [0.12, 2.875],
    12: [0.135, 3.125],
    16: [0.148, 3.25],
    20: [0.177, 3.75],
    30: [0.192, 4.25],
    40: [0.207, 4.75],
    60: [0.244, 5.75],
  },
};

export function nailSize(type: string, penny: number): NailSize | undefined {
  const found = nails[type]?.[penny];
  return found && { diameter_in: found[0], length_in: found[1] };
}

/** Steel wire gauge to inches, for the nails of roofing. Origin: memory (US steel wire gauge). */
export const wireGauge: Readonly<Record<number, number>> = {
  8: 0.162,
  9: 0.148,
  10: 0.135,
  11: 0.12,
  12: 0.106,
  13: 0.092,
  14: 0.08,
};

/** Pitch of the metric tapping screw threads, mm, ISO 1478 (published for 4.2 to 6.3, the rest from memory). */
export const tappingPitch_mm: Readonly<Record<string, number>> = {
  '2.9': 1.1,
  '3.5': 1.3,
  '3.9': 1.3,
  '4.2': 1.4,
  '4.8': 1.6,
  '5.5': 1.8,
  '6.3': 1.8,
  '8': 2.1,
};
