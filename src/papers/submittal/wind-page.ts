/** The wind: measures it stands on, and the working of velocity pressure and zones. */
import type { SiteFact } from '../../site/pressure-field.ts';
import { figure } from '../../trace/print.ts';
import { symbolName } from '../formula/set-expression.ts';
import { type Printed, setSteps } from '../formula/set-step.ts';
import { GREY } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { table } from '../pdf/table.ts';
import { type Printer, type PrintKind, printer } from '../print-units.ts';
import { termOf } from '../words/terms.ts';

export function windPage(sheet: Sheet, printed: Printed): void {
  const { answer, words } = sheet.plan;
  const { field } = answer;
  sheet.room(150);
  sheet.outline(words.submittal.wind);
  sheet.head(words.submittal.wind, words.submittal.windSource(field.cites));
  sheet.subhead(words.submittal.facts);
  const print = printer(answer.job.print.units);
  const setting = { pen: sheet.pen, size: 8.5 };
  table(
    sheet,
    [
      { head: '', width: 40, fixed: true },
      { head: '', width: 5 },
      { head: '', width: 1, align: 'right' },
      { head: '', width: 40, fixed: true },
    ],
    field.facts.map((fact) => ({
      cells: [
        { text: '', draw: (x: number, y: number) => symbolName(fact.symbol, setting, 0).draw(x, y + 8) },
        termOf('fact', fact.means, words),
        ...measure(fact, print),
      ],
    })),
  );
  sheet.subhead(words.submittal.working);
  setSteps(sheet, field.trace, printed);
  for (const text of field.readings) sheet.paragraph(text, { color: GREY });
}

/** Kinds of number among the measures. The formulas below them stay in the units of their standard. */
const kinds: Readonly<Partial<Record<SiteFact['unit'], PrintKind>>> = {
  mph: 'speed',
  psf: 'pressure',
  ft: 'run',
};

function measure({ value, unit }: SiteFact, print: Printer): readonly [number: string, unit: string] {
  const kind = kinds[unit];
  if (print.system === 'SI' && kind) return [print.number(kind, value), print.unit(kind)];
  return [figure(value), unit === '1' ? '' : unit];
}
