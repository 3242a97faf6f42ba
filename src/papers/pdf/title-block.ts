/** Border and title block of a page: job, revision, shelf edition, basis, count of verdicts, page. */
import type { Verdict } from '../../links/verdict.ts';
import { FAINT, GREY, INK, RED } from './pen.ts';
import { FOOT, type Sheet } from './sheet.ts';
import { threadMark } from './thread-mark.ts';

const MARGIN = 28;

export function titleBlock(sheet: Sheet, page: number, of: number): void {
  const { pen, pageWidth, pageHeight } = sheet;
  const top = pageHeight - MARGIN - FOOT;
  pen.box(MARGIN, MARGIN, pageWidth - 2 * MARGIN, pageHeight - 2 * MARGIN, { width: 1.1 });
  pen.rule(MARGIN, top, pageWidth - 2 * MARGIN, { width: 1.1 });
  const widths = [0.2, 0.25, 0.33, 0.22].map((part) => part * (pageWidth - 2 * MARGIN));
  const cells = [maker, jobCell, basisCell, verdictCell];
  let x = MARGIN;
  cells.forEach((cell, i) => {
    const width = widths[i] ?? 0;
    if (i > 0)
      pen.path(
        [
          { x, y: top },
          { x, y: top + FOOT },
        ],
        { width: 0.6 },
      );
    cell(sheet, { x: x + 7, top: top + 5, width: width - 14, page, of });
    x += width;
  });
}

interface Cell {
  readonly x: number;
  readonly top: number;
  readonly width: number;
  readonly page: number;
  readonly of: number;
}

function maker({ pen, plan: { words, title } }: Sheet, { x, top, width }: Cell): void {
  pen.line('Deckbite', x, top + 13, { size: 14, face: 'bold' });
  const y = pen.block(words.sheet.motto, x, top + 18, { width, size: 7, color: GREY, most: 1 });
  pen.block(title, x, y + 1.5, { width, size: 8, face: 'bold', leading: 1.15, most: 2 });
}

function jobCell({ pen, plan: { answer, words } }: Sheet, { x, top, width }: Cell): void {
  const { name, reference, revision, date } = answer.job;
  let y = pen.block(name, x, top, { width, size: 9.5, face: 'bold', most: 2 });
  if (reference !== '')
    y = pen.block(`${words.sheet.reference}: ${reference}`, x, y + 1, {
      width,
      size: 7.5,
      color: GREY,
      most: 1,
    });
  const dated = date === undefined ? '' : ` · ${date}`;
  pen.block(`${words.sheet.revision} ${revision}${dated}`, x, y + 1, {
    width,
    size: 8.5,
    face: 'bold',
    most: 1,
  });
}

function basisCell({ pen, plan: { answer, words } }: Sheet, { x, top, width }: Cell): void {
  const { shelf, basis, field } = answer;
  const size = { width, size: 7.5 };
  const code = basis.codeYear === undefined ? '' : `${basis.codeYear}, `;
  let y = pen.block(
    `${words.sheet.basis}: ${code}${basis.method}; ${field.cites}; ${basis.steel}; ${basis.wood}; ${basis.aluminium}`,
    x,
    top,
    { ...size, most: 3 },
  );
  y = pen.block(`${words.sheet.shelf}: ${shelf.name}`, x, y + 1, { ...size, color: GREY, most: 1 });
  pen.block(`${words.sheet.edition} ${shelf.edition}, ${shelf.date}`, x, y, {
    ...size,
    color: GREY,
    most: 1,
  });
}

function verdictCell({ pen, plan: { answer, words } }: Sheet, { x, top, width, page, of }: Cell): void {
  const { holds, fallsShort, unproven } = answer.count;
  const rows: readonly (readonly [Verdict, number])[] = [
    ['holds', holds],
    ['falls short', fallsShort],
    ['unproven', unproven],
  ];
  rows.forEach(([verdict, count], i) => {
    const y = top + 8 + i * 11.5;
    const red = verdict === 'falls short' && count > 0;
    const type = { size: 8.5, face: red ? 'bold' : 'regular', color: red ? RED : INK } as const;
    pen.line(String(count), x + 16, y, { ...type, align: 'right' });
    pen.line(words.verdict[verdict], x + 21, y, type);
    threadMark(pen, verdict, x + width - 18, y - 3, undefined, count === 0);
  });
  pen.rule(x - 7, top + 37, width + 14, { width: 0.5, color: FAINT });
  pen.line(words.sheet.page(page, of), x + width, top + 49, { size: 8.5, align: 'right' });
}
