/**
 * Reads what a person writes for a quantity: "141 mph", "1 1/2 in", "15/32 in", 24'6", "5 ft 3 in", "0.8 mm".
 * A bare number is refused: nothing crosses a boundary without its unit.
 */
import { convert, type Quantity, quantity } from './quantity.ts';
import { isUnit, sameDimension, type Unit } from './unit.ts';

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
  m2: 'm²',
  lb: 'lbf',
  lbs: 'lbf',
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

const NUMBER = String.raw`[-+]?(?:\d+(?:[\s-]+\d+\s*\/\s*\d+)|\d+\s*\/\s*\d+|\d*\.?\d+(?:[eE][-+]?\d+)?)`;
const PART = new RegExp(String.raw`^\s*(${NUMBER})\s*([^\d\s+-][^\d+-]*?)?(?=\s*[-+]?\d|\s*$)`);

function readNumber(text: string): number {
  const mixed = /^([-+]?)(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)$/.exec(text.trim());
  if (!mixed) return Number(text);
  const [, sign, whole = '0', top = '', bottom = ''] = mixed;
  const size = Number(whole) + Number(top) / Number(bottom);
  return sign === '-' ? -size : size;
}

function readUnit(text: string): Unit | undefined {
  const name = text.trim().replace(/\.$/, '');
  return isUnit(name) ? name : spellings[name];
}

/**
 * Reads one quantity and returns it in the unit wanted, or a fault with the way to mend it.
 * @example readQuantity(`24'6"`, 'in') // 294
 */
export function readQuantity<U extends Unit>(text: string, wanted: U): Quantity<U> | ReadFault {
  const mend = `write a number with its unit, for example "${exampleOf(wanted)}"`;
  // A unit whose own name starts with a digit or holds one ("1/in") is spelled tpi in writing.
  let rest = text.trim().replace(/\s*1\/in$/, ' tpi');
  let total = 0;
  let parts = 0;
  while (rest !== '') {
    const match = PART.exec(rest);
    if (!match) return { fault: `"${text}" is not a quantity`, mend };
    const value = readNumber(match[1] ?? '');
    const unitText = match[2]?.replace(/-$/, '').trim();
    if (!Number.isFinite(value)) return { fault: `"${text}" is not a number`, mend };
    if (!unitText) return { fault: `"${text}" has no unit`, mend };
    const unit = readUnit(unitText);
    if (!unit) return { fault: `"${unitText}" is not a unit known here`, mend };
    if (!sameDimension(unit, wanted) || (unit === 'deg') !== (wanted === 'deg'))
      return { fault: `${unit} does not measure what is asked for here`, mend };
    if (parts > 0 && (value < 0 || !['in', 'ft'].includes(unit)))
      return { fault: `"${text}" mixes quantities that do not add`, mend };
    total += convert(quantity(value, unit), unit, wanted);
    rest = rest.slice(match[0].length).replace(/^[\s-]+/, '');
    parts += 1;
  }
  return parts === 0 ? { fault: 'nothing is written here', mend } : quantity(total, wanted);
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
