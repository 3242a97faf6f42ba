import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { solveJob } from '../../src/answer/solve-job.ts';
import { deckbite, demo, temporary } from './run.ts';

const read = (name: string) => JSON.parse(readFileSync(demo(name), 'utf8'));
const papers = [
  'crew-sheet.pdf',
  'layout.dxf',
  'layout.svg',
  'order.csv',
  'order.xlsx',
  'result.json',
  'submittal.pdf',
];

describe('exit codes', () => {
  test('0 when all hold', () => expect(deckbite('solve', demo('c-farm')).code).toBe(0));
  test('1 when something falls short, and what is said plainly', () => {
    const { code, out } = deckbite('solve', demo('b-long-hall'));
    expect(code).toBe(1);
    expect(out).toMatch(/Falls short:\n {2}panel clips, zone 2: pull-out carries \d+ of \d+ lb/);
  });
  test('2 when nothing falls short but something is unproven', () => {
    const { code, out } = deckbite('solve', demo('a-boathouse'));
    expect(code).toBe(2);
    expect(out).toContain('To ask:');
  });
});

describe('--json', () => {
  for (const name of ['a-boathouse', 'c-farm'])
    test(`${name}: the program says what the engine says`, () => {
      const { out } = deckbite('solve', demo(name), '--json');
      const result = JSON.parse(out);
      const solved = solveJob(read(name), read('shelf'));
      expect(result.count).toEqual(solved.ok ? solved.value.answer.count : 'faults');
      expect(result.takeoff.total).toBe(solved.ok ? solved.value.answer.takeoff.total : 'faults');
      expect(result.layout.length).toBeGreaterThan(0);
    });
});

describe('papers', () => {
  test('a full set is written, and nothing else', () => {
    const folder = join(temporary(), 'new', 'a');
    expect(deckbite('solve', demo('a-boathouse'), '--out', folder).code).toBe(2);
    expect(readdirSync(folder).sort()).toEqual(papers);
  });

  test('a bad job writes nothing and leaves an old set as it was', () => {
    const folder = temporary();
    const job = join(folder, 'job.json');
    writeFileSync(join(folder, 'order.csv'), 'old order');
    writeFileSync(job, JSON.stringify({ ...read('a-boathouse'), panel: {} }));
    const { code, err } = deckbite('solve', job, '--out', folder);
    expect(code).toBe(3);
    expect(err).toContain('panel.');
    expect(readdirSync(folder).sort()).toEqual(['job.json', 'order.csv']);
    expect(readFileSync(join(folder, 'order.csv'), 'utf8')).toBe('old order');
  });

  test('a folder that cannot be written leaves no half set', () => {
    const folder = temporary();
    mkdirSync(join(folder, 'layout.svg'));
    const { code } = deckbite('solve', demo('d-reroof'), '--out', folder);
    expect(code).not.toBe(0);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});

describe('bad input leaves 3 with one message a fault', () => {
  const folder = temporary();
  const file = (name: string, text: string): string => {
    const path = join(folder, name);
    writeFileSync(path, text);
    return path;
  };
  const whole = readFileSync(demo('a-boathouse'), 'utf8');
  const rows: [string, () => string[], string][] = [
    ['no job', () => ['solve'], 'solve wants a job document'],
    ['a file that is not there', () => ['solve', join(folder, 'none.json')], 'is not there; check the path'],
    ['a folder', () => ['solve', folder], 'is a folder'],
    ['a truncated file', () => ['solve', file('cut.json', whole.slice(0, 700))], 'is not complete JSON'],
    ['an empty file', () => ['solve', file('empty.json', '')], 'is not complete JSON'],
    ['a 50 MB file', () => ['solve', file('large.json', `{"note":"${'x'.repeat(50_000_000)}"}`)], 'is 50 MB'],
    [
      'a job from a newer program',
      () => ['solve', file('newer.json', whole.replace('deckbite/job/1', 'deckbite/job/7'))],
      'use a newer program',
    ],
    [
      'deep nesting',
      () => ['solve', file('deep.json', `${'['.repeat(50_000)}${']'.repeat(50_000)}`)],
      'must be an object',
    ],
    [
      'a shelf that is a job',
      () => ['solve', demo('a-boathouse'), '--shelf', demo('b-long-hall')],
      'shelf: schema',
    ],
    ['an unknown option', () => ['solve', demo('a-boathouse'), '--fast'], "Unknown option '--fast'"],
    ['an unknown command', () => ['shine'], 'is no command of deckbite'],
    ['two jobs', () => ['solve', demo('a-boathouse'), demo('b-long-hall')], 'one job at a time'],
  ];
  for (const [name, args, message] of rows)
    test(name, () => {
      const { code, err, out } = deckbite(...args());
      expect(err).toContain(message);
      expect([code, out]).toEqual([3, '']);
    });

  test('control characters of a document never reach the terminal', () => {
    const job = read('a-boathouse');
    job.panel.clip = '\u001b[2J\u0007CL';
    const { err } = deckbite('solve', file('escape.json', JSON.stringify(job)));
    // biome-ignore lint/suspicious/noControlCharactersInRegex: their absence is the point
    expect(err).not.toMatch(/[\u0007\u001b]/);
  });
});

test('a pipe gets no colour', () => {
  expect(deckbite('solve', demo('c-farm')).out).not.toContain('\u001b');
});

test('demo solves all jobs and writes all their papers', () => {
  const folder = join(temporary(), 'out');
  const { code, out } = deckbite('demo', '--out', folder);
  expect(code).toBe(0);
  for (const name of ['a-boathouse', 'b-long-hall', 'c-farm', 'd-reroof']) {
    expect(out).toContain(`papers in ${join(folder, name)}`);
    for (const paper of papers) expect(existsSync(join(folder, name, paper)), `${name}/${paper}`).toBe(true);
  }
});
