/** Remarks and readings, and the cautions and limits that stand on every issue. */
import type { Sheet } from '../pdf/sheet.ts';

export function closingPage(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  sheet.room(160);
  sheet.outline(words.submittal.remarks);
  sheet.head(words.submittal.remarks);
  if (answer.remarks.length === 0) sheet.paragraph(words.submittal.noRemarks);
  for (const text of answer.remarks) item(sheet, text);
  // The cautions stand together: a last page with one of them would be overlooked.
  const limits = Object.values(words.limits);
  sheet.room(
    Math.min(
      limits.reduce((sum, text) => sum + heightOf(sheet, text) + GAP, HEAD),
      sheet.bottom - sheet.top,
    ),
  );
  sheet.outline(words.submittal.limits);
  sheet.head(words.submittal.limits);
  for (const text of limits) item(sheet, text);
}

/** Room of a head and between items, in points. */
const HEAD = 40;
const GAP = 4;

const heightOf = (sheet: Sheet, text: string): number =>
  sheet.pen.heightOf(text, { width: sheet.width - 12 });

function item(sheet: Sheet, text: string): void {
  sheet.room(Math.min(heightOf(sheet, text), 60));
  sheet.pen.line('–', sheet.left, sheet.y + 8.2);
  sheet.paragraph(text, { indent: 12 });
  sheet.y += 1;
}
