/**
 * Reads what a person writes for a quantity: "141 mph", "1 1/2 in", "15/32 in", 24'6", "5 ft 3 in", "0.8 mm".
 * A bare number is refused: nothing crosses a boundary without its unit.
 * The reader and the pattern of the published schema are made of the same parts, so that they cannot disagree.
 */
import { convert, type Quantity, quantity } from './quantity.ts';
import { isUnit, sameDimension, type Unit, units } from './unit.ts';

/** Other spellings people use; each maps to one unit of the table. */
const spellings: Readonly<Record<string, Unit>> = {
  '"': 'in',
  '″': 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  '′': 'ft',
  foot: 'ft',
  feet: 'ft',
  ft2: 'ft²',
  sqft: 'ft²',
  'sq ft': 'ft²',
  in2: 'in²',
  mm2: 'mm²',
  m2: 'm²',
  lb: 'lbf',
  lbs: 'lbf',
  'lb/ft': 'lbf/ft',
  'lb/in': 'lbf/in',
  'lb/ft2': 'psf',
  'lb/ft²': 'psf',
  'N/mm2': 'MPa',
  'N/mm²': 'MPa',
  tpi: '1/in',
  degree: 'deg',
  degrees: 'deg',
  '°': 'deg',
  'lb-in': 'lbf·in',
  'in-lb': 'lbf·in',
  'kg/m3': 'kg/m³',
};

export interface ReadFault {
  readonly fault: string;
  readonly mend: string;
}

export function isReadFault(value: unknown): value is ReadFault {
  return typeof value === 'object' && value !== null && 'fault' in value;
}

/** "1 1/2", "1-1/2", "15/32", "24", ".75", "1e3". A fraction over nothing is no number. */
const OVER = String.raw`\d+\s*\/\s*0*[1-9]\d*`;
const NUMBER = String.raw`(?:\d+[\s\-]+${OVER}|${OVER}|(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+\-]?\d+)?)`;

const unitNamed = (name: string): Unit | undefined =>
  isUnit(name) ? name : Object.hasOwn(spellings, name) ? spellings[name] : undefined;

/** Degrees have no dimension, but no one means a ratio by them. */
const measures = (unit: Unit, wanted: Unit): boolean =>
  sameDimension(unit, wanted) && (unit === 'deg') === (wanted === 'deg');

/** Every spelling of every unit that fits, longest first, as one alternation. */
function namesOf(fits: (unit: Unit) => boolean): string {
  const names = [...Object.keys(units), ...Object.keys(spellings)].filter((name) => {
    const unit = unitNamed(name);
    // A bare number has no unit to read: "5 1" is no way to write a ratio.
    return unit !== undefined && name !== '1' && fits(unit);
  });
  return names
    .sort((a, b) => b.length - a.length)
    .map((name) => name.replaceAll('/', '\\/'))
    .join('|');
}

const FEET = namesOf((unit) => unit === 'ft');
const INCHES = namesOf((unit) => unit === 'in');

/** Whether a minus sign may, may not or must stand before the number (nothing needs none). */
export type Sign = 'either' | 'positive' | 'negative';
const signs: Readonly<Record<Sign, string>> = {
  either: '',
  positive: String.raw`(?!\s*-)`,
  negative: String.raw`(?=\s*(?:-|\+?0+(?:\.0+)?[^\d.]))`,
};

/**
 * What may be written for a quantity in a unit, as the source of a regular expression with the flag u. Groups:
 * sign; number and name of a single quantity, or feet and inches.
 */
function grammar(wanted: Unit): string {
  const names = namesOf((unit) => measures(unit, wanted));
  const single = String.raw`(${NUMBER})\s*(${names})\.?`;
  const both = String.raw`(${NUMBER})\s*(?:${FEET})\.?[\s\-]*(${NUMBER})\s*(?:${INCHES})\.?`;
  return String.raw`\s*([+\-]?)(?:${measures('ft', wanted) ? `${single}|${both}` : single})\s*`;
}

/** The pattern of a quantity for a published schema. @param nothing whether zero may be written */
export function quantityPattern(wanted: Unit, sign: Sign = 'either', nothing = true): RegExp {
  // Groups serve the reader only.
  const plain = grammar(wanted).replace(/(?<!\\)\((?!\?)/g, '(?:');
  return new RegExp(`^${nothing ? '' : '(?=.*[1-9])'}${signs[sign]}${plain}$`, 'u');
}

function readNumber(text: string): number {
  const mixed = /^(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)$/.exec(text);
  if (!mixed) return Number(text);
  const [, whole = '0', top = '', bottom = ''] = mixed;
  return Number(whole) + Number(top) / Number(bottom);
}

const grammars = new Map<Unit, RegExp>();
function grammarOf(wanted: Unit): RegExp {
  const known = grammars.get(wanted);
  if (known) return known;
  const made = new RegExp(`^${grammar(wanted)}$`, 'u');
  grammars.set(wanted, made);
  return made;
}

/**
 * Reads one quantity and returns it in the unit wanted, or a fault with the way to mend it.
 * @example readQuantity(`24'6"`, 'in') // 294
 */
export function readQuantity<U extends Unit>(text: string, wanted: U): Quantity<U> | ReadFault {
  const mend = `write a number with its unit, for example "${exampleOf(wanted)}"`;
  const match = grammarOf(wanted).exec(text);
  if (!match) return { fault: whyNot(text, wanted), mend };
  const [, sign, number, name, feet, inches] = match;
  const size =
    number !== undefined && name !== undefined
      ? convert(quantity(readNumber(number), unitNamed(name) as Unit), unitNamed(name) as Unit, wanted)
      : convert(quantity(readNumber(feet as string) * 12 + readNumber(inches as string), 'in'), 'in', wanted);
  if (!Number.isFinite(size)) return { fault: `"${text}" is not a number`, mend };
  return quantity(sign === '-' ? -size : size, wanted);
}

const STARTS_WITH_NUMBER = new RegExp(`^\\s*[+\\-]?${NUMBER}\\s*`, 'u');
const ANY_UNIT = new RegExp(`^(?:${namesOf(() => true)})\\.?(?![\\p{L}/²³])`, 'u');

/** Why a text is not a quantity of the kind wanted, for the person who wrote it. */
function whyNot(text: string, wanted: Unit): string {
  if (text.trim() === '') return 'nothing is written here';
  const number = STARTS_WITH_NUMBER.exec(text);
  if (!number) return `"${text}" is not a quantity`;
  const rest = text.slice(number[0].length).trim();
  if (rest === '' || /^[\d.,:/+-]/.test(rest))
    return rest === '' ? `"${text}" has no unit` : `"${text}" is not a quantity`;
  const found = ANY_UNIT.exec(rest)?.[0];
  const unit = found === undefined ? undefined : unitNamed(found.replace(/\.$/, ''));
  if (unit === undefined || found === undefined) return `"${rest}" is not a unit known here`;
  if (!measures(unit, wanted)) return `${unit} does not measure what is asked for here`;
  return rest.length === found.length
    ? `"${text}" is not a quantity`
    : `"${text}" mixes quantities that do not add`;
}

const examples: Partial<Record<Unit, string>> = {
  in: '1 1/2 in',
  ft: '24 ft 6 in',
  mph: '120 mph',
  psf: '45 psf',
  psi: '65000 psi',
  lbf: '250 lbf',
  '1/in': '14 tpi',
  deg: '18 deg',
  'ft²': '300 ft²',
};

function exampleOf(unit: Unit): string {
  return examples[unit] ?? `1.5 ${unit}`;
}
