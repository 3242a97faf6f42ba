/** Writes the description of an item in one form, from which reading gives the same fields back. */
import type { Nail, Rivet, Screw } from '../item.ts';
import { inchText } from './measure.ts';
import { screwNumberDiameter } from './nominal-sizes.ts';

/** A number in full: no exponent, which no reader of a description expects. */
const decimal = (value: number): string => {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20) : text;
};
const inches = (value: number): string => {
  const text = inchText(value);
  return text.includes('e') ? decimal(value) : text;
};

type WrittenAs = Screw | Nail | Rivet;

/** @example writeDesignation(screw) // "#10-13 x 1 1/2 in, pancake head, sharp point, No. 2 square bit, carbon steel, ..." */
export function writeDesignation(item: WrittenAs): string {
  const parts =
    item.kind === 'screw' ? screwParts(item) : item.kind === 'nail' ? nailParts(item) : rivetParts(item);
  return [...parts, metalText(item.metal), coatingText(item.coating)].join(', ');
}

const metalText = (metal: WrittenAs['metal']): string => (metal === 'zinc' ? 'solid zinc' : metal);
const coatingText = (coating: WrittenAs['coating']): string => (coating === 'none' ? 'uncoated' : coating);

function screwParts(item: Screw): string[] {
  const { point, head, washer } = item;
  const parts = [`${screwSize(item)}`, `${head.form} head`];
  parts.push(
    point.number === undefined ? `${point.form} point` : `${point.form} point ${point.number}`,
    item.drive,
  );
  if (washer) parts.push(washerText(washer));
  return parts;
}

/** Number or fraction where it gives the diameter exactly, else the diameter itself. */
function screwSize({ size, diameter, threadsPerInch, length }: Screw): string {
  const number = /^#(\d{1,2})$/.exec(size);
  const named = number
    ? screwNumberDiameter(Number(number[1])) === diameter
    : size.includes('/') && inchText(diameter) === size;
  const name = named ? size : `dia ${decimal(diameter)} in`;
  const whole = named && Number.isInteger(threadsPerInch) && threadsPerInch >= 10;
  return whole
    ? `${name}-${threadsPerInch} x ${inches(length)} in`
    : `${name} x ${inches(length)} in, ${decimal(threadsPerInch)} tpi`;
}

function washerText({
  metalDiameter,
  metalThickness,
  shape,
  metal,
  rubber,
}: NonNullable<Screw['washer']>): string {
  const kind = rubber === 'EPDM' ? 'EPDM' : 'all metal';
  return `with ${shape} ${metal} ${kind} washer ${decimal(metalDiameter)} in x ${thin(metalThickness)} in thick`;
}

const thin = (value: number): string => (Number.isInteger(value) ? `${value}.0` : decimal(value));

function nailParts({ diameter, length, shank }: Nail): string[] {
  return [`nail ${decimal(diameter)} in x ${inches(length)} in`, `${shank} shank`];
}

function rivetParts({ diameter, gripFrom, gripTo, sealed }: Rivet): string[] {
  return [
    `blind rivet ${inches(diameter)} in`,
    `grip ${decimal(gripFrom)} to ${decimal(gripTo)} in`,
    sealed ? 'sealed' : 'open end',
  ];
}
