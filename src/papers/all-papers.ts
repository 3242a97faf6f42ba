/** Every paper of an answer, each complete, as bytes. */
import { resultOf } from '../answer/result.ts';
import type { Solved } from '../answer/solve-job.ts';
import { crewSheetPdf } from './crew/crew-sheet-pdf.ts';
import { layoutDxf } from './drawing/layout-dxf.ts';
import { layoutSvg } from './drawing/layout-svg.ts';
import { orderCsv } from './order/order-csv.ts';
import { orderXlsx } from './order/order-xlsx.ts';
import { submittalPdf } from './submittal/submittal-pdf.ts';

export interface Paper {
  readonly name: string;
  readonly bytes: Uint8Array | string;
}

const makers: Readonly<Record<string, (solved: Solved) => Paper['bytes'] | Promise<Paper['bytes']>>> = {
  'submittal.pdf': submittalPdf,
  'crew-sheet.pdf': crewSheetPdf,
  'order.csv': orderCsv,
  'order.xlsx': orderXlsx,
  'layout.svg': ({ answer }) => layoutSvg(answer),
  'layout.dxf': ({ answer }) => layoutDxf(answer),
  'result.json': ({ answer }) => JSON.stringify(resultOf(answer, true)),
};

/** @param progress hears the name of each paper before it is made */
export async function allPapers(
  solved: Solved,
  progress: (name: string) => void = () => undefined,
): Promise<readonly Paper[]> {
  const papers: Paper[] = [];
  for (const [name, make] of Object.entries(makers)) {
    progress(name);
    papers.push({ name, bytes: await make(solved) });
  }
  return papers;
}
