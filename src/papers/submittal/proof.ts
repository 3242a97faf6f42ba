/** The proof of a connection's governing line: its load, then every link of its chain, with set formulas. */

import type { Solved } from '../../answer/solve-job.ts';
import { proveLine } from '../../choose/choose-items.ts';
import type { LinkCheck } from '../../links/verdict.ts';
import { type Printed, setSteps } from '../formula/set-step.ts';
import { FAINT, GREY, INK, RED } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { MARK_WIDTH, threadMark } from '../pdf/thread-mark.ts';
import { printer } from '../print-units.ts';
import { zoneName } from '../words/terms.ts';
import type { ChoiceGroup } from './groups.ts';

/** A head never stands alone at the foot: its link's head and a formula stay with it, in points. */
const LINK_KEEP = 74;
const HEAD_KEEP = LINK_KEEP + 10;

export function proof(sheet: Sheet, { answer, design }: Solved, group: ChoiceGroup, printed: Printed): void {
  const { governing } = group;
  if (!governing?.choice.item) return;
  const { words } = sheet.plan;
  const { line, load } = proveLine(governing.choice, governing.line, design);
  const zone = zoneName(answer.field.zones[line.zone], words);
  sheet.head(
    words.submittal.proof,
    `${words.submittal.zone} ${zone}. ${words.submittal.proofUnits}`,
    HEAD_KEEP,
  );
  if (load.length > 0 || line.noLoad !== undefined) {
    linkHead(sheet, words.submittal.loadOnOne, loadText(sheet, line.fastenerLoad_lbf));
    if (line.noLoad !== undefined) sheet.paragraph(line.noLoad, { indent: 8, color: GREY });
    setSteps(sheet, load, printed);
  }
  for (const check of line.checks) linkProof(sheet, check, printed);
}

function loadText(sheet: Sheet, load: number | undefined): string {
  return load === undefined ? '' : printer(sheet.plan.answer.job.print.units).text('force', load);
}

function linkProof(sheet: Sheet, check: LinkCheck, printed: Printed): void {
  const { words, answer } = sheet.plan;
  const { capacity, demand, ratio } = check;
  const print = printer(answer.job.print.units);
  const kind = capacity.unit === 'lbf' ? 'force' : 'pressure';
  const numbers = [
    ...(capacity.value === undefined
      ? []
      : [`${words.submittal.capacity} ${print.text(kind, capacity.value)}`]),
    ...(demand === undefined ? [] : [`${words.submittal.demand} ${print.text(kind, demand)}`]),
    ...(ratio === undefined ? [] : [`${words.submittal.ratio} ${ratio.toFixed(2)}`]),
  ];
  linkHead(sheet, words.link[capacity.link], numbers.join(',  '), check);
  if (capacity.because !== undefined) sheet.paragraph(capacity.because, { indent: 8, color: GREY });
  const trace = capacity.trace ?? [];
  if (trace.length === 0 && capacity.because === undefined)
    sheet.paragraph(capacity.cites, { indent: 8, color: GREY });
  setSteps(sheet, trace, printed);
}

function linkHead(sheet: Sheet, name: string, text: string, check?: LinkCheck): void {
  sheet.room(LINK_KEEP);
  sheet.y += 5;
  const { pen } = sheet;
  const red = check?.verdict === 'falls short';
  pen.line(name, sheet.left, sheet.y + 9, { size: 9, face: 'bold', color: red ? RED : INK });
  const right = check ? sheet.right - MARK_WIDTH - 6 : sheet.right;
  pen.line(text, right, sheet.y + 9, { size: 8.5, align: 'right', ...(red ? { color: RED } : {}) });
  if (check) threadMark(pen, check.verdict, sheet.right - MARK_WIDTH, sheet.y + 6);
  sheet.y += 12.5;
  pen.rule(sheet.left, sheet.y, sheet.width, { color: FAINT, width: 0.5 });
  sheet.y += 3;
}
