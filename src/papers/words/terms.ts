/** Words of the engine in the language of a paper. A word the catalogue lacks (a person's own) is printed as it stands. */
import type { FieldZone } from '../../site/pressure-field.ts';
import type { Words } from './shape.ts';

type Terms = Words['terms'];
type List = {
  [K in keyof Terms]: Terms[K] extends Readonly<Record<string, string>> ? K : never;
}[keyof Terms];

const own = (list: Readonly<Record<string, string>>, text: string): string | undefined =>
  Object.hasOwn(list, text) ? list[text] : undefined;

export const termOf = (list: List, text: string, words: Words): string =>
  own(words.terms[list], text) ?? text;

/** "3 overhang". */
export const zoneName = (zone: FieldZone | undefined, words: Words): string =>
  (zone?.label ?? '').replace(/\boverhang$/, words.terms.overhang);

/** "wood purlin, Spruce-Pine-Fir", "bearing plate BP46": the species and the stock number stay. */
export function plyName(name: string, words: Words): string {
  const whole = own(words.terms.ply, name);
  if (whole !== undefined) return whole;
  const [, first = '', rest = ''] = /^(.*?)(,.*| [A-Z0-9][A-Z0-9./-]+)$/.exec(name) ?? [];
  const named = own(words.terms.ply, first);
  return named === undefined ? name : `${named}${rest}`;
}

/** "south 2", "wing east". */
export const planeName = (plane: string, words: Words): string =>
  plane
    .split(' ')
    .map((part) => termOf('plane', part, words))
    .join(' ');

/** The value of an input, where it is a choice from a list. @param path as `panel.system` */
export function inputText(path: string, text: string, words: Words): string {
  const { input } = words.terms;
  const field = path.split('.').at(-1) ?? '';
  if (field === 'plane') return planeName(text, words);
  if (/^(underlayment|insulation)\.name$/.test(path)) return plyName(text, words);
  const list = path === 'support.kind' ? 'support' : field;
  const known = (input as Readonly<Record<string, Readonly<Record<string, string>>>>)[list];
  return (known && own(known, text)) ?? own(listed.has(field) ? input.other : {}, text) ?? text;
}

/** Fields whose few words stand in one list. */
const listed: ReadonlySet<string> = new Set([
  'level',
  'edgeMember',
  'moisture',
  'treatment',
  'topography',
  'pullOnOneSide',
]);
