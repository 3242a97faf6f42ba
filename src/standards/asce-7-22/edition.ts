import type { Asce7 } from '../asce-7-curves/edition.ts';

/** Minimum Design Loads and Associated Criteria for Buildings and Other Structures, 2022 edition. */
export const asce7of2022: Asce7<'7-22'> = { edition: '7-22', id: 'asce-7-22', name: 'ASCE/SEI 7-22' };
