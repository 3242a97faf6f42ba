/** Values that are written into the document just as they are shown. */
import type { PlausibleValue } from './plausible-range.ts';

export const texts =
  (...list: readonly string[]) =>
  (): readonly PlausibleValue[] =>
    list.map((text) => ({ text, put: text }));

export const always = (): boolean => true;
