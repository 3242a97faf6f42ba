/** English and Spanish side by side, whatever the language of the job. */
import { BLUE, GREY, INK, type Pen } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { type Words, wordsOf } from '../words/words.ts';

type Crew = Words['crew'];
type TextKey = { [K in keyof Crew]: Crew[K] extends string ? K : never }[keyof Crew];
type ListKey = { [K in keyof Crew]: Crew[K] extends readonly string[] ? K : never }[keyof Crew];

const en = wordsOf('en').crew;
const es = wordsOf('es').crew;

export const GAP = 18;
export const BODY = 10.2;

export const both = (key: TextKey): readonly [string, string] => [en[key], es[key]];

export const halfWidth = (sheet: Sheet): number => (sheet.width - GAP) / 2;

/** A head in both languages over a rule. @param keep height that must stay with it */
export function bothHead(sheet: Sheet, key: TextKey, keep: number): void {
  const [english, spanish] = both(key);
  sheet.room(24 + keep);
  if (sheet.y > sheet.top) sheet.y += 3;
  const type = { size: 12.5, face: 'bold', color: BLUE } as const;
  sheet.pen.line(english, sheet.left, sheet.y + 12, type);
  sheet.pen.line(spanish, sheet.left + halfWidth(sheet) + GAP, sheet.y + 12, type);
  sheet.y += 15.5;
  sheet.pen.rule(sheet.left, sheet.y, sheet.width, { width: 0.8 });
  sheet.y += 3;
}

export function bothText(sheet: Sheet, key: TextKey, bold = false): void {
  bothLine(sheet, both(key), bold);
}

/** @param box an open box to tick before the English line */
export function bothList(sheet: Sheet, key: ListKey, box = false): void {
  en[key].forEach((text, i) => {
    bothLine(sheet, [text, es[key][i] ?? ''], false, box ? '☐' : '–');
  });
}

export function bothLine(sheet: Sheet, texts: readonly [string, string], bold = false, lead = ''): void {
  const { pen } = sheet;
  const inset = lead === '' ? 0 : 14;
  const block = {
    width: halfWidth(sheet) - inset,
    size: BODY,
    leading: 1.18,
    face: bold ? 'bold' : 'regular',
  } as const;
  const height = Math.max(...texts.map((text) => pen.heightOf(text, block))) + 1.6;
  sheet.room(height);
  texts.forEach((text, i) => {
    const x = sheet.left + i * (halfWidth(sheet) + GAP);
    leadMark(pen, lead, x, sheet.y);
    pen.block(text, x + inset, sheet.y, block);
  });
  sheet.y += height;
}

function leadMark(pen: Pen, lead: string, x: number, y: number): void {
  if (lead === '☐') pen.box(x, y + 2, 8, 8, { width: 0.9, color: INK });
  else if (lead !== '') pen.line(lead, x + 2, y + BODY * 0.96, { size: BODY, color: GREY });
}
