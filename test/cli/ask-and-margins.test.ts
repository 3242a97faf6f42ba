import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askOf } from '../../src/answer/ask/ask.ts';
import { marginsOf } from '../../src/answer/margins/margins.ts';
import { solveJob } from '../../src/answer/solve-job.ts';
import { deckbite, demo, temporary } from './run.ts';

const read = (name: string) => JSON.parse(readFileSync(demo(name), 'utf8'));
const overJson = (value: unknown) => JSON.parse(JSON.stringify(value));

describe('deckbite ask', () => {
  test('leaves 2 while questions remain, the most decisive first and in both languages', () => {
    const { code, out } = deckbite('ask', demo('a-boathouse'));
    expect(code).toBe(2);
    expect(out).toMatch(/1\. How is the deck nailed.*\n {3}¿Cómo está clavada la cubierta/);
    expect(out).toMatch(/Need not be asked.*\n {3}support\.specificGravity/);
  });

  test('leaves 0 when nothing needs asking', () => {
    const hall = read('b-long-hall');
    const path = join(temporary(), 'job.json');
    writeFileSync(
      path,
      JSON.stringify({ ...hall, details: { ...hall.details, edgeMember: 'like the supports' } }),
    );
    const { code, out } = deckbite('ask', path, '--shelf', demo('shelf'));
    expect([code, out.includes('Nothing needs to be asked.')]).toEqual([0, true]);
  });

  test('--json says what the engine says', () => {
    const { out } = deckbite('ask', demo('d-reroof'), '--json');
    const report = askOf(read('d-reroof'), read('shelf'));
    expect(JSON.parse(out)).toEqual(report.ok && overJson(report.value));
  });
});

describe('deckbite margins', () => {
  test('tells for each line between what it holds, and leaves 0 also where something falls short', () => {
    const { code, out } = deckbite('margins', demo('b-long-hall'));
    expect(code).toBe(0);
    expect(out).toMatch(/zone 1, 60 in: holds \(pull-out\)\n {4}wind speed +up to 122 mph \(pull-out\)/);
    expect(out).toMatch(/zone 2, 60 in: falls short \(pull-out\)\n {4}wind speed +would hold at 106 mph/);
  });

  test('speaks in the units of the job', () => {
    expect(deckbite('margins', demo('d-reroof')).out).toMatch(/spacing +up to 827 mm/);
  });

  test('--json says what the engine says', () => {
    const { out } = deckbite('margins', demo('c-farm'), '--json');
    const solved = solveJob(read('c-farm'), read('shelf'));
    expect(JSON.parse(out)).toEqual(solved.ok && overJson(marginsOf(solved.value)));
  });
});

describe.each(['ask', 'margins'])('deckbite %s with bad input', (command) => {
  test('leaves 3 with the field of every fault', () => {
    const path = join(temporary(), 'job.json');
    writeFileSync(path, JSON.stringify({ ...read('c-farm'), wind: { by: 'standard' } }));
    const { code, err } = deckbite(command, path);
    expect([code, err.includes('wind.speed')]).toEqual([3, true]);
  });

  test('leaves 3 without a job, with two, with an unknown option and with no such file', () => {
    const calls = [[], [demo('c-farm'), demo('c-farm')], [demo('c-farm'), '--fast'], ['/no/such/job.json']];
    for (const call of calls) {
      const { code, err } = deckbite(command, ...call);
      expect([code, err.length > 10]).toEqual([3, true]);
    }
  });
});
