/** Remarks and readings, and the cautions and limits that stand on every issue. */
import type { Sheet } from '../pdf/sheet.ts';

export function closingPage(sheet: Sheet): void {
  const { answer, words } = sheet.plan;
  sheet.room(160);
  sheet.outline(words.submittal.remarks);
  sheet.head(words.submittal.remarks);
  if (answer.remarks.length === 0) sheet.paragraph(words.submittal.noRemarks);
  for (const text of answer.remarks) item(sheet, text);
  sheet.outline(words.submittal.limits);
  sheet.head(words.submittal.limits);
  for (const text of Object.values(words.limits)) item(sheet, text);
}

function item(sheet: Sheet, text: string): void {
  const height = sheet.pen.heightOf(text, { width: sheet.width - 12 });
  sheet.room(Math.min(height, 60));
  sheet.pen.line('–', sheet.left, sheet.y + 8.2);
  sheet.paragraph(text, { indent: 12 });
  sheet.y += 1;
}
