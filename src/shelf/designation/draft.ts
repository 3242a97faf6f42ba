/** A designation while it is being read. What has been understood is masked, so that nothing is read twice. */
import type { NormalText } from './normal-text.ts';
import type { DesignationKind, DesignationValues, FieldName, Piece, ReadField } from './reading.ts';

/** Stands for characters that are understood. It is no space and no letter, so no pattern reaches across it. */
export const MASK = '\u0001';

export interface Draft {
  readonly normal: NormalText;
  /** The plain text with MASK over what is understood. */
  text: string;
  kind: DesignationKind | undefined;
  readonly fields: { [N in FieldName]?: ReadField<DesignationValues[N]> };
  readonly doubts: string[];
  readonly leftovers: Piece[];
}

export const newDraft = (normal: NormalText): Draft => ({
  normal,
  text: normal.text,
  kind: undefined,
  fields: {},
  doubts: [],
  leftovers: [],
});

export type Span = readonly [start: number, end: number];

export function piece({ normal }: Draft, [start, end]: Span): Piece {
  const written = normal.text.slice(start, end);
  const first = start + written.length - written.trimStart().length;
  const last = start + written.trimEnd().length;
  const from = normal.starts[Math.min(first, last)] ?? 0;
  const to = normal.ends[last - 1] ?? from;
  return { text: normal.original.slice(from, to), start: from, end: to };
}

export function mask(draft: Draft, [start, end]: Span): void {
  draft.text = draft.text.slice(0, start) + MASK.repeat(end - start) + draft.text.slice(end);
}

export function doubt(draft: Draft, sentence: string): void {
  if (!draft.doubts.includes(sentence)) draft.doubts.push(sentence);
}

const spoken = (name: FieldName): string =>
  name.replace(/_(in|mm)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** Enters a value. A second, different one for the same field becomes a doubt: the first stands. */
export function put<N extends FieldName>(
  draft: Draft,
  name: N,
  value: DesignationValues[N],
  span: Span,
  means: string,
): void {
  const known = draft.fields[name];
  const from = piece(draft, span);
  if (known === undefined) {
    const fields: { [K in FieldName]?: ReadField<DesignationValues[K]> } = draft.fields;
    Object.assign(fields, { [name]: { value, ...from, means } });
  } else if (known.value !== value)
    doubt(
      draft,
      `"${known.text}" and "${from.text}" both say the ${spoken(name)}, and differ; "${known.text}" is taken`,
    );
}

/** Where a group of a match lies; patterns that are asked for it carry the flag d. */
export function spanOf(match: RegExpExecArray, group = 0): Span {
  const at = match.indices?.[group];
  return at ?? [match.index, match.index + match[0].length];
}
