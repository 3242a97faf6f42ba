/** Check values of NDS 12.3.3 dowel bearing, Table I1 and Table 12.3.1B. */
const cell = { source: 'table cell, quoted with its page', origin: 'published' } as const;
const text = { source: 'quoted from the 2018 edition', origin: 'published' } as const;
const sums = { source: 'computed from the formula', origin: 'computed' } as const;

/** Table 12.3.3, exact after rounding to 50 psi; the unrounded value to 0.1 psi. */
export const bearingRows = [
  { G: 0.5, D: 0.19, theta: 0, Fe: 4650, unrounded: undefined, ...cell },
  { G: 0.42, D: 0.19, theta: 0, Fe: 3350, unrounded: undefined, ...cell },
  { G: 0.5, D: 0.5, theta: 0, Fe: 5600, unrounded: undefined, ...cell },
  { G: 0.5, D: 0.5, theta: 90, Fe: 3150, unrounded: undefined, ...cell },
  { G: 0.5, D: 0.25, theta: 90, Fe: 4450, unrounded: undefined, ...cell },
  { G: 0.55, D: 0.19, theta: 0, Fe: 5550, unrounded: 5525.5, ...sums },
  { G: 0.49, D: 0.19, theta: 0, Fe: 4450, unrounded: 4467.5, ...sums },
  { G: 0.43, D: 0.19, theta: 0, Fe: 3500, unrounded: 3513.1, ...sums },
  { G: 0.36, D: 0.19, theta: 0, Fe: 2550, unrounded: 2533.4, ...sums },
] as const;

/** Table I1, exact. */
export const bendingRows = [
  { D: 0.113, Fyb: 100000, ...text },
  { D: 0.131, Fyb: 100000, ...text },
  { D: 0.142, Fyb: 100000, ...text },
  { D: 0.148, Fyb: 90000, ...text },
  { D: 0.164, Fyb: 90000, ...text },
  { D: 0.177, Fyb: 90000, ...text },
  { D: 0.19, Fyb: 80000, ...text },
  { D: 0.216, Fyb: 80000, ...text },
  { D: 0.236, Fyb: 80000, ...text },
  { D: 0.242, Fyb: 70000, ...text },
  { D: 0.268, Fyb: 70000, ...text },
  { D: 0.294, Fyb: 60000, ...text },
  { D: 0.3125, Fyb: 60000, ...text },
  { D: 0.372, Fyb: 45000, ...text },
] as const;

/** K_D, exact. */
export const reductionRows = [
  { Dy: 0.113, KD: 2.2, ...cell },
  { Dy: 0.17, KD: 2.2, ...cell },
  { Dy: 0.171, KD: 2.21, ...cell },
  { Dy: 0.173, KD: 2.23, ...cell },
  { Dy: 0.196, KD: 2.46, ...cell },
  { Dy: 0.2499, KD: 2.999, ...cell },
] as const;
