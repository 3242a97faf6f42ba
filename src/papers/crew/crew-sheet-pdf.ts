/** The crew sheet: what the installers need on the roof, in English and Spanish side by side. */
import type { Solved } from '../../answer/solve-job.ts';
import { makePdf } from '../pdf/sheet.ts';
import { titleBlock } from '../pdf/title-block.ts';
import { wordsOf } from '../words/words.ts';
import { both } from './both.ts';
import { howToDrive } from './how-to-drive.ts';
import { whatGoesWhere } from './what-goes-where.ts';

export function crewSheetPdf(solved: Solved): Promise<Uint8Array> {
  const { answer } = solved;
  return makePdf(
    { answer, words: wordsOf(answer.job.print.language), title: both('title').join(' · ') },
    (sheet) => {
      whatGoesWhere(sheet);
      howToDrive(sheet, solved);
    },
    titleBlock,
  );
}
