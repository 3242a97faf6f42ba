import { expect, test } from 'vitest';
import { fontBytes } from '../pdf/fonts.ts';
import { Pen } from '../pdf/pen.ts';
import { type Column, HEAD_SIZE, widthsOf } from '../pdf/table.ts';
import { printer } from '../print-units.ts';
import { wordsOf } from '../words/words.ts';
import { zoneColumns } from './plan-page.ts';
import { scheduleColumns } from './schedule-table.ts';
import { edgeColumns, runColumns, takeOffColumns } from './take-off-table.ts';

/** Ground to write on, letter and A4. */
const grounds = { US: 612 - 80, SI: 595.28 - 80 } as const;

/** Words of the heads that are wider than their column, and would be broken inside. */
function broken(pen: Pen, width: number, columns: readonly Column[]): string[] {
  const widths = widthsOf(width, columns);
  return columns.flatMap(({ head }, i) =>
    head.split(' ').filter((word) => pen.width(word, { size: HEAD_SIZE }) > (widths[i] ?? 0)),
  );
}

test('no head of a table breaks inside a word, in either language and system of units', async () => {
  const { default: PDFDocument } = await import('pdfkit');
  const doc = new PDFDocument({ font: '' });
  doc.registerFont('regular', fontBytes('regular') as Buffer);
  const pen = new Pen(doc);
  for (const system of ['US', 'SI'] as const)
    for (const language of ['en', 'es'] as const) {
      const [words, print] = [wordsOf(language), printer(system)];
      const tables = [
        scheduleColumns(words, print),
        zoneColumns(words, print),
        takeOffColumns(words),
        runColumns(words, print),
        edgeColumns(words, print),
      ];
      expect(
        tables.flatMap((columns) => broken(pen, grounds[system], columns)),
        `${language} ${system}`,
      ).toEqual([]);
    }
  expect(broken(pen, 40, [{ head: 'unbreakable', width: 1 }])).toEqual([]);
  expect(broken(pen, 20, [{ head: 'unbreakable', width: 1 }])).toEqual(['unbreakable']);
});
