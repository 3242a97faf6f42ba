import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { breakdownText } from './breakdown.ts';

const thrownBy = (act: () => unknown): unknown => {
  try {
    act();
  } catch (error) {
    return error;
  }
  throw new Error('nothing was thrown');
};

test('a folder below a file is a matter of the file system, with its path', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'deckbite-')), 'file');
  writeFileSync(file, '');
  const below = join(file, 'out');
  const text = breakdownText(thrownBy(() => mkdirSync(below, { recursive: true })));
  expect(text).toMatch(/: a file stands where a folder is needed \((ENOTDIR|EEXIST)\)/);
  expect(text).toContain(file);
  expect(breakdownText(thrownBy(() => readFileSync(tmpdir())))).toContain('(EISDIR)');
});

test('anything else is a fault of the program, in one line', () => {
  const text = breakdownText(new TypeError('x is not a function\n    at somewhere'));
  expect(text).toBe(
    'A fault of this program, not of your documents: x is not a function; no verdict was reached, please report it with the job that shows it.',
  );
  expect(breakdownText('a bare word')).toContain('a bare word');
});
