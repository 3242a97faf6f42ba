/** Data of every item used: what a reviewer wants to know of it, from the shelf. */
import type { Solved } from '../../answer/solve-job.ts';
import type { Clip, Item, Plate, Rivet, Screw } from '../../shelf/item.ts';
import { FAINT, GREY } from '../pdf/pen.ts';
import type { Sheet } from '../pdf/sheet.ts';
import { type Printer, printer } from '../print-units.ts';
import type { Words } from '../words/words.ts';

type Fact = readonly [name: string, value: string];

export function dataSheets(sheet: Sheet, { answer, design }: Solved): void {
  const { words } = sheet.plan;
  const used = new Set(answer.takeoff.lines.map((line) => line.item));
  const items = design.items.filter((item) => used.has(item.id) && item.kind !== 'bit');
  if (items.length === 0) return;
  sheet.room(200);
  sheet.outline(words.submittal.dataSheets);
  sheet.head(words.submittal.dataSheets, words.field.nominal);
  const print = printer(answer.job.print.units);
  for (const item of items) dataSheet(sheet, item, print);
}

const COLUMNS = 3;

function dataSheet(sheet: Sheet, item: Item, print: Printer): void {
  const { pen } = sheet;
  const facts = factsOf(item, sheet.plan.words, print).filter(([, value]) => value !== '');
  const width = (sheet.width - 12 * (COLUMNS - 1)) / COLUMNS;
  const name = { width: 74, size: 7.5, color: GREY, most: 2 };
  const value = { width: width - 78, size: 7.5, most: 4 };
  const rows: Fact[][] = [];
  for (let i = 0; i < facts.length; i += COLUMNS) rows.push(facts.slice(i, i + COLUMNS));
  const heights = rows.map(
    (row) =>
      Math.max(...row.map(([key, text]) => Math.max(pen.heightOf(key, name), pen.heightOf(text, value)))) + 2,
  );
  sheet.room(22 + heights.reduce((sum, height) => sum + height, 0));
  sheet.y = pen.block(`${item.id}   ${item.designation}`, sheet.left, sheet.y, {
    width: sheet.width,
    size: 9.5,
    face: 'bold',
    most: 2,
  });
  sheet.y += 2;
  rows.forEach((row, i) => {
    row.forEach(([key, text], at) => {
      const x = sheet.left + at * (width + 12);
      pen.block(key, x, sheet.y, name);
      pen.block(text, x + 78, sheet.y, value);
    });
    sheet.y += heights[i] ?? 0;
  });
  const sources = sourcesOf(item, sheet.plan.words);
  if (sources !== '')
    sheet.y = pen.block(`${sheet.plan.words.field.source}: ${sources}`, sheet.left, sheet.y, {
      width: sheet.width,
      size: 7,
      color: GREY,
      most: 3,
    });
  sheet.y += 3;
  pen.rule(sheet.left, sheet.y, sheet.width, { color: FAINT });
  sheet.y += 5;
}

function factsOf(item: Item, words: Words, print: Printer): Fact[] {
  const f = words.field;
  const common: Fact[] = [
    [f.metal, words.terms.metal[item.metal]],
    [f.coating, words.terms.coating[item.coating]],
    [f.weight, print.weight(item.weight * 1000)],
    [f.pack, String(item.pack)],
    [
      f.colours,
      item.colours.length > 6 ? `${item.colours.slice(0, 6).join(', ')} …` : item.colours.join(', '),
    ],
  ];
  if (item.kind === 'screw') return [...screwFacts(item, words, print), ...common];
  if (item.kind === 'rivet') return [...rivetFacts(item, words, print), ...common];
  if (item.kind === 'clip') return [...clipFacts(item, words, print), ...common];
  return item.kind === 'plate' ? [...plateFacts(item, words, print), ...common] : common;
}

interface Strength {
  readonly value: number;
  readonly source: string;
}
const strength = (part: Strength | undefined, print: Printer, kind: 'force' | 'torque'): string =>
  part === undefined ? '' : print.text(kind, part.value);

/** Each source once, after the strengths it stands for. */
function sourcesOf(item: Item, { field: f }: Words): string {
  const parts: (readonly [string, Strength | undefined])[] =
    item.kind === 'screw'
      ? [
          [f.tension, item.tension],
          [f.shear, item.shear],
          [f.torsion, item.torsion],
        ]
      : item.kind === 'rivet'
        ? [
            [f.tension, item.tension],
            [f.shear, item.shear],
          ]
        : item.kind === 'clip'
          ? [[f.uplift, item.uplift]]
          : [];
  const bySource = new Map<string, string[]>();
  for (const [name, part] of parts)
    if (part) bySource.set(part.source, [...(bySource.get(part.source) ?? []), name]);
  return [...bySource].map(([source, names]) => `${names.join(', ')}: ${source}`).join('; ');
}

function screwFacts(screw: Screw, { field: f, terms }: Words, print: Printer): Fact[] {
  const { point, head, washer } = screw;
  const drills =
    point.drillsTo > 0
      ? `${print.short('size', point.drillsFrom)} – ${print.short('size', point.drillsTo)}`
      : '';
  return [
    [f.size, screw.size],
    [f.diameter, print.short('size', screw.diameter)],
    [f.rootDiameter, print.short('size', screw.rootDiameter)],
    [f.threads, String(screw.threadsPerInch)],
    [f.length, print.short('size', screw.length)],
    [f.threadLength, print.short('size', screw.threadLength)],
    [
      f.point,
      `${terms.point[point.form]}${point.number === undefined ? '' : ` ${point.number}`}, ${print.short('size', point.length)}`,
    ],
    [f.drills, drills],
    [f.head, `${terms.head[head.form]}, ø ${print.short('size', head.bearingDiameter)}`],
    [f.washer, washer ? `ø ${print.short('size', washer.metalDiameter)}, ${washer.rubber}` : ''],
    [f.drive, screw.drive],
    [f.tension, strength(screw.tension, print, 'force')],
    [f.shear, strength(screw.shear, print, 'force')],
    [f.torsion, strength(screw.torsion, print, 'torque')],
  ];
}

function rivetFacts(rivet: Rivet, { field: f }: Words, print: Printer): Fact[] {
  return [
    [f.diameter, print.short('size', rivet.diameter)],
    [f.grip, `${print.short('size', rivet.gripFrom)} – ${print.short('size', rivet.gripTo)}`],
    [
      f.hole,
      `${print.short('size', rivet.hole.from)} – ${print.short('size', rivet.hole.to)}, ${rivet.hole.drill}`,
    ],
    [f.head, `ø ${print.short('size', rivet.headDiameter)}`],
    [f.sealed, rivet.sealed ? f.yes : f.no],
    [f.tension, strength(rivet.tension, print, 'force')],
    [f.shear, strength(rivet.shear, print, 'force')],
  ];
}

function clipFacts(clip: Clip, { field: f }: Words, print: Printer): Fact[] {
  const { lever } = clip;
  return [
    [f.seamHeight, print.short('size', clip.seamHeight)],
    [f.thickness, print.short('thickness', clip.baseThickness)],
    [f.screws, `${clip.screws} × ${clip.screwSize.join(', ')}`],
    [f.headRoom, print.short('size', clip.headRoom)],
    [f.travel, print.short('size', clip.travel)],
    [
      f.lever,
      lever ? `${print.short('size', lever.seamToScrew)}, ${print.short('size', lever.screwToToe)}` : '–',
    ],
    [f.uplift, strength(clip.uplift, print, 'force')],
  ];
}

function plateFacts(plate: Plate, { field: f }: Words, print: Printer): Fact[] {
  return [
    [f.plate, `${print.short('size', plate.size.length)} × ${print.short('size', plate.size.width)}`],
    [f.thickness, print.short('thickness', plate.thickness)],
    [f.tension, print.text('stress', plate.tensileStrength)],
  ];
}
