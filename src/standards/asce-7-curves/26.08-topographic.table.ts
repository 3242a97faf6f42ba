import type { Feature } from './26.08-topographic-factor.ts';
import type { Exposure } from './edition.ts';

/** H/Lh and K1. Published: national building code of Bangladesh 2020, Fig. 6.2.4, which reproduces the figure (two decimals). */
export const steepness: readonly { feature: Feature; exposure: Exposure; steepness: number; K1: number }[] = [
  { feature: 'ridge', exposure: 'C', steepness: 0.2, K1: 0.29 },
  { feature: 'ridge', exposure: 'C', steepness: 0.25, K1: 0.36 },
  { feature: 'ridge', exposure: 'C', steepness: 0.3, K1: 0.43 },
  { feature: 'ridge', exposure: 'C', steepness: 0.35, K1: 0.51 },
  { feature: 'ridge', exposure: 'C', steepness: 0.4, K1: 0.58 },
  { feature: 'ridge', exposure: 'C', steepness: 0.45, K1: 0.65 },
  { feature: 'ridge', exposure: 'C', steepness: 0.5, K1: 0.72 },
  { feature: 'escarpment', exposure: 'C', steepness: 0.2, K1: 0.17 },
  { feature: 'escarpment', exposure: 'C', steepness: 0.25, K1: 0.21 },
  { feature: 'escarpment', exposure: 'C', steepness: 0.3, K1: 0.26 },
  { feature: 'escarpment', exposure: 'C', steepness: 0.4, K1: 0.34 },
  { feature: 'escarpment', exposure: 'C', steepness: 0.45, K1: 0.38 },
  { feature: 'escarpment', exposure: 'C', steepness: 0.5, K1: 0.43 },
  { feature: 'hill', exposure: 'C', steepness: 0.2, K1: 0.21 },
  { feature: 'hill', exposure: 'C', steepness: 0.3, K1: 0.32 },
  { feature: 'hill', exposure: 'C', steepness: 0.35, K1: 0.37 },
  { feature: 'hill', exposure: 'C', steepness: 0.4, K1: 0.42 },
  { feature: 'hill', exposure: 'C', steepness: 0.45, K1: 0.47 },
  { feature: 'hill', exposure: 'C', steepness: 0.5, K1: 0.53 },
];

/** x/Lh and K2, same source. mu 4 is the escarpment downwind, 1.5 every other case. */
export const distance: readonly { mu: number; xOverLh: number; K2: number }[] = [
  { mu: 4, xOverLh: 0, K2: 1 },
  { mu: 4, xOverLh: 0.5, K2: 0.88 },
  { mu: 4, xOverLh: 1, K2: 0.75 },
  { mu: 4, xOverLh: 1.5, K2: 0.63 },
  { mu: 4, xOverLh: 2, K2: 0.5 },
  { mu: 4, xOverLh: 2.5, K2: 0.38 },
  { mu: 4, xOverLh: 3, K2: 0.25 },
  { mu: 4, xOverLh: 3.5, K2: 0.13 },
  { mu: 4, xOverLh: 4, K2: 0 },
  { mu: 1.5, xOverLh: 0, K2: 1 },
  { mu: 1.5, xOverLh: 0.5, K2: 0.67 },
  { mu: 1.5, xOverLh: 1, K2: 0.33 },
  { mu: 1.5, xOverLh: 1.5, K2: 0 },
];

/** z/Lh and K3, same source. */
export const height: readonly { feature: Feature; zOverLh: number; K3: number }[] = [
  { feature: 'ridge', zOverLh: 0.1, K3: 0.74 },
  { feature: 'escarpment', zOverLh: 0.1, K3: 0.78 },
  { feature: 'hill', zOverLh: 0.1, K3: 0.67 },
  { feature: 'ridge', zOverLh: 0.2, K3: 0.55 },
  { feature: 'escarpment', zOverLh: 0.2, K3: 0.61 },
  { feature: 'hill', zOverLh: 0.2, K3: 0.45 },
  { feature: 'ridge', zOverLh: 0.3, K3: 0.41 },
  { feature: 'escarpment', zOverLh: 0.3, K3: 0.47 },
  { feature: 'hill', zOverLh: 0.3, K3: 0.3 },
  { feature: 'escarpment', zOverLh: 0.4, K3: 0.37 },
  { feature: 'hill', zOverLh: 0.4, K3: 0.2 },
  { feature: 'ridge', zOverLh: 0.5, K3: 0.22 },
  { feature: 'escarpment', zOverLh: 0.5, K3: 0.29 },
  { feature: 'hill', zOverLh: 0.5, K3: 0.14 },
  { feature: 'ridge', zOverLh: 0.6, K3: 0.17 },
  { feature: 'escarpment', zOverLh: 0.6, K3: 0.22 },
  { feature: 'hill', zOverLh: 0.6, K3: 0.09 },
  { feature: 'ridge', zOverLh: 0.7, K3: 0.12 },
  { feature: 'escarpment', zOverLh: 0.7, K3: 0.17 },
  { feature: 'hill', zOverLh: 0.7, K3: 0.06 },
  { feature: 'ridge', zOverLh: 0.8, K3: 0.09 },
  { feature: 'escarpment', zOverLh: 0.8, K3: 0.14 },
  { feature: 'hill', zOverLh: 0.8, K3: 0.04 },
  { feature: 'ridge', zOverLh: 0.9, K3: 0.07 },
  { feature: 'escarpment', zOverLh: 0.9, K3: 0.11 },
  { feature: 'hill', zOverLh: 0.9, K3: 0.03 },
  { feature: 'ridge', zOverLh: 1, K3: 0.05 },
  { feature: 'escarpment', zOverLh: 1, K3: 0.08 },
  { feature: 'hill', zOverLh: 1, K3: 0.02 },
  { feature: 'ridge', zOverLh: 1.5, K3: 0.01 },
  { feature: 'escarpment', zOverLh: 1.5, K3: 0.02 },
  { feature: 'hill', zOverLh: 1.5, K3: 0 },
];

/** Whole factors, computed by hand from the multipliers, three decimals. */
export const whole: readonly {
  feature: Feature;
  exposure: Exposure;
  side: 'upwind' | 'downwind';
  H: number;
  Lh: number;
  x: number;
  z: number;
  K1: number;
  K2: number;
  K3: number;
  Kzt: number;
}[] = [
  {
    feature: 'escarpment',
    exposure: 'C',
    side: 'downwind',
    H: 60,
    Lh: 150,
    x: 50,
    z: 25,
    K1: 0.34,
    K2: 0.9167,
    K3: 0.6592,
    Kzt: 1.4531,
  },
  {
    feature: 'ridge',
    exposure: 'C',
    side: 'upwind',
    H: 100,
    Lh: 150,
    x: 100,
    z: 20,
    K1: 0.725,
    K2: 0.6667,
    K3: 0.7408,
    Kzt: 1.8443,
  },
  {
    feature: 'hill',
    exposure: 'B',
    side: 'upwind',
    H: 80,
    Lh: 400,
    x: 0,
    z: 30,
    K1: 0.19,
    K2: 1,
    K3: 0.7408,
    Kzt: 1.3013,
  },
  {
    feature: 'escarpment',
    exposure: 'D',
    side: 'downwind',
    H: 30,
    Lh: 100,
    x: 300,
    z: 30,
    K1: 0.285,
    K2: 0.25,
    K3: 0.4724,
    Kzt: 1.0684,
  },
  {
    feature: 'ridge',
    exposure: 'B',
    side: 'downwind',
    H: 120,
    Lh: 300,
    x: 0,
    z: 30,
    K1: 0.52,
    K2: 1,
    K3: 0.7408,
    Kzt: 1.9188,
  },
];
