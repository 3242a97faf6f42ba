/** Cases that once ended as "holds" without anybody having proved anything. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Answer } from './answer.ts';
import { exitCodeOf } from './exit-code.ts';
import { solveJob } from './solve-job.ts';

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../demo/${name}.json`, import.meta.url), 'utf8'));
const solve = (document: unknown) => solveJob(document, read('shelf'));
const answerOf = (document: unknown): Answer => {
  const solved = solve(document);
  if (!solved.ok) throw new Error(JSON.stringify(solved.faults));
  return solved.value.answer;
};
const faultsOf = (document: unknown): string[] => {
  const solved = solve(document);
  return solved.ok ? [] : solved.faults.map((fault) => `${fault.path}: ${fault.message}`);
};
const linesOf = (answer: Answer, connection: string) =>
  answer.choices.find((one) => one.connection.id === connection)?.lines ?? [];
const [farm, hall, reroof, boathouse] = ['c-farm', 'b-long-hall', 'd-reroof', 'a-boathouse'].map(read);

describe('nothing on the shelf fits', () => {
  test('a colour nobody stocks leaves every panel line unproven', () => {
    const answer = answerOf({ ...farm, panel: { ...farm.panel, colour: 'purple' } });
    const lines = linesOf(answer, 'panel screws');
    expect(lines.length).toBeGreaterThan(3);
    for (const line of lines) {
      expect(line.verdict).toBe('unproven');
      expect(line.checks.map((check) => check.capacity.link)).toContain('fit');
    }
    expect(exitCodeOf(answer.count)).toBe(2);
  });
  test('a deck nobody described stays in the chain without an item', () => {
    const bare = {
      ...boathouse,
      place: { ...boathouse.place, below: 'in view' },
      support: { ...boathouse.support, thickness: '0.3 in' },
    };
    const [line] = linesOf(answerOf(bare), 'panel clips');
    expect(line?.checks.map((check) => check.capacity.link)).toContain('deck to frame');
  });
  test('no clip named: the one taken can be served by a screw', () => {
    const { clip: _, ...panel } = reroof.panel;
    const answer = answerOf({ ...reroof, panel });
    expect(answer.choices[0]?.item).toBeDefined();
    expect(answer.choices[0]?.clip).toBeDefined();
  });
});

describe('open questions that once were answered by themselves', () => {
  test('an open code year leaves every line unproven', () => {
    const answer = answerOf({ ...farm, basis: { ...farm.basis, codeYear: { ask: 'Which code year?' } } });
    expect(answer.count.holds).toBe(0);
    expect(exitCodeOf(answer.count)).toBe(2);
  });
  test('but not when every edition is named', () => {
    const basis = {
      codeYear: { ask: 'Which code year?' },
      wind: 'ASCE 7-16',
      steel: 'AISI S100-16',
      wood: 'NDS 2018',
      aluminium: 'ADM 2015',
    };
    expect(answerOf({ ...farm, basis }).count.holds).toBeGreaterThan(10);
  });
  for (const [name, saltWater] of [
    ['asked', { ask: 'How far is salt water?' }],
    ['left out', undefined],
  ] as const)
    test(`a distance to salt water that is ${name} is answered by an item that does in either place, or stays open`, () => {
      const { saltWater: _, ...place } = farm.place;
      const answer = answerOf({ ...farm, place: saltWater === undefined ? place : { ...place, saltWater } });
      // Stainless does by the sea as well, so it is taken and the question cannot change the answer.
      expect(answer.choices.find((one) => one.connection.id === 'panel screws')?.item?.metal).toMatch(
        /stainless/,
      );
      const plated = { connection: 'panel screws', item: 'PW10-150K', because: 'in stock' };
      const held = answerOf({
        ...farm,
        place: saltWater === undefined ? place : { ...place, saltWater },
        overrides: [plated],
      });
      for (const line of linesOf(held, 'panel screws'))
        expect(line.checks[line.governing]?.capacity.link).toBe('metals');
      expect(answer.remarks.join(' ')).toContain('distance to salt water is not known');
    });
});

describe('trims need something to hold in', () => {
  test('between purlins without a member along the edge a starter, a valley pan and a bracket are unproven', () => {
    const { edgeMember: _, ...details } = hall.details;
    const answer = answerOf({ ...hall, details });
    for (const id of ['eave starter', 'gutter bracket'])
      for (const line of linesOf(answer, id)) expect(line.verdict, id).toBe('unproven');
    const { edgeMember: __, ...barn } = farm.details;
    for (const line of linesOf(answerOf({ ...farm, details: barn }), 'valley pan'))
      expect(line.verdict).toBe('unproven');
  });
  test('over insulation a starter takes a screw that passes it', () => {
    const item = answerOf(reroof).choices.find((one) => one.connection.id === 'eave starter')?.item;
    expect(item?.kind === 'screw' ? item.length : 0).toBeGreaterThan(4);
  });
});

describe('decisions by hand', () => {
  const withOverride = (...overrides: object[]) => ({
    ...hall,
    overrides: overrides.map((one) => ({ because: 'because I say so', ...one })),
  });
  const rows: [string, object[], string][] = [
    [
      'an unknown joint',
      [{ connection: 'roof hatch', item: 'CS12-125K' }],
      'overrides.0.connection: "roof hatch" is no joint of this roof; there are: panel clips',
    ],
    [
      'an unknown zone',
      [{ connection: 'eave starter', zone: '9', spacing: '4 in' }],
      'overrides.0.zone: "9" is no zone of this roof',
    ],
    [
      'neither item nor spacing',
      [{ connection: 'eave starter' }],
      'overrides.0: changes neither item nor spacing',
    ],
    [
      'an item in one zone',
      [{ connection: 'eave starter', zone: '2', item: 'CS10-100Z' }],
      'overrides.0.zone: an item is chosen for all zones',
    ],
    [
      'a spacing on purlins',
      [{ connection: 'panel clips', spacing: '24 in' }],
      'overrides.0.spacing: these fasteners stand on the supports',
    ],
    [
      'a spacing of pieces',
      [{ connection: 'pipe boot', spacing: '10 in' }],
      'overrides.0.spacing: this joint has a set number',
    ],
    [
      'the same decision twice',
      [
        { connection: 'eave starter', spacing: '4 in' },
        { connection: 'eave starter', spacing: '5 in' },
      ],
      'overrides.1: decides again what overrides.0 decided',
    ],
  ];
  for (const [name, overrides, message] of rows)
    test(`${name} is a fault`, () =>
      expect(faultsOf(withOverride(...overrides)).join('\n')).toContain(message));
  test('item and spacing may be decided apart, and both count', () => {
    const answer = answerOf(
      withOverride(
        { connection: 'eave starter', item: 'CS10-125K' },
        { connection: 'eave starter', spacing: '4 in' },
      ),
    );
    const choice = answer.choices.find((one) => one.connection.id === 'eave starter');
    expect(choice?.item?.id).toBe('CS10-125K');
    for (const line of choice?.lines ?? []) expect([line.spacing_in, line.setBy]).toEqual([4, 'override']);
  });
});

describe('a shortfall does not spoil the choice', () => {
  test("an owner's cap the supports break leaves the item as it was", () => {
    const item = (document: unknown) => answerOf(document).choices[0]?.item?.id;
    expect(item({ ...hall, spacingCap: '48 in' })).toBe(item(hall));
  });
  test('an item that does not fit is not tightened uselessly', () => {
    const held = {
      ...hall,
      overrides: [{ connection: 'ridge cap', item: 'CS12-125K', because: 'in stock' }],
    };
    expect(linesOf(answerOf(held), 'ridge cap').map((line) => line.spacing_in)).toEqual(
      linesOf(answerOf(hall), 'ridge cap').map((line) => line.spacing_in),
    );
  });
});

test('prices are whole cents, and the total is their sum', () => {
  for (const name of ['a-boathouse', 'b-long-hall', 'c-farm', 'd-reroof']) {
    const { lines, total } = answerOf(read(name)).takeoff;
    for (const { price } of lines) expect(String(price)).toMatch(/^\d+(\.\d{1,2})?$/);
    expect(String(total)).toMatch(/^\d+(\.\d{1,2})?$/);
    expect(Math.round(total * 100)).toBe(lines.reduce((sum, { price }) => sum + Math.round(price * 100), 0));
  }
});

describe("the owner's cap", () => {
  test('falls short where the supports stand wider, and says what would do', () => {
    const lines = linesOf(answerOf({ ...hall, spacingCap: '30 in' }), 'panel clips');
    for (const line of lines) expect([line.verdict, line.holdsAt_in]).toEqual(['falls short', 30]);
  });
  test('below everything a crew chalks is taken as it is', () => {
    const lines = linesOf(answerOf({ ...boathouse, spacingCap: '2 in' }), 'panel clips');
    for (const line of lines) expect(line.spacing_in).toBeCloseTo(2, 9);
  });
});

test('dead load of the roof is not deducted from trims and brackets', () => {
  const load = (document: unknown) =>
    linesOf(answerOf(document), 'gutter bracket').map((line) => line.fastenerLoad_lbf);
  expect(load({ ...hall, basis: { ...hall.basis, deductDeadLoad: '3 psf' } })).toEqual(load(hall));
});

test('the edge strip of a joined roof is that of its main part', () => {
  // Main part 48 ft wide: 0.1 · 48 = 4.8 ft; by the wing (32 ft) it would be 3.2 ft.
  expect(answerOf(farm).field.facts.find(({ symbol }) => symbol === 'a')?.value).toBeCloseTo(4.8, 9);
});

test('a wall along part of a straight side leaves the rest of it open to wind', () => {
  const outline = [
    ['0 ft', '0 ft'],
    ['100 ft', '0 ft'],
    ['100 ft', '60 ft'],
    ['30 ft', '60 ft'],
    ['0 ft', '60 ft'],
  ];
  const roof = {
    form: 'planes',
    eaveHeight: '14 ft',
    highestPoint: '16 ft',
    planes: [
      {
        id: 'a',
        outline,
        edges: ['eave', 'rake', 'headwall', 'high edge', 'rake'],
        slope: '0.5:12',
        windShape: 'flat',
      },
    ],
  };
  const answer = answerOf({ ...hall, roof, details: {}, panel: { ...hall.panel, longestSheet: '100 ft' } });
  const outside = answer.roof.outside
    .map(({ from, to }) => Math.round(Math.hypot(to.x - from.x, to.y - from.y) / 12))
    .sort((a, b) => a - b);
  expect(outside).toEqual([30, 60, 60, 100]);
});
