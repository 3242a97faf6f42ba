/** A step of a calculation on paper: symbol = formula = numbers = value and unit, the clause at the right. */
import { figure } from '../../trace/print.ts';
import type { EquationStep, NoteStep, Step, Trace, ValueStep } from '../../trace/step.ts';
import { GREY } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { type FormulaBox, rowBox, type Setting, textBox } from './box.ts';
import { numberBox, setExpression, symbolName, symbolNumber } from './set-expression.ts';

const SIZE = 8.5;
const CLAUSE = 118;
const NOTE = 7.5;

/** Long notes already printed: standards repeat themselves from link to link. */
export type Printed = Set<string>;
const LONG = 90;

export function setSteps(sheet: Sheet, trace: Trace, printed: Printed): void {
  for (const step of trace) setStep(sheet, step, printed);
}

export function setStep(sheet: Sheet, step: Step, printed: Printed): void {
  if (step.kind === 'note') setNote(sheet, step, printed);
  else if (step.kind === 'value') setValue(sheet, step);
  else setEquation(sheet, step);
}

function setNote(sheet: Sheet, step: NoteStep, printed: Printed): void {
  const seen = printed.has(step.text);
  printed.add(step.text);
  const text = seen && step.text.length > LONG ? sheet.plan.words.submittal.notedBefore : step.text;
  const block = { width: textWidth(sheet), size: NOTE, color: GREY };
  const height = Math.max(sheet.pen.heightOf(text, block), clauseHeight(sheet, step.clause)) + 3;
  sheet.room(height);
  sheet.pen.block(text, sheet.left + 8, sheet.y, block);
  clause(sheet, step.clause, sheet.y);
  sheet.y += height;
}

const textWidth = (sheet: Sheet): number => sheet.width - CLAUSE - 18;

function clauseBlock() {
  return { width: CLAUSE, size: 7.5, color: GREY, align: 'right', most: 3 } as const;
}
const clauseHeight = (sheet: Sheet, text: string): number => sheet.pen.heightOf(text, clauseBlock());

function clause(sheet: Sheet, text: string, top: number): void {
  sheet.pen.block(text, sheet.right - CLAUSE, top, clauseBlock());
}

function valueBox(setting: Setting, step: EquationStep | ValueStep, bold: boolean): FormulaBox {
  const unit = step.unit === '1' ? '' : ` ${step.unit}`;
  const text = figure(Math.abs(step.value));
  const sign = step.value < 0 ? '−' : '';
  if (text.includes('e'))
    return rowBox([textBox(setting, sign), numberBox(setting, text), textBox(setting, unit)]);
  return textBox(setting, `${sign}${text}${unit}`, bold ? 'bold' : 'regular');
}

function setValue(sheet: Sheet, step: ValueStep): void {
  const setting = { pen: sheet.pen, size: SIZE };
  const head = rowBox(
    [symbolName(step.symbol, setting, 0), textBox(setting, '='), valueBox(setting, step, false)],
    SIZE * 0.3,
  );
  const from = Math.max(130, head.width + 14);
  const block = { width: Math.max(60, textWidth(sheet) - from), size: NOTE, color: GREY };
  const height =
    Math.max(
      head.over + head.under + 4,
      sheet.pen.heightOf(step.because, block),
      clauseHeight(sheet, step.clause),
    ) + 3;
  sheet.room(height);
  const baseline = sheet.y + SIZE * 0.96;
  head.draw(sheet.left + 8, baseline);
  sheet.pen.block(step.because, sheet.left + 8 + from, sheet.y + 0.9, block);
  clause(sheet, step.clause, sheet.y);
  sheet.y += height;
}

interface Line {
  readonly boxes: FormulaBox[];
  width: number;
}

function setEquation(sheet: Sheet, step: EquationStep): void {
  const width = textWidth(sheet);
  let lines: Line[] = [];
  // A formula wider than the page is set smaller until it fits; the smallest is still legible.
  for (let size = SIZE; size >= 5; size -= 0.5) {
    lines = linesOf(step, { pen: sheet.pen, size }, width);
    if (lines.every((line) => line.width <= width)) break;
  }
  const heights = lines.map(({ boxes }) => {
    const row = rowBox(boxes);
    return { over: Math.max(row.over, SIZE * 0.8), under: Math.max(row.under, SIZE * 0.25) };
  });
  const total = heights.reduce((sum, { over, under }) => sum + over + under + 4, 0);
  sheet.room(Math.max(total, clauseHeight(sheet, step.clause)) + 2);
  const top = sheet.y;
  let y = top;
  lines.forEach(({ boxes }, i) => {
    const { over, under } = heights[i] ?? { over: 0, under: 0 };
    rowBox(boxes, SIZE * 0.3).draw(sheet.left + 8 + (i === 0 ? 0 : indentOf(lines)), y + over);
    if (i === 0) clause(sheet, step.clause, y + over - SIZE * 0.8);
    y += over + under + 4;
  });
  sheet.y = Math.max(y, top + clauseHeight(sheet, step.clause)) + 2;
}

const indentOf = (lines: readonly Line[]): number => (lines[0]?.boxes[0]?.width ?? 0) + SIZE * 0.3;

/** Symbol and formula, numbers, value: on one line when they fit, else broken before an equals sign. */
function linesOf(step: EquationStep, setting: Setting, width: number): Line[] {
  const gap = SIZE * 0.3;
  const equals = () => textBox(setting, '=');
  const pieces: FormulaBox[][] = [
    [symbolName(step.symbol, setting, 0), equals(), setExpression(step.formula.tree, setting, symbolName)],
    [equals(), setExpression(step.formula.tree, setting, symbolNumber(step.inputs))],
    [equals(), valueBox(setting, step, true)],
  ];
  const lines: Line[] = [];
  for (const piece of pieces) {
    const own = rowBox(piece, gap).width;
    const last = lines.at(-1);
    if (last && last.width + gap + own <= width) {
      last.boxes.push(...piece);
      last.width += gap + own;
    } else lines.push({ boxes: [...piece], width: own + (last ? indentOf(lines) : 0) });
  }
  return lines;
}
