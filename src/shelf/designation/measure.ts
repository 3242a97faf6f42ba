/** Numbers with their unit, as they stand in the middle of a description: 1 1/2", 7/8, .113, 25 mm, 5,5. */
const FRACTION = String.raw`\d{1,2}\s?\/\s?\d{1,2}`;
const UNIT = String.raw`"|''|inches|inch|in\b|pulgadas|pulgada|pulg\b|plg\b|mm\b|cm\b`;
const NUMBER = String.raw`(?:\d{1,3}(?:\s+|\s?-\s?)${FRACTION}|${FRACTION}|\d{0,4}\.\d{1,20}|\d{1,4},\d{1,2}(?!\d)|\d{1,6})`;

/** A number may not be a part of a longer number or word ("1e999"); only the times sign x may stand against it. */
export const BEFORE = String.raw`(?<![\d./,a-wyz]|[a-z]x)`;
export const AFTER = String.raw`(?![\d/]|[.,]\d|[a-wyz]|x[a-z])`;
/** Two groups: number, unit. */
export const MEASURE = String.raw`(${NUMBER})\s*(${UNIT})?\.?${AFTER}`;
export const FRACTION_PATTERN = FRACTION;

export interface Measure {
  readonly value: number;
  readonly unit: 'in' | 'mm' | 'none';
  readonly form: 'whole' | 'decimal' | 'fraction' | 'mixed';
  readonly text: string;
}

function formOf(number: string): Measure['form'] {
  if (number.includes('/')) return /\d[\s-]+\d/.test(number) ? 'mixed' : 'fraction';
  return /[.,]/.test(number) ? 'decimal' : 'whole';
}

/** Value of "1-1/2", "7/8", ".113", "5,5". A fraction over nothing is infinite or no number: callers check the range. */
export function numberOf(number: string): number {
  const mixed = /^(?:(\d+)[\s-]+)?(\d+)\s?\/\s?(\d+)$/.exec(number);
  if (mixed) return Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
  return Number(number.replace(',', '.'));
}

/** Whether a fraction is as rules and drills show it: 1/2, 3/4 ... 63/64, less than one and in lowest terms. */
export function isRuleFraction(number: string): boolean {
  const parts = /(\d+)\s?\/\s?(\d+)$/.exec(number);
  if (!parts) return true;
  const bottom = Number(parts[2]);
  const top = Number(parts[1]);
  return [2, 4, 8, 16, 32, 64].includes(bottom) && top % 2 === 1 && top < bottom;
}

/** Centimetres become millimetres here, so that only two units go on. */
export function measureOf(number: string, unit: string | undefined): Measure {
  const value = numberOf(number);
  const form = formOf(number);
  if (unit === undefined) return { value, unit: 'none', form, text: number };
  if (unit === 'cm') return { value: value * 10, unit: 'mm', form, text: number };
  return { value, unit: unit === 'mm' ? 'mm' : 'in', form, text: number };
}

export const MM_PER_INCH = 25.4;
export const inchesOf = ({ value, unit }: Measure): number => (unit === 'mm' ? value / MM_PER_INCH : value);

/** An inch size the way a rule shows it: 1 1/2, 7/8, 0.131. */
export function inchText(value: number): string {
  const sixtyFourths = value * 64;
  if (!Number.isInteger(sixtyFourths) || value <= 0) return String(value);
  const whole = Math.floor(value);
  let [top, bottom] = [sixtyFourths - whole * 64, 64];
  if (top === 0) return String(whole);
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}
