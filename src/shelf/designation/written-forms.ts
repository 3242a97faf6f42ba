/** Rows of written forms for the tests: "text | kind | what each field must be", every field named or absent. */
import type { DesignationValues } from './reading.ts';

/** Diameters written here a second time on purpose: a wrong table in the reader fails. */
const diameters: Readonly<Record<string, number>> = {
  '#0': 0.06,
  '#6': 0.138,
  '#8': 0.164,
  '#9': 0.177,
  '#10': 0.19,
  '#12': 0.216,
  '#14': 0.242,
  '1/4': 0.25,
  '1/8': 0.125,
  '5/32': 0.15625,
  '3/16': 0.1875,
  '3/32': 0.09375,
  '5/16': 0.3125,
  '3/8': 0.375,
  '1/2': 0.5,
  '5/8': 0.625,
};

type Expected = { -readonly [N in keyof DesignationValues]?: DesignationValues[N] };
export interface WrittenForm {
  readonly text: string;
  readonly kind: string;
  readonly values: Expected;
  /** A part of each doubt that is to be told, in any order. */
  readonly doubts: readonly string[];
  readonly leftovers: readonly string[];
}

const names: Readonly<Record<string, keyof DesignationValues>> = {
  point: 'pointForm',
  no: 'pointNumber',
  from: 'gripFrom_in',
  to: 'gripTo_in',
  of: 'quantityUnit',
  n: 'quantity',
  type: 'nailType',
  wd: 'washerDiameter_in',
  wmetal: 'washerMetal',
  rubber: 'washerRubber',
  shape: 'washerShape',
  pitch: 'pitch_mm',
};

const asValue = (text: string): string | number | boolean => {
  if (text === 'true' || text === 'false') return text === 'true';
  return /^\.?\d[\d.]*$/.test(text) ? Number(text) : text;
};

/** "#10", "d 5.5mm", "d .113", "13tpi", "1.5in", "25mm", "head=pancake", "?part of a doubt", "~leftover". */
function enter(values: Expected, part: string): void {
  const measure = /^(d )?(\d*\.?\d+)(mm|in|tpi|ga|d)?$/.exec(part);
  const [name, value] = part.split('=');
  if (diameters[part] !== undefined)
    Object.assign(values, { diameterName: part, diameter_in: diameters[part] });
  else if (name !== undefined && value !== undefined)
    Object.assign(values, { [names[name] ?? name]: asValue(value) });
  else if (measure) enterMeasure(values, measure[1] !== undefined, Number(measure[2]), measure[3]);
  else throw new Error(`a row of the test says "${part}"`);
}

function enterMeasure(values: Expected, across: boolean, size: number, unit: string | undefined): void {
  if (unit === 'tpi') values.threadsPerInch = size;
  else if (unit === 'd') values.penny = size;
  else if (across) {
    values.diameterName = unit === 'mm' ? `${size} mm` : String(size);
    values.diameter_in = unit === 'mm' ? size / 25.4 : size;
  } else values.length_in = unit === 'mm' ? size / 25.4 : size;
}

export function writtenForms(table: string): readonly WrittenForm[] {
  return table
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const [text = '', kind = '', fields = ''] = line.split(' | ');
      const parts = fields.split(';').flatMap((part) => (part.trim() === '' ? [] : [part.trim()]));
      const values: Expected = {};
      for (const part of parts) if (!/^[?~]/.test(part)) enter(values, part);
      const after = (sign: string): string[] =>
        parts.flatMap((part) => (part.startsWith(sign) ? [part.slice(1)] : []));
      return { text: text.trimStart(), kind: kind.trim(), values, doubts: after('?'), leftovers: after('~') };
    });
}
