/** Table 26.9-1 as carried in a public verification test (two decimals; the cell at 4000 ft is 0.005 low), then Ke = e^(-0.0000362 z) computed. */
export const groundElevation: readonly { ze: number; Ke: number; tolerance: number; origin: string }[] = [
  { ze: 2000, Ke: 0.93, tolerance: 0.01, origin: 'published' },
  { ze: 3000, Ke: 0.9, tolerance: 0.01, origin: 'published' },
  { ze: 4000, Ke: 0.86, tolerance: 0.01, origin: 'published' },
  { ze: 6000, Ke: 0.8, tolerance: 0.01, origin: 'published' },
  { ze: 0, Ke: 1, tolerance: 0.0005, origin: 'computed' },
  { ze: 500, Ke: 0.9821, tolerance: 0.0005, origin: 'computed' },
  { ze: 1000, Ke: 0.9644, tolerance: 0.0005, origin: 'computed' },
  { ze: 5280, Ke: 0.826, tolerance: 0.0005, origin: 'computed' },
  { ze: 7000, Ke: 0.7762, tolerance: 0.0005, origin: 'computed' },
];
