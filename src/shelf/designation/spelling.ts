/** Trade words written with one slip: "waffer", "pancacke", "galvanzied". Only words of five letters and more. */
import { type NormalText, respelled } from './normal-text.ts';
import { fillers, vocabulary } from './vocabulary.ts';

const LEAST = 5;
const more =
  'inches pulgada pulgadas washer washers rondana rondanas arandela arandelas bonded neoprene neopreno rubber pieces boxes cajas piezas thick thread threads number numero penny gauge remache grip range wide'.split(
    ' ',
  );
const known: ReadonlySet<string> = new Set([
  ...vocabulary.flatMap(([phrases]) => phrases.split(/[^a-z]+/)),
  ...more,
  ...fillers,
]);
const candidates: readonly string[] = [...known].filter((word) => word.length >= LEAST);

/** Whether one letter left out, put in, changed, or swapped with its neighbour makes one word of the other. */
export function oneSlipApart(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1 || a === b) return false;
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  const [restA, restB] = [a.slice(at), b.slice(at)];
  if (restA.length === restB.length) return restA.slice(1) === restB.slice(1) || swapped(restA, restB);
  return restA.length > restB.length ? restA.slice(1) === restB : restB.slice(1) === restA;
}

const swapped = (a: string, b: string): boolean =>
  a[0] === b[1] && a[1] === b[0] && a.slice(2) === b.slice(2);

export interface Respelling {
  readonly normal: NormalText;
  readonly taken: readonly (readonly [written: string, word: string])[];
}

/** Puts right every word that is one slip from exactly one trade word. */
export function mendSpelling(normal: NormalText): Respelling {
  let mended = normal;
  const taken: [string, string][] = [];
  for (const match of [...normal.text.matchAll(/(?<![a-z])[a-z]{5,16}(?![a-z])/g)].reverse()) {
    const [written] = match;
    if (known.has(written)) continue;
    const near = candidates.filter((word) => oneSlipApart(written, word));
    if (near.length !== 1) continue;
    const word = near[0] as string;
    mended = respelled(mended, match.index, match.index + written.length, word);
    taken.unshift([written, word]);
  }
  return { normal: mended, taken };
}
