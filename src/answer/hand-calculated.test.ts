/**
 * Schedule lines worked by hand from the standards, from the job to the ratio. Each number is written out, so that a
 * wrong area, prying, factor or level anywhere on the way shows.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { LinkName } from '../links/verdict.ts';
import type { Answer } from './answer.ts';
import { exitCodeOf } from './exit-code.ts';
import { solveJob } from './solve-job.ts';

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../demo/${name}.json`, import.meta.url), 'utf8'));
const answerOf = (document: unknown): Answer => {
  const solved = solveJob(document, read('shelf'));
  if (!solved.ok) throw new Error(JSON.stringify(solved.faults));
  return solved.value.answer;
};
function lineOf(answer: Answer, connection: string, zone: string) {
  const choice = answer.choices.find((one) => one.connection.id === connection);
  const line = choice?.lines.find((one) => answer.field.zones[one.zone]?.label === zone);
  if (!choice || !line) throw new Error(`no ${connection} in zone ${zone}`);
  const link = (name: LinkName) => line.checks.find((one) => one.capacity.link === name);
  return { choice, line, link };
}

describe('long hall, panel clips, zone 1 (ASCE 7-16, S100-16, ASD)', () => {
  const { choice, line, link } = lineOf(answerOf(read('b-long-hall')), 'panel clips', '1');
  // Kz: exposure C between 25 ft (0.94) and 30 ft (0.98) at the eave height of 26 ft: 0.948. Ke = exp(-0.0000362 · 600).
  const qh = 0.00256 * 0.948 * 0.85 * Math.exp(-0.0000362 * 600) * 120 ** 2;
  // A = 24 in · 60 in / 144 = 10 ft² a clip, 5 ft² a screw: GCp = -1.7 for both, GCpi 0.18.
  const p = 0.6 * qh * (1.7 + 0.18);
  test('pressure', () => expect(line.fastenerPressure_psf).toBeCloseTo(p, 6));
  test('areas of the clip and of one of its two screws', () =>
    expect([line.place_ft2, line.fastener_ft2]).toEqual([10, 5]));
  test('load of a screw with prying (0.45 + 1.4) / 1.4', () =>
    expect(line.fastenerLoad_lbf).toBeCloseTo((p * 5 * 1.85) / 1.4, 6));
  test('pull-out of a number 12 from 54 mil, 65 ksi: 0.85 · 0.0566 · 0.216 · 65000 / 3', () => {
    expect(choice.item?.designation).toMatch(/^12-/);
    expect(link('pull-out')?.capacity.value).toBeCloseTo((0.85 * 0.0566 * 0.216 * 65_000) / 3, 6);
    expect(line.ratio).toBeCloseTo((p * 5 * 1.85) / 1.4 / ((0.85 * 0.0566 * 0.216 * 65_000) / 3), 6);
  });
  test('pull-over of the clip base counts half: 0.5 · 1.5 · 0.0713 · 0.46 · 65000 / 3', () =>
    expect(link('pull-over')?.capacity.value).toBeCloseTo((0.5 * 1.5 * 0.0713 * 0.46 * 65_000) / 3, 6));
  test('clip: 1480 / 2.5 against its own load without prying', () => {
    expect(link('clip')?.capacity.value).toBeCloseTo(592, 9);
    expect(link('clip')?.demand).toBeCloseTo(p * 10, 6);
  });
  test('panel: 72 psf tested at 60 in, safety factor 2', () =>
    expect(link('panel system')?.capacity.value).toBeCloseTo(36, 9));
});

test('a shortfall on purlins names the widest chalkable spacing that would do: 225 lb at 286 lb a 60 in, so 36; at 389 lb 30', () => {
  const answer = answerOf(read('b-long-hall'));
  expect(['2', '3'].map((zone) => lineOf(answer, 'panel clips', zone).line.holdsAt_in)).toEqual([36, 30]);
});

describe('boathouse, panel clips, zone 3 on the roof (ASCE 7-22, NDS, ASD)', () => {
  const { line, link } = lineOf(answerOf(read('a-boathouse')), 'panel clips', '3');
  // Mean height: eave 14 ft, ridge 23 ft of run up at 5:12 (overhang included): h = 14 + 23 · 5/12 / 2 = 18.79 ft.
  const h = 14 + (23 * 5) / 24;
  // Exposure D between 15 ft (1.03) and 20 ft (1.08).
  const Kz = 1.03 + ((h - 15) / 5) * 0.05;
  const qh = 0.00256 * Kz * Math.exp(-0.0000362 * 10) * 141 ** 2;
  // Hip over 20 to 27 degrees (22.6): zone 3 = -2.0 up to 10 ft²; Kd multiplies both terms in 7-22.
  const p = 0.6 * qh * 0.85 * (2 + 0.18);
  test('pressure', () => expect(line.fastenerPressure_psf).toBeCloseTo(p, 6));
  test('20 in along a 16 in seam: 16 · 20 / 144 ft² a clip', () =>
    expect(line.place_ft2).toBeCloseTo(320 / 144, 9));
  test('withdrawal of a number 12 from 19/32 in plywood: 2850 · 0.42² · 0.216 · 1.6 · 0.59375', () =>
    expect(link('withdrawal')?.capacity.value).toBeCloseTo(2850 * 0.42 ** 2 * 0.216 * 1.6 * 0.59375, 6));
  test('ratio of the thread', () => {
    const load = (p * (160 / 144) * (0.45 + 0.85)) / 0.85;
    expect(link('withdrawal')?.ratio).toBeCloseTo(load / (2850 * 0.42 ** 2 * 0.216 * 1.6 * 0.59375), 6);
  });
});

describe('barn, panel screws (ASCE 7-16, NDS, S100-16)', () => {
  const answer = answerOf(read('c-farm'));
  const { line, link } = lineOf(answer, 'panel screws', '3r');
  test('9 in of rib spacing at 24 in: 1.5 ft²', () => expect(line.fastener_ft2).toBeCloseTo(1.5, 9));
  test('zone 3r over 7 to 20 degrees is -3.6 at small areas', () => {
    // h: eave 14 ft, ridge 25 ft of run (overhang included) at 4:12: 14 + 25/3/2 = 18.17 ft, exposure C between 0.85 and 0.90.
    const Kz = 0.85 + ((14 + 25 / 6 - 15) / 5) * 0.05;
    expect(line.fastenerPressure_psf).toBeCloseTo(0.6 * 0.00256 * Kz * 0.85 * 107 ** 2 * (3.6 + 0.18), 6);
  });
  test('overhang zones take the overhang curves', () => {
    const Kz = 0.85 + ((14 + 25 / 6 - 15) / 5) * 0.05;
    expect(lineOf(answer, 'panel screws', '3r overhang').line.fastenerPressure_psf).toBeCloseTo(
      0.6 * 0.00256 * Kz * 0.85 * 107 ** 2 * (4.7 + 0.18),
      6,
    );
  });
  test('pull-over of 29 gauge grade 80 beside a rib, half: 0.5 · 1.5 · 0.0135 · d′w · 61500 / 3', () => {
    const dw = Math.min(0.384 + 2 * 0.04 + 0.0135, 0.5, 0.75);
    expect(link('pull-over')?.capacity.value).toBeCloseTo((0.5 * 1.5 * 0.0135 * dw * 61_500) / 3, 6);
  });
});

describe('re-roof with the engineer’s pressures', () => {
  const reroof = read('d-reroof');
  const at = (changes: object, zone = '1') =>
    lineOf(answerOf({ ...reroof, ...changes }), 'panel clips', zone).line.fastenerPressure_psf;
  test('ASD pressures are taken as they are', () => expect(at({})).toBeCloseTo(24, 9));
  test('strength pressures count 0.6 in ASD', () =>
    expect(at({ wind: { ...reroof.wind, level: 'strength' } })).toBeCloseTo(14.4, 9));
  test('strength pressures count whole in LRFD', () =>
    expect(
      at({ wind: { ...reroof.wind, level: 'strength' }, basis: { ...reroof.basis, method: 'LRFD' } }),
    ).toBeCloseTo(24, 9));
  test('ASD pressures are no load for LRFD: unproven', () =>
    expect(at({ basis: { ...reroof.basis, method: 'LRFD' } })).toBeUndefined());
  test('a zone without a pressure is unproven', () => {
    const { '3': _, ...zones } = reroof.wind.zones;
    expect(at({ wind: { ...reroof.wind, zones } }, '3')).toBeUndefined();
  });
});

describe('site', () => {
  const hall = read('b-long-hall');
  test('a parapet of 3 ft all round takes zone 3 as zone 2, one of 2 ft does not', () => {
    const pressure = (height: string) =>
      lineOf(answerOf({ ...hall, wind: { ...hall.wind, parapetAllRound: height } }), 'panel clips', '3').line
        .fastenerPressure_psf ?? 0;
    expect(pressure('36 in') / pressure('24 in')).toBeCloseTo((2.3 + 0.18) / (3.2 + 0.18), 9);
  });
  test('one zone over planes of two figures takes the severer', () => {
    const plane = (id: string, x: number, slope: string, windShape: string) => ({
      id,
      outline: [
        [`${x} ft`, '0 ft'],
        [`${x + 40} ft`, '0 ft'],
        [`${x + 40} ft`, '30 ft'],
        [`${x} ft`, '30 ft'],
      ],
      edges: ['eave', 'rake', 'ridge', 'rake'],
      slope,
      windShape,
    });
    const roof = (planes: object[]) => ({
      ...hall,
      basis: { codeYear: 'IBC 2024' },
      roof: { form: 'planes', eaveHeight: '14 ft', highestPoint: '24 ft', planes },
      details: {},
    });
    const one = (planes: object[]) =>
      lineOf(answerOf(roof(planes)), 'panel clips', '1').line.fastenerPressure_psf ?? 0;
    const gable = plane('a', 0, '4:12', 'gable');
    const hip = plane('b', 100, '4:12', 'hip');
    expect(one([gable])).toBeGreaterThan(one([hip]));
    expect(one([gable, hip])).toBeCloseTo(one([gable]), 9);
    expect(one([hip, gable])).toBeCloseTo(one([gable]), 9);
  });
});

test('an answer in which nothing was checked does not leave 0', () => {
  expect(exitCodeOf({ holds: 0, fallsShort: 0, unproven: 0 })).toBe(2);
  expect(exitCodeOf({ holds: 3, fallsShort: 0, unproven: 0 })).toBe(0);
  expect(exitCodeOf({ holds: 3, fallsShort: 0, unproven: 1 })).toBe(2);
  expect(exitCodeOf({ holds: 3, fallsShort: 1, unproven: 1 })).toBe(1);
});

describe('caps and waste', () => {
  const boathouse = read('a-boathouse');
  test('clips on a deck stand at most 24 in apart however calm it is, and the cap is named', () => {
    const { line } = lineOf(
      answerOf({ ...boathouse, wind: { ...boathouse.wind, speed: '70 mph' } }),
      'panel clips',
      '1',
    );
    expect([line.spacing_in, line.setBy]).toEqual([24, 'cap']);
  });
  test("an owner's cap wider than the usual one changes nothing", () => {
    const { line } = lineOf(
      answerOf({ ...boathouse, spacingCap: '30 in', wind: { ...boathouse.wind, speed: '70 mph' } }),
      'panel clips',
      '1',
    );
    expect([line.spacing_in, line.setBy]).toEqual([24, 'cap']);
  });
  test("an owner's cap comes after the calculation", () => {
    const { line } = lineOf(answerOf({ ...boathouse, spacingCap: '10 in' }), 'panel clips', '1');
    expect([line.spacing_in, line.setBy]).toEqual([10, 'cap']);
  });
  test('waste and packs: pieces with waste, rounded up, then whole packs', () => {
    for (const waste of [0, 0.1])
      for (const line of answerOf({
        ...boathouse,
        waste: { fasteners: waste },
      }).takeoff.lines.filter(({ kind }) => kind !== 'bit')) {
        expect(line.withWaste).toBe(Math.ceil(line.count * (1 + waste) - 1e-9));
        expect(line.ordered).toBe(Math.ceil(line.withWaste / line.pack) * line.pack);
      }
  });
  test('a bit for every thousand screws of its drive, at least two', () => {
    const { takeoff } = answerOf(read('b-long-hall'));
    for (const bit of takeoff.lines.filter(({ kind }) => kind === 'bit')) {
      const screws = takeoff.lines
        .filter(
          ({ kind, uses }) =>
            kind === 'screw' && uses.some((use) => bit.uses.some((own) => own.connection === use.connection)),
        )
        .reduce((sum, line) => sum + line.count, 0);
      expect(bit.count).toBe(Math.max(2, Math.ceil(screws / 1000)));
    }
  });
  test('a sound item goes before a cheaper one that is less proven', () => {
    const shelf = read('shelf');
    const cheap = shelf.items.find((one: { id: string }) => one.id === 'CW12-125S');
    const { tension: _, ...bare } = cheap;
    shelf.items.push({ ...bare, id: 'AA-CHEAP', price: 0.001 });
    const solved = solveJob(boathouse, shelf);
    expect(solved.ok && solved.value.answer.choices[0]?.item?.id).toBe('CW12-125S');
  });
});

test('a pipe on a plane that is not there is a fault', () => {
  const job = read('a-boathouse');
  const solved = solveJob({ ...job, details: { pipes: [{ plane: 'up', diameter: '4 in' }] } }, read('shelf'));
  expect(solved.ok ? '' : solved.faults[0]?.path).toBe('details.pipes.0.plane');
});
