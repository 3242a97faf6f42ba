import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

// The order is written here a second time on purpose: a layer moved in the rules alone fails.
const order = [
  'quantities',
  'trace',
  'standards',
  'materials',
  'shelf',
  'job',
  'roof',
  'site',
  'connections',
  'links',
  'choose',
  'layout',
  'takeoff',
  'answer',
  'papers',
] as const;

interface Violation {
  readonly from: string;
  readonly to: string;
  readonly rule: { readonly name: string };
}

const tree = mkdtempSync(join(tmpdir(), 'deckbite-layers-'));
let violations: readonly Violation[] = [];

function write(path: string, text: string): void {
  mkdirSync(dirname(join(tree, path)), { recursive: true });
  writeFileSync(join(tree, path), text);
}

function fakePackage(name: string): void {
  write(`node_modules/${name}/package.json`, JSON.stringify({ name, version: '1.0.0', main: 'main.js' }));
  write(`node_modules/${name}/main.js`, 'module.exports = 1;');
}

/** One file per layer, importing every other layer; so each pair occurs in both directions. */
function writeLayers(): void {
  for (const layer of order) {
    const others = order.filter((other) => other !== layer);
    write(`src/${layer}/leaf.ts`, `import '../quantities/floor.ts';\nexport const ${layer} = 1;`);
    write(`src/${layer}/greedy.ts`, others.map((other) => `import '../${other}/leaf.ts';`).join('\n'));
  }
  write('src/quantities/floor.ts', 'export const floor = 0;');
}

function writeOtherFaults(): void {
  const packages = ['pdfkit', 'exceljs', 'clipper2-ts'];
  packages.forEach(fakePackage);
  const dependencies = Object.fromEntries(packages.map((name) => [name, '1.0.0']));
  write('package.json', JSON.stringify({ name: 'tree', type: 'module', dependencies }));
  write('tsconfig.json', '{}');
  write('src/choose/reads-a-file.ts', "import 'node:fs';");
  write('src/papers/reads-a-font.ts', "import 'node:fs';");
  write('src/choose/draws.ts', "import 'pdfkit';\nimport 'exceljs';\nimport 'clipper2-ts';");
  write('src/papers/draws.ts', "import 'pdfkit';\nimport 'exceljs';");
  write('src/roof/cuts.ts', "import 'clipper2-ts';");
  write('src/roof/ring-a.ts', "import './ring-b.ts';");
  write('src/roof/ring-b.ts', "import type { A } from './ring-a.ts';\nexport type B = A;");
  write('src/roof/index.ts', "export * from './cuts.ts';");
  write('src/extras/new-layer.ts', "import '../quantities/leaf.ts';");
  write(
    'apps/cli/types.ts',
    "import type { links } from '../../src/links/leaf.ts';\nexport type L = typeof links;",
  );
  write('apps/cli/calls.ts', "import '../../src/links/leaf.ts';\nimport '../../src/answer/leaf.ts';");
  write('src/answer/shows.ts', "import '../../apps/cli/types.ts';");
}

beforeAll(() => {
  writeLayers();
  writeOtherFaults();
  const root = resolve(import.meta.dirname, '..');
  const program = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const config = join(root, '.dependency-cruiser.cjs');
  const args = [program, '--config', config, '--output-type', 'json', 'src', 'apps'];
  const run = spawnSync(process.execPath, args, { cwd: tree, encoding: 'utf8' });
  violations = JSON.parse(run.stdout).summary.violations;
});

afterAll(() => rmSync(tree, { recursive: true }));

/** What the rules say of one file, as "rule > imported file". */
function faultsOf(file: string): string[] {
  const own = violations.filter((found) => found.from === file);
  return own.map((found) => `${found.rule.name} > ${found.to}`).sort();
}

describe('the layer rules', () => {
  for (const [index, layer] of order.entries()) {
    test(`${layer} may import nothing that comes after it, and all that comes before`, () => {
      const later = order
        .slice(index + 1)
        .map((other) => `${layer}-imports-only-from-before-it > src/${other}/leaf.ts`);
      expect(faultsOf(`src/${layer}/greedy.ts`)).toEqual(later.sort());
    });
  }

  test('only papers may use a module of Node', () => {
    expect(faultsOf('src/choose/reads-a-file.ts')).toEqual(['engine-without-node > fs']);
    expect(faultsOf('src/papers/reads-a-font.ts')).toEqual([]);
  });

  test('a wrapped package is used in its own layer only', () => {
    expect(faultsOf('src/choose/draws.ts')).toEqual([
      'clipper2-ts-only-in-roof > node_modules/clipper2-ts/main.js',
      'pdfkit-only-in-papers > node_modules/exceljs/main.js',
      'pdfkit-only-in-papers > node_modules/pdfkit/main.js',
    ]);
    expect(faultsOf('src/papers/draws.ts')).toEqual([]);
    expect(faultsOf('src/roof/cuts.ts')).toEqual([]);
  });

  test('a ring is found, and named once, even when one side imports only types', () => {
    const rings = violations.filter((found) => found.rule.name === 'no-cycles');
    expect(rings.map((found) => found.from)).toEqual(['src/roof/ring-a.ts']);
  });

  test('an inner index.ts and a folder that is no layer are refused', () => {
    expect(faultsOf('src/roof/index.ts')).toEqual(['no-barrels-of-own > src/roof/cuts.ts']);
    expect(faultsOf('src/extras/new-layer.ts')).toEqual([
      'src-has-only-known-layers > src/quantities/leaf.ts',
    ]);
  });

  test('apps call answer and take types from below; src knows no app', () => {
    expect(faultsOf('apps/cli/types.ts')).toEqual([]);
    expect(faultsOf('apps/cli/calls.ts')).toEqual(['apps-only-call-answer-and-papers > src/links/leaf.ts']);
    expect(faultsOf('src/answer/shows.ts')).toEqual([
      'src-imports-only-src-and-packages > apps/cli/types.ts',
    ]);
  });
});
