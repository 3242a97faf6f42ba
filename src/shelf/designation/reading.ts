/** What a written designation says: each field with the piece of text it was read from and a sentence on its meaning. */
export type DesignationKind = 'screw' | 'nail' | 'rivet' | 'bolt' | 'unknown';

/** The fields a description may hold. Lengths in inches whatever unit was written; a pitch stays in millimetres. */
export interface DesignationValues {
  readonly quantity: number;
  readonly quantityUnit: string;
  readonly diameterName: string;
  readonly diameter_in: number;
  readonly threadsPerInch: number;
  readonly pitch_mm: number;
  readonly length_in: number;
  readonly thread: string;
  readonly duty: string;
  readonly pointForm: string;
  readonly pointNumber: number;
  readonly head: string;
  readonly drive: string;
  readonly washer: string;
  readonly washerDiameter_in: number;
  readonly washerThickness_in: number;
  readonly washerShape: string;
  readonly washerMetal: string;
  readonly washerRubber: string;
  readonly metal: string;
  readonly mandrel: string;
  readonly coating: string;
  readonly colour: string;
  readonly penny: number;
  readonly nailType: string;
  readonly shank: string;
  readonly gripFrom_in: number;
  readonly gripTo_in: number;
  readonly sealed: boolean;
}
export type FieldName = keyof DesignationValues;

/** A piece of the text as it was given, by its place. */
export interface Piece {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export interface ReadField<T> extends Piece {
  readonly value: T;
  readonly means: string;
}

export type DesignationFields = { readonly [N in FieldName]?: ReadField<DesignationValues[N]> };

export interface Designation {
  readonly kind: DesignationKind;
  readonly fields: DesignationFields;
  /** A sentence for everything that may be meant in more than one way, or that is no possible size. */
  readonly doubts: readonly string[];
  /** What was not understood. Nothing written is dropped without standing here. */
  readonly leftovers: readonly Piece[];
}

/** The order in which fields are told: what it is, how big, what it is made of. */
const order: readonly FieldName[] = [
  'quantity',
  'quantityUnit',
  'penny',
  'nailType',
  'diameterName',
  'diameter_in',
  'threadsPerInch',
  'pitch_mm',
  'length_in',
  'gripFrom_in',
  'gripTo_in',
  'sealed',
  'thread',
  'duty',
  'shank',
  'pointForm',
  'pointNumber',
  'head',
  'drive',
  'washer',
  'washerDiameter_in',
  'washerThickness_in',
  'washerShape',
  'washerMetal',
  'washerRubber',
  'metal',
  'mandrel',
  'coating',
  'colour',
];

export function inOrder(fields: DesignationFields): DesignationFields {
  return Object.fromEntries(order.flatMap((name) => (fields[name] ? [[name, fields[name]]] : [])));
}

/** The values alone, without where they were read. */
export function designationValues(read: Designation): Partial<DesignationValues> {
  const pairs = Object.entries(read.fields).map(([name, field]) => [name, field.value]);
  return Object.fromEntries(pairs);
}
