/** Broken documents: each ends in faults with a path and a plain sentence, or in a sound answer; never in an exception. */
import { readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJob } from '../job/read-job.ts';
import type { Fault } from '../quantities/fault.ts';
import { readShelf } from '../shelf/read-shelf.ts';
import { inputsOf } from './inputs.ts';
import { jsonSchema, schemaNames } from './schemas.ts';
import { solve } from './solve-job.ts';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
type Path = readonly (string | number)[];

const texts = new Map<string, string>();
function read(name: string) {
  const text = texts.get(name) ?? readFileSync(new URL(`../../demo/${name}.json`, import.meta.url), 'utf8');
  texts.set(name, text);
  return JSON.parse(text);
}
const shelf = read('shelf');
const shelfRead = readShelf(shelf);
/** As solveJob, with the shelf read only once. */
function solved(document: unknown) {
  if (!shelfRead.ok) throw new Error('the shelf is faulty');
  const job = readJob(document);
  return job.ok ? solve(job.value, shelfRead.value, inputsOf(document)) : job;
}
const demos = ['a-boathouse', 'b-long-hall', 'c-farm', 'd-reroof'] as const;
type Demo = (typeof demos)[number];

/** A demonstration job with the field at a path set, or removed when the value is undefined. */
function changed(name: Demo, ...changes: readonly (readonly [string | Path, unknown])[]): unknown {
  const document = read(name);
  for (const [at, value] of changes) {
    const keys = typeof at === 'string' ? at.split('.') : [...at];
    const last = keys.pop() as string;
    const owner = keys.reduce((part, key) => part[key], document);
    if (value === undefined) delete owner[last];
    else owner[last] = value;
  }
  return document;
}

function faultsOf(document: unknown): readonly Fault[] {
  const answer = solved(document);
  return answer.ok ? [] : answer.faults;
}
const linesOf = (document: unknown) => faultsOf(document).map((f) => `${f.path}: ${f.message}`);

const square = (x: number, slope: string) => ({
  id: `p${x}`,
  outline: [
    [`${x} ft`, '0 ft'],
    [`${x + 40} ft`, '0 ft'],
    [`${x + 40} ft`, '20 ft'],
    [`${x} ft`, '20 ft'],
  ],
  edges: ['eave', 'rake', 'ridge', 'rake'],
  slope,
});

describe('faults that name the field and how to mend it', () => {
  const rows: [string, unknown, string][] = [
    [
      'two test rows of one spacing, in different units',
      changed('b-long-hall', ['panel.upliftTest.rows.1.spacing', '1 ft']),
      'panel.upliftTest.rows.1.spacing: is the spacing of row 0 already',
    ],
    [
      'a rib spacing left out',
      changed('c-farm', ['panel.ribSpacing', undefined]),
      'panel.ribSpacing: is missing;',
    ],
    [
      'ribs that do not divide the coverage',
      changed('c-farm', ['panel.ribSpacing', '10 in']),
      'panel.ribSpacing: does not divide the coverage: 4 × 10 in is not 36 in',
    ],
    [
      'a first panel cut away whole',
      changed('c-farm', ['panel.startOffset', '36 in']),
      'panel.startOffset: cuts away the whole first panel',
    ],
    [
      'a clip of another seam',
      changed('a-boathouse', ['panel.seamHeight', '2 in']),
      'panel.clip: "CL175TS" is for a seam of 1.75 in, the panel has one of 2 in',
    ],
    [
      'an eave height only asked',
      changed('a-boathouse', ['roof.eaveHeight', { ask: 'how high?' }]),
      'roof.eaveHeight: is only asked, but zones and pressures follow from it: assume one',
    ],
    ['a slope no figure covers', changed('d-reroof', ['roof.slope', '40:12']), 'roof.slope: '],
    ['the same on a joined roof', changed('c-farm', ['roof.main.slope', '40:12']), 'roof.main.slope: '],
    [
      'the same on one of two drawn planes',
      changed(
        'c-farm',
        ['roof', { form: 'planes', eaveHeight: '12 ft', planes: [square(0, '4:12'), square(60, '30:12')] }],
        ['details', {}],
      ),
      'roof.planes.1.slope: ',
    ],
    [
      'a pressure for a zone this roof has not',
      changed('d-reroof', ['wind.zones.2e', { uplift: '-30 psf' }]),
      "wind.zones.2e: is no zone of this roof; its zones by ASCE/SEI 7-22 are: 1, 2, 2', 3, 3'",
    ],
    [
      'a roof as large as a town',
      changed('b-long-hall', ['roof.length', '20000 ft']),
      'roof: measures 3,002,603 square feet; at most 2,000,000 are taken',
    ],
    [
      'rows of fasteners beyond counting',
      changed(
        'c-farm',
        ['roof', { form: 'gable', length: '1400 ft', width: '1000 ft', slope: '1:12', eaveHeight: '20 ft' }],
        ['support.spacing', '4 in'],
        ['details', {}],
      ),
      'support.spacing: 1,404,853 square feet with a fastener every 9 by 4 in would take about 5,619,411;',
    ],
    ...(
      [
        ['a-boathouse', 'panel.coverage', '3 in', 'at least 4 in'],
        ['c-farm', 'panel.ribSpacing', '0.5 in', 'at least 1 in'],
        ['b-long-hall', 'panel.longestSheet', '2 ft', 'at least 48 in'],
        ['b-long-hall', 'support.spacing', '1 in', 'at least 3 in'],
        ['a-boathouse', 'details.gutter.bracketSpacing', '1 in', 'at least 3 in'],
        ['d-reroof', 'spacingCap', '0.5 in', 'at least 1 in'],
        ['b-long-hall', 'panel.upliftTest.rows.0.spacing', '0.5 in', 'at least 1 in'],
        ['c-farm', 'roof.wing.width', '6 in', 'at least 12 in'],
        ['c-farm', 'roof.wing.length', '6 in', 'at least 12 in'],
        ['a-boathouse', 'roof.length', '6 in', 'at least 12 in'],
        ['a-boathouse', 'roof.width', '6 in', 'at least 12 in'],
        ['a-boathouse', 'roof.eaveHeight', '6 in', 'at least 12 in'],
      ] as const
    ).map(([name, path, text, bound]): [string, unknown, string] => [
      `${path} of ${text}`,
      changed(name, [path, text]),
      `${path}: "${text}" is out of range: it must be ${bound}`,
    ]),
    [
      'a slope that is nearly none',
      changed('a-boathouse', ['roof.slope', '0.05:12']),
      'roof.slope: a roof with no slope does not drain; give at least 0.1:12',
    ],
  ];
  for (const [name, document, message] of rows)
    test(name, () => {
      const lines = linesOf(document);
      expect(lines).toHaveLength(1);
      expect(lines[0]?.slice(0, message.length)).toBe(message);
    });
});

describe('the published schemas', () => {
  const ajv = new Ajv({ strict: true, allowUnionTypes: true, validateFormats: false });
  const checks = Object.fromEntries(schemaNames.map((name) => [name, ajv.compile(jsonSchema(name))]));
  test('have names of their own', () =>
    expect(schemaNames.map((name) => (jsonSchema(name) as { $id: string }).$id)).toEqual([
      'urn:deckbite:job:1',
      'urn:deckbite:shelf:1',
      'urn:deckbite:result:1',
    ]));
  for (const name of demos)
    test(`${name} is valid`, () => {
      checks.job?.(read(name));
      expect(checks.job?.errors ?? []).toEqual([]);
    });
  test('the shelf is valid', () => {
    checks.shelf?.(shelf);
    expect(checks.shelf?.errors ?? []).toEqual([]);
  });

  const broken: [Demo, string, unknown][] = [
    ['a-boathouse', 'wind.speed', '141'],
    ['a-boathouse', 'wind.speed', 141],
    ['a-boathouse', 'wind.speed', '141 psf'],
    ['a-boathouse', 'wind.speed', 'fast'],
    ['a-boathouse', 'roof.slope', 'steep'],
    ['a-boathouse', 'roof.slope', '5/12'],
    ['a-boathouse', 'roof.slope', '0:12'],
    ['a-boathouse', 'roof.length', '-5 ft'],
    ['a-boathouse', 'roof.length', '5 psi'],
    ['a-boathouse', 'roof.length', '0 ft'],
    ['a-boathouse', 'roof.length', '80 ft 6'],
    ['a-boathouse', 'roof.overhang.eave', '-1 in'],
    ['a-boathouse', 'roof.eaveHeight', { assume: '14', because: 'a guess' }],
    ['a-boathouse', 'roof.eaveHeight', { ask: 5 }],
    ['a-boathouse', 'roof.form', 'dome'],
    ['a-boathouse', 'panel.coverage', '1/0 in'],
    ['a-boathouse', 'panel.coverage', null],
    ['a-boathouse', 'panel.metal', 'paper'],
    ['a-boathouse', 'support.kind', undefined],
    ['a-boathouse', 'support.specificGravity', '0.42'],
    ['a-boathouse', 'details.pipes.0.count', 1.5],
    ['a-boathouse', 'date', 'tomorrow'],
    ['a-boathouse', 'revision', 'a'],
    ['a-boathouse', 'schema', 'deckbite/job/2'],
    ['a-boathouse', 'name', ''],
    ['a-boathouse', 'colour', 'red'],
    ['a-boathouse', 'waste', { trims: 0.1 }],
    ['b-long-hall', 'panel.upliftTest.rows', []],
    ['b-long-hall', 'panel.upliftTest.rows.0.ultimate', '190 in'],
    ['c-farm', 'roof.openings.0.outline', [['1 ft', '1 ft']]],
    ['c-farm', 'panel.ribHeight', '3/4 in'],
    ['d-reroof', 'wind.zones.1.uplift', '24 psf'],
    ['d-reroof', 'wind.zones.1.uplift', '-24'],
    ['d-reroof', 'insulation.compressiveStrength', '20 psi 3'],
    ['d-reroof', 'roofSnow', '-30 psf'],
  ];
  for (const [name, path, value] of broken)
    test(`${path} ${JSON.stringify(value) ?? 'left out'} is refused by schema and reader alike`, () => {
      const document = changed(name, [path, value]);
      expect([checks.job?.(document), readJob(document).ok]).toEqual([false, false]);
    });

  test('what is left out is filled in as the schema says', () => {
    const told = readJob(
      changed('b-long-hall', ['ends', { first: '3 in', last: '3 in' }], ['details.trimGirth', '8 in']),
    );
    const left = readJob(read('b-long-hall'));
    expect(left.ok && left.value).toEqual(told.ok && told.value);
  });
});

describe('any field, any value', () => {
  const values: readonly unknown[] = [
    ...[
      undefined,
      null,
      true,
      0,
      -1,
      1e300,
      '',
      'NaN',
      'NaN in',
      '-5 ft',
      '0 in',
      '1e308 in',
      '5 psi',
      '141',
    ],
    ...['steep', '89.9 deg', '0.1:12', '1 in', '3 in', '99 ft', '20000 ft', '1/0 in', [], {}, [null]],
    ...[{ ask: 'what is it?' }, { assume: null, because: 'none' }, { ask: 5 }, '__proto__', 'constructor'],
    ...['<script>', '\u0000\u001b[31m', 'x'.repeat(5000), '\u{1f4a5}', '1000000 psf'],
  ];
  const pathsOf = (value: Json, path: Path = []): Path[] =>
    value === null || typeof value !== 'object'
      ? [path]
      : [path, ...Object.entries(value).flatMap(([key, part]) => pathsOf(part, [...path, key]))];
  const places = demos.flatMap((name) =>
    pathsOf(read(name))
      .filter((path) => path.length > 0)
      .map((path) => ({ name, path })),
  );
  const jargon = /\b(expected|received|undefined|Invalid|regex|object Object)\b|[<>]=|=>/;

  test('faults are plain sentences with a path, and answers count every line', () => {
    const seen = { faults: 0, answers: 0 };
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.constantFrom(...values), ({ name, path }, value) => {
        const found = solved(changed(name, [path, value]));
        if (found.ok) {
          seen.answers += 1;
          const { holds, fallsShort, unproven } = found.value.answer.count;
          expect(holds + fallsShort + unproven).toBeGreaterThan(0);
          expect(Number.isFinite(found.value.answer.takeoff.total)).toBe(true);
          return;
        }
        seen.faults += 1;
        expect(found.faults.length).toBeGreaterThan(0);
        for (const fault of found.faults) {
          expect(fault.path).not.toBe('');
          expect(fault.path.length).toBeLessThan(200);
          expect(fault.message).toMatch(/^.{8,400}$/su);
          expect(fault.message).not.toMatch(jargon);
        }
      }),
      { numRuns: 300, seed: 20261125 },
    );
    expect(seen.faults).toBeGreaterThan(150);
    expect(seen.answers).toBeGreaterThan(20);
  });

  test('a document that is none', () => {
    for (const document of [null, undefined, 5, 'job', [], [[]], true, Number.NaN])
      expect(faultsOf(document).length).toBeGreaterThan(0);
  });
});
