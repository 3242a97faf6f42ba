import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { withField } from '../ask/field.ts';
import { type Solved, solveJob } from '../solve-job.ts';
import type { Margin } from './boundary.ts';
import { lineAgain } from './held-line.ts';
import { type LineMargins, marginsOf } from './margins.ts';

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../demo/${name}.json`, import.meta.url), 'utf8'));
const shelf = read('shelf');
const names = ['a-boathouse', 'b-long-hall', 'c-farm', 'd-reroof'];

function solved(document: unknown): Solved {
  const read = solveJob(document, shelf);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

const jobs = new Map(names.map((name) => [name, read(name)]));
const margins = new Map(names.map((name) => [name, marginsOf(solved(jobs.get(name)))]));
const linesOf = (name: string): readonly LineMargins[] => margins.get(name) ?? [];
const lineOf = (name: string, connection: string, zone: string): LineMargins => {
  const found = linesOf(name).find((line) => line.connection === connection && line.zone === zone);
  if (!found) throw new Error(`no line ${connection}, zone ${zone}`);
  return found;
};

/** A full solve with a field altered and the item, and where it may be, the spacing of a line kept by hand. */
function verdictWith(
  name: string,
  { connection, item, zone, spacing_in }: LineMargins,
  path: string,
  put: unknown,
  free: boolean,
) {
  const overrides = [
    { connection, item, because: 'held for this test' },
    ...(free ? [{ connection, zone, spacing: `${spacing_in} in`, because: 'held for this test' }] : []),
  ];
  const { answer } = solved(withField(withField(jobs.get(name), 'overrides', overrides), path, put));
  const choice = answer.choices.find((one) => one.connection.id === connection);
  return choice?.lines.find((line) => answer.field.zones[line.zone]?.label === zone)?.verdict;
}

const mostOf = (margin: Margin): number => {
  if (margin.kind !== 'holds' || !margin.most) throw new Error('no upper bound');
  return margin.most.value;
};
const leastOf = (margin: Margin): number => {
  if (margin.kind !== 'holds' || !margin.least) throw new Error('no lower bound');
  return margin.least.value;
};

/** Half a percent, and a hair for the text that carries the value. */
const PAST = 1.006;

test.each(names)('%s: a line made again with nothing changed is the line itself', (name) => {
  const { answer, design } = solved(jobs.get(name));
  for (const { connection, item, lines } of answer.choices)
    for (const line of item ? lines : []) {
      const again = lineAgain({ item: item as NonNullable<typeof item>, line }, connection, design);
      expect([again.verdict, again.ratio]).toEqual([line.verdict, line.ratio]);
    }
});

test.each(names)('%s: every bound lies on its own side of what stands now', (name) => {
  for (const { spacing_in, margins: held } of linesOf(name)) {
    const margin = held.spacing_in;
    if (margin.kind !== 'holds') continue;
    expect(margin.least?.value ?? 0).toBeLessThanOrEqual(spacing_in);
    expect(margin.most?.value ?? spacing_in).toBeGreaterThanOrEqual(spacing_in);
  }
});

describe('wind speed', () => {
  test('a load that goes with the square of the speed ends at V / sqrt(ratio), by hand', () => {
    const { answer } = solved(jobs.get('b-long-hall'));
    const line = answer.choices[0]?.lines.find((one) => answer.field.zones[one.zone]?.label === '1');
    expect(line?.verdict).toBe('holds');
    const byHand = 120 / Math.sqrt(line?.ratio as number);
    const found = mostOf(lineOf('b-long-hall', 'panel clips', '1').margins.windSpeed_mph);
    expect(found).toBeLessThanOrEqual(byHand * (1 + 1e-9));
    expect(found).toBeGreaterThan(byHand * 0.995);
  });

  test.each([
    ['a-boathouse', 'eave starter', '3 overhang', true],
    ['a-boathouse', 'gutter bracket', '3 overhang', true],
    ['b-long-hall', 'panel clips', "1'", false],
    ['c-farm', 'panel screws', '3r overhang', false],
    ['c-farm', 'rake trim', '3r overhang', true],
  ] as const)('%s, %s, zone %s: a full solve agrees on both sides of the bound', (name, id, zone, free) => {
    const line = lineOf(name, id, zone);
    const speed = mostOf(line.margins.windSpeed_mph);
    expect(verdictWith(name, line, 'wind.speed', `${speed} mph`, free)).toBe('holds');
    // A rib may get a second screw where one falls short; the margin holds the one.
    if (id !== 'panel screws')
      expect(verdictWith(name, line, 'wind.speed', `${speed * PAST} mph`, free)).toBe('falls short');
  });

  test.each(['2', '3'])(
    'a line that falls short in zone %s starts to hold where a full solve says so',
    (zone) => {
      const line = lineOf('b-long-hall', 'panel clips', zone);
      const { windSpeed_mph: margin } = line.margins;
      if (margin.kind !== 'starts') throw new Error('it falls short at 120 mph');
      expect(verdictWith('b-long-hall', line, 'wind.speed', `${margin.value} mph`, false)).toBe('holds');
      expect(verdictWith('b-long-hall', line, 'wind.speed', `${margin.value * PAST} mph`, false)).toBe(
        'falls short',
      );
    },
  );

  test('pressures of an engineer have no speed behind them', () => {
    for (const line of linesOf('d-reroof')) expect(line.margins.windSpeed_mph.kind).toBe('none');
  });
});

describe('spacing', () => {
  test.each([
    ['a-boathouse', 'eave starter', '3 overhang'],
    ['c-farm', 'rake trim', '3r overhang'],
    ['d-reroof', 'rake trim', '3'],
  ] as const)('%s, %s, zone %s: a full solve agrees on both sides of the bound', (name, id, zone) => {
    const line = lineOf(name, id, zone);
    const most = mostOf(line.margins.spacing_in);
    expect(verdictWith(name, { ...line, spacing_in: most }, 'name', name, true)).toBe('holds');
    expect(verdictWith(name, { ...line, spacing_in: most * PAST }, 'name', name, true)).toBe('falls short');
  });

  test('outside the spacings a panel was tested at it stops, though the screws would carry on', () => {
    const margin = lineOf('b-long-hall', 'panel clips', "1'").margins.spacing_in;
    expect([leastOf(margin), mostOf(margin)].map((value) => Math.round(value))).toEqual([12, 60]);
  });

  test('a set number of fasteners at a piece has no spacing', () => {
    expect(lineOf('c-farm', 'pipe boot', '3r').margins.spacing_in.kind).toBe('none');
  });
});

describe('thickness', () => {
  test.each([
    ['a-boathouse', 'eave starter', '3 overhang', 'support.thickness', true],
    ['b-long-hall', 'panel clips', '1', 'support.thickness', false],
  ] as const)(
    '%s, %s: a full solve agrees at the thinnest and thickest support',
    (name, id, zone, path, free) => {
      const line = lineOf(name, id, zone);
      const { supportThickness_in: margin } = line.margins;
      const at = (value: number) => verdictWith(name, line, path, `${value.toFixed(6)} in`, free);
      expect([at(leastOf(margin) * 1.0001), at(mostOf(margin) * 0.9999)]).toEqual(['holds', 'holds']);
      expect([at(leastOf(margin) / PAST), at(mostOf(margin) * PAST)]).toEqual(['falls short', 'falls short']);
    },
  );

  test('a thicker deck can break it too: the point must still pass the far face', () => {
    const margin = lineOf('a-boathouse', 'eave starter', '3 overhang').margins.supportThickness_in;
    expect(margin.kind === 'holds' && margin.most?.by).toContain('past the deck');
  });

  test('a joint of two sheets does not know the deck', () => {
    expect(lineOf('a-boathouse', 'ridge cap', '2').margins.supportThickness_in).toEqual({
      kind: 'none',
      because: 'no link of the line depends on it',
    });
  });
});

test('a strip may not grow over a line that would not hold in the severer zone', () => {
  expect(lineOf('b-long-hall', 'panel clips', '1').strip.failsIn).toEqual(['2', '3']);
  expect(lineOf('b-long-hall', 'rake trim', '2').strip.failsIn).toEqual([]);
});

test('an unproven line tells the margin of the links that can be judged', () => {
  const margin = lineOf('a-boathouse', 'panel clips', '1').margins.windSpeed_mph;
  if (margin.kind !== 'none' || !margin.judged) throw new Error('no panel test is at hand');
  const { answer } = solved(jobs.get('a-boathouse'));
  const ratios = answer.choices[0]?.lines[0]?.checks.map(({ ratio }) => ratio ?? 0) ?? [];
  const byHand = 141 / Math.sqrt(Math.max(...ratios));
  expect(mostOf(margin.judged)).toBeLessThanOrEqual(byHand * (1 + 1e-9));
  expect(mostOf(margin.judged)).toBeGreaterThan(byHand * 0.995);
});

test('the same job gives the same margins', () => {
  expect(marginsOf(solved(jobs.get('c-farm')))).toEqual(linesOf('c-farm'));
});
