/** The drawing sheet: pages with one border, a strip of the title block at the foot, and a place where to go on. */
import type { Answer } from '../../answer/answer.ts';
import type { Words } from '../words/words.ts';
import { fontBytes } from './fonts.ts';
import { BLUE, INK, Pen } from './pen.ts';

/** What pdfkit's published types lack: a date may be fixed, and the outline is typed loosely. */
type Kit = typeof import('pdfkit');

const sizes = { US: [612, 792], SI: [595.28, 841.89] } as const;
const MARGIN = 28;
/** Height of the title block at the foot of every page. */
export const FOOT = 62;
const PAD = 12;
/** A file carries the date of the job, or this one, which says nothing. */
const NO_DATE = '1980-01-01';

export interface SheetPlan {
  readonly answer: Answer;
  readonly words: Words;
  readonly title: string;
  readonly landscape?: boolean;
}

export class Sheet {
  readonly pen: Pen;
  readonly plan: SheetPlan;
  /** Left, right, top and bottom of the ground to write on. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly pageWidth: number;
  readonly pageHeight: number;
  /** Where the next thing goes. */
  y: number;

  constructor(doc: PDFKit.PDFDocument, plan: SheetPlan) {
    const [width, height] = pageSize(plan);
    this.pen = new Pen(doc);
    this.plan = plan;
    this.pageWidth = width;
    this.pageHeight = height;
    this.left = MARGIN + PAD;
    this.right = width - MARGIN - PAD;
    this.top = MARGIN + PAD;
    this.bottom = height - MARGIN - FOOT - 8;
    this.y = this.top;
  }

  get width(): number {
    return this.right - this.left;
  }

  newPage(): void {
    this.pen.doc.addPage();
    this.y = this.top;
  }

  /** Goes to a new page when less than this is left on the page. */
  room(height: number): void {
    if (this.y + height > this.bottom && this.y > this.top) this.newPage();
  }

  /** A head of the first order, never at the foot of a page. @param keep height of what must stay with it */
  head(text: string, note = '', keep = 60): void {
    this.room(26 + keep);
    if (this.y > this.top) this.y += 10;
    this.pen.line(text, this.left, this.y + 13, { size: 14, face: 'bold' });
    const after = this.left + this.pen.width(text, { size: 14, face: 'bold' }) + 10;
    if (note !== '')
      this.pen.line(fitting(this, note, this.right - after), after, this.y + 13, { color: '#55606b' });
    this.y += 18;
    this.pen.rule(this.left, this.y, this.width, { width: 0.8 });
    this.y += 7;
  }

  subhead(text: string, keep = 24, x = this.left): void {
    this.room(16 + keep);
    this.pen.line(text, x, this.y + 10, { size: 9.5, face: 'bold', color: BLUE });
    this.y += 15;
  }

  /** A paragraph over the width, over as many pages as it takes. */
  paragraph(
    text: string,
    options: { readonly indent?: number; readonly color?: string; readonly size?: number } = {},
  ): void {
    const { indent = 0, color = INK, size = 8.5 } = options;
    const block = { width: this.width - indent, size, color };
    const lines = this.pen.lines(text, block);
    for (const line of lines) {
      this.room(size * 1.3);
      this.pen.line(line, this.left + indent, this.y + size * 0.96, block);
      this.y += size * 1.3;
    }
    this.y += 2;
  }

  outline(text: string): void {
    this.pen.doc.outline.addItem(text);
  }
}

function fitting(sheet: Sheet, text: string, width: number): string {
  return sheet.pen.lines(text, { width, most: 1 })[0] ?? '';
}

function pageSize({ answer, landscape }: SheetPlan): readonly [number, number] {
  const [short, long] = sizes[answer.job.print.units];
  return landscape ? [long, short] : [short, long];
}

/** Makes a document: `write` fills the pages, then `frame` is drawn on each, knowing how many there are. */
export async function makePdf(
  plan: SheetPlan,
  write: (sheet: Sheet) => void,
  frame: (sheet: Sheet, page: number, of: number) => void,
): Promise<Uint8Array> {
  const { default: PDFDocument } = (await import('pdfkit')) as unknown as { default: Kit };
  const { job } = plan.answer;
  const date = new Date(`${job.date ?? NO_DATE}T00:00:00Z`);
  const doc = new PDFDocument({
    size: [...pageSize(plan)],
    margin: 0,
    bufferPages: true,
    lang: job.print.language,
    displayTitle: true,
    // None: a font given here would be parsed anew at every change of face.
    font: '',
    info: {
      Title: plan.title,
      Author: 'Deckbite',
      Producer: 'Deckbite',
      Creator: 'Deckbite',
      CreationDate: date,
      ModDate: date,
    },
  });
  for (const face of ['regular', 'italic', 'bold'] as const) doc.registerFont(face, fontBytes(face));
  const chunks: Uint8Array[] = [];
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const done = new Promise<void>((resolve, reject) => {
    doc.on('end', resolve);
    doc.on('error', reject);
  });
  const sheet = new Sheet(doc, plan);
  write(sheet);
  const { count } = doc.bufferedPageRange();
  for (let page = 0; page < count; page++) {
    doc.switchToPage(page);
    frame(sheet, page + 1, count);
  }
  doc.end();
  await done;
  return new Uint8Array(Buffer.concat(chunks));
}
