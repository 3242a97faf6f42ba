/** The submittal: what an engineer and a building official need to follow every number. Reads as a table of contents. */
import type { Solved } from '../../answer/solve-job.ts';
import type { Printed } from '../formula/set-step.ts';
import { makePdf } from '../pdf/sheet.ts';
import { titleBlock } from '../pdf/title-block.ts';
import { wordsOf } from '../words/words.ts';
import { closingPage } from './closing-page.ts';
import { connectionPage } from './connection-page.ts';
import { dataSheets } from './data-sheets.ts';
import { choiceGroups } from './groups.ts';
import { planPage } from './plan-page.ts';
import { scheduleTable } from './schedule-table.ts';
import { takeOffTable } from './take-off-table.ts';
import { verdictPage } from './verdict-page.ts';
import { windPage } from './wind-page.ts';

export function submittalPdf(solved: Solved): Promise<Uint8Array> {
  const { answer } = solved;
  const words = wordsOf(answer.job.print.language);
  const printed: Printed = new Set();
  return makePdf(
    { answer, words, title: words.submittal.title },
    (sheet) => {
      verdictPage(sheet);
      planPage(sheet);
      windPage(sheet, printed);
      scheduleTable(sheet);
      for (const group of choiceGroups(answer.choices)) connectionPage(sheet, solved, group, printed);
      dataSheets(sheet, solved);
      takeOffTable(sheet);
      closingPage(sheet);
    },
    titleBlock,
  );
}
