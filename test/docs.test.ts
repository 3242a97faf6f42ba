import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const pages = [
  'README.md',
  'CONTRIBUTING.md',
  'CHANGELOG.md',
  ...readdirSync(join(root, 'docs'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .map((name) => join('docs', name)),
];

describe('documents', () => {
  test('there are some', () => expect(pages.length).toBeGreaterThan(10));
  for (const page of pages)
    test(`${page}: every link to a file leads somewhere`, () => {
      const text = readFileSync(join(root, page), 'utf8');
      const links = [...text.matchAll(/\]\(([^)\s]+)\)/g)]
        .map((match) => match[1] as string)
        .filter((link) => !/^(https?:|#|mailto:)/.test(link));
      const dead = links.filter(
        (link) => !existsSync(join(root, dirname(page), link.split('#')[0] as string)),
      );
      expect(dead).toEqual([]);
    });
});
