/** Computed by hand from the notation under the figures. */
export const edgeStrips: readonly { L: number; h: number; theta: number; a: number }[] = [
  { L: 30, h: 12, theta: 20, a: 3 },
  { L: 40, h: 30, theta: 20, a: 4 },
  { L: 100, h: 20, theta: 20, a: 8 },
  { L: 100, h: 30, theta: 10, a: 10 },
  { L: 200, h: 15, theta: 5, a: 8 },
  { L: 400, h: 12, theta: 3, a: 9.6 },
  { L: 25, h: 9, theta: 30, a: 3 },
  { L: 80, h: 60, theta: 45, a: 8 },
  { L: 150, h: 10, theta: 15, a: 6 },
  { L: 60, h: 18, theta: 18.43, a: 6 },
  { L: 100, h: 80, theta: 5, a: 10 },
  { L: 25, h: 70, theta: 5, a: 3 },
];
