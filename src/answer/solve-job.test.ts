import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answer } from './answer.ts';
import { exitCodeOf } from './exit-code.ts';
import { solveJob } from './solve-job.ts';

type Document = Record<string, never> & { [key: string]: never };
const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../demo/${name}.json`, import.meta.url), 'utf8'));
const shelf = read('shelf');
const demos = ['a-boathouse', 'b-long-hall', 'c-farm', 'd-reroof'] as const;

function answerOf(document: unknown): Answer {
  const solved = solveJob(document, shelf);
  if (!solved.ok) throw new Error(solved.faults.map((f) => `${f.path}: ${f.message}`).join('\n'));
  return solved.value.answer;
}
/** A copy of a demonstration job with one field, by its path, set to a value. */
function changed(name: string, ...changes: readonly (readonly [string, unknown])[]): Document {
  const document = read(name);
  for (const [path, value] of changes) {
    const keys = path.split('.');
    const last = keys.pop() as string;
    const owner = keys.reduce((part, key) => part[key], document);
    if (value === undefined) delete owner[last];
    else owner[last] = value;
  }
  return document;
}
const verdicts = (answer: Answer) =>
  answer.choices.flatMap((choice) => choice.lines.map((line) => line.verdict));

describe('the demonstration jobs', () => {
  for (const name of demos) {
    const answer = answerOf(read(name));
    test(`${name}: zone areas add up to the roof`, () => {
      const planes = answer.roof.planes.reduce((sum, plane) => sum + plane.planArea_ft2, 0);
      const zones = answer.field.zones.reduce((sum, zone) => sum + zone.planArea_ft2, 0);
      expect(Math.abs(zones - planes) / planes).toBeLessThan(1e-6);
    });
    test(`${name}: every line is counted once among the verdicts`, () => {
      const { holds, fallsShort, unproven } = answer.count;
      expect(holds + fallsShort + unproven).toBe(verdicts(answer).length);
      expect(verdicts(answer).length).toBeGreaterThan(5);
    });
    test(`${name}: the order is the sum of its uses, and every pack is whole`, () => {
      for (const line of answer.takeoff.lines.filter(({ kind }) => kind !== 'bit')) {
        expect(line.uses.reduce((sum, use) => sum + use.count, 0)).toBeCloseTo(line.count, 6);
        expect(line.ordered).toBeGreaterThanOrEqual(line.count);
        expect(line.ordered % line.pack).toBe(0);
        expect(Math.abs(line.price - line.ordered * line.unitPrice)).toBeLessThanOrEqual(0.005 + 1e-9);
      }
    });
    test(`${name}: an item is found for every connection`, () => {
      expect(
        answer.choices.filter((choice) => choice.item === undefined).map((choice) => choice.connection.id),
      ).toEqual([]);
    });
  }

  test('the boathouse is unproven where the panel test and the nailing are asked, and says so', () => {
    const answer = answerOf(read('a-boathouse'));
    const clips = answer.choices.find((choice) => choice.connection.id === 'panel clips');
    for (const line of clips?.lines ?? []) {
      expect(line.verdict).toBe('unproven');
      expect(line.panelVerdict).toBe('unproven');
      expect(line.checks.filter((c) => c.verdict === 'unproven').map((c) => c.capacity.because)).toEqual([
        expect.stringContaining('Has this panel been tested'),
        expect.stringContaining('How is the deck nailed'),
      ]);
    }
  });

  test('the long hall falls short in its edge zones in this form, and holds inside', () => {
    const answer = answerOf(read('b-long-hall'));
    expect(exitCodeOf(answer.count)).toBe(1);
    const clips = answer.choices.find((choice) => choice.connection.id === 'panel clips');
    expect(clips?.lines.filter((line) => line.verdict === 'falls short').length).toBeGreaterThan(0);
  });
});

describe('properties', () => {
  const spacings = (answer: Answer): Map<string, number> =>
    new Map(
      answer.choices.flatMap((choice) =>
        choice.lines.map((line) => [
          `${choice.connection.id} ${answer.field.zones[line.zone]?.label}`,
          line.spacing_in / line.each,
        ]),
      ),
    );

  test('more wind never allows a wider spacing with the same item', () => {
    // The same item throughout: another item may carry more and so stand wider.
    const base = answerOf(read('a-boathouse'));
    const items = base.choices
      .filter((choice) => choice.item)
      .map((choice) => ({
        connection: choice.connection.id,
        item: choice.item?.id,
        because: 'held for comparison',
      }));
    const at = (speed: number) =>
      spacings(answerOf(changed('a-boathouse', ['wind.speed', `${speed} mph`], ['overrides', items])));
    fc.assert(
      fc.property(fc.integer({ min: 90, max: 200 }), fc.integer({ min: 1, max: 60 }), (low, more) => {
        const [calm, storm] = [at(low), at(low + more)];
        for (const [key, spacing] of calm)
          expect(storm.get(key), `${key} at ${low} and ${low + more} mph`).toBeLessThanOrEqual(
            spacing + 1e-9,
          );
      }),
      { numRuns: 25 },
    );
  });

  test('the order in which planes are drawn changes nothing', () => {
    const square = (x0: number, x1: number, edges: string[]) => ({
      outline: [
        [`${x0} ft`, '0 ft'],
        [`${x1} ft`, '0 ft'],
        [`${x1} ft`, '30 ft'],
        [`${x0} ft`, '30 ft'],
      ],
      edges,
      slope: '4:12',
    });
    const planes = [
      { id: 'left', ...square(0, 40, ['eave', 'rake', 'ridge', 'rake']) },
      { id: 'right', ...square(40, 100, ['eave', 'rake', 'ridge', 'rake']) },
      { id: 'back', ...square(120, 180, ['eave', 'rake', 'ridge', 'rake']) },
    ];
    const summary = (list: unknown[]) => {
      const answer = answerOf(
        changed('c-farm', ['roof', { form: 'planes', eaveHeight: '14 ft', planes: list }], ['details', {}]),
      );
      return {
        count: answer.count,
        lines: answer.takeoff.lines.map((line) => [line.item, line.count, line.price]).sort(),
      };
    };
    const [first, ...others] = [
      [0, 1, 2],
      [2, 1, 0],
      [1, 2, 0],
    ].map((order) => summary(order.map((i) => planes[i])));
    for (const other of others) expect(other).toEqual(first);
  });

  test('a roof twice as long takes twice the field fasteners, within the rows at its ends', () => {
    const clips = (length: number) => {
      const answer = answerOf(changed('b-long-hall', ['roof.length', `${length} ft`]));
      const seams = answer.takeoff.runs.reduce((sum, run) => sum + run.seams, 0);
      const set = answer.layout
        .filter(({ connection }) => connection === 'panel clips')
        .reduce((sum, one) => sum + one.count, 0);
      // Each plane has its seams and the two rakes, where the outer edges of the first and last run are clipped.
      return { seams, perLine: set / (seams + 4) };
    };
    const [one, two] = [clips(300), clips(600)];
    expect(two.perLine).toBeCloseTo(one.perLine, 9);
    expect(two.seams).toBe(one.seams * 2 + 2);
  });

  const unknowns: [string, string, string][] = [
    ['wind.speed', 'a-boathouse', 'panel clips'],
    ['wind.exposure', 'a-boathouse', 'panel clips'],
    ['wind.enclosure', 'a-boathouse', 'panel clips'],
    ['panel.thickness', 'c-farm', 'panel screws'],
    ['panel.grade', 'c-farm', 'panel screws'],
    ['panel.upliftTest', 'c-farm', 'panel screws'],
    ['support.species', 'c-farm', 'panel screws'],
    ['support.depth', 'c-farm', 'panel screws'],
    ['support.thickness', 'b-long-hall', 'panel clips'],
    ['support.grade', 'b-long-hall', 'panel clips'],
    ['support.specificGravity', 'a-boathouse', 'panel clips'],
    ['support.nailing', 'a-boathouse', 'panel clips'],
    ['support.fastening', 'd-reroof', 'panel clips'],
    ['roofSnow', 'd-reroof', 'panel clips'],
    ['insulation.compressiveStrength', 'd-reroof', 'panel clips'],
  ];
  for (const [path, name, connection] of unknowns)
    test(`nothing of "${connection}" holds while ${path} of ${name} is only asked`, () => {
      const answer = answerOf(changed(name, [path, { ask: 'not known yet' }]));
      const lines = answer.choices.find((choice) => choice.connection.id === connection)?.lines ?? [];
      expect(lines.length).toBeGreaterThan(0);
      expect(lines.map((line) => line.verdict)).not.toContain('holds');
    });
});

describe('bad input', () => {
  const faults = (document: unknown): string => {
    const solved = solveJob(document, shelf);
    return solved.ok ? 'none' : solved.faults.map((f) => `${f.path}: ${f.message}`).join('\n');
  };
  const rows: [string, Document, string][] = [
    [
      'a wrong unit',
      changed('a-boathouse', ['wind.speed', '141 psf']),
      'wind.speed: psf does not measure what is asked for here; write a number with its unit, for example "120 mph"',
    ],
    [
      'a bare number',
      changed('a-boathouse', ['panel.coverage', 16]),
      'panel.coverage: must be text in quotes, with its unit where it is a quantity',
    ],
    [
      'NaN',
      changed('a-boathouse', ['panel.coverage', 'NaN in']),
      'panel.coverage: "NaN in" is not a quantity',
    ],
    [
      'a negative length',
      changed('a-boathouse', ['roof.length', '-80 ft']),
      'roof.length: "-80 ft" is out of range: it must be above 0 in',
    ],
    [
      'no slope',
      changed('a-boathouse', ['roof.slope', '0:12']),
      'roof.slope: a roof with no slope does not drain',
    ],
    [
      'purlins beyond the plane',
      changed('b-long-hall', ['support.firstOffset', '60 in'], ['roof.width', '8 ft']),
      'support.firstOffset: the first line lies beyond the top of plane',
    ],
    [
      'an unknown item',
      changed('a-boathouse', ['panel.clip', 'CL999']),
      'panel.clip: "CL999" is not on the shelf',
    ],
    [
      'an item of the wrong kind',
      changed('d-reroof', ['insulation.plate', 'CL200T']),
      'insulation.plate: "CL200T" is a clip; a plate is wanted here',
    ],
    [
      'an unknown gauge',
      changed('b-long-hall', ['panel.thickness', '99 ga']),
      'panel.thickness: "99 ga" is no thickness of steel sheet',
    ],
    [
      'an unknown species',
      changed('c-farm', ['support.species', 'Moonwood']),
      'support.species: "Moonwood" is no species',
    ],
    [
      'a misspelt field',
      changed('a-boathouse', ['panel.coverge', '16 in']),
      'panel.coverge: is not a field here',
    ],
    ['a missing field', changed('a-boathouse', ['panel.coverage', undefined]), 'panel.coverage: is missing'],
    [
      'an unknown choice',
      changed('a-boathouse', ['wind.exposure', 'E']),
      'wind.exposure: must be one of: B, C, D',
    ],
    ['a document that is no object', [] as never, '(the document): must be an object'],
    [
      'several faults at once',
      changed('a-boathouse', ['wind.speed', '141'], ['roof.slope', 'steep']),
      'roof.slope: "steep" is not a slope',
    ],
  ];
  for (const [name, document, message] of rows)
    test(`${name} is one message with its field`, () => expect(faults(document)).toContain(message));
});
