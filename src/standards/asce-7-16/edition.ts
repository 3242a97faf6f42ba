import type { Asce7 } from '../asce-7-curves/edition.ts';

/** Minimum Design Loads and Associated Criteria for Buildings and Other Structures, 2016 edition. */
export const asce7of2016: Asce7<'7-16'> = { edition: '7-16', id: 'asce-7-16', name: 'ASCE/SEI 7-16' };
