import DxfParser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import type { Answer } from '../../answer/answer.ts';
import { FastenerColumns } from '../../layout/fastener-set.ts';
import { demos, hostileName, solvedAsIs, solvedDemo } from '../read-back/solved-demo.ts';
import { DxfNames } from './dxf-writer.ts';
import { labelPlace } from './label-point.ts';
import { layoutDxf } from './layout-dxf.ts';
import { layoutSvg } from './layout-svg.ts';

/** Fasteners by connection, in the order of the layout. */
function counts(answer: Answer): Map<string, number> {
  const found = new Map<string, number>();
  for (const set of answer.layout) found.set(set.connection, (found.get(set.connection) ?? 0) + set.count);
  return found;
}

/** The boathouse with one connection of so many fasteners. */
function withFasteners(count: number): Answer {
  const { answer } = solvedAsIs('a-boathouse');
  const columns = new FastenerColumns();
  for (let i = 0; i < count; i++) columns.add((i % 1000) * 1.013, Math.floor(i / 1000) * 5.37, 0, 1, 0);
  return { ...answer, layout: [columns.done('panel clips', 'south')] };
}

describe('layout.dxf', () => {
  for (const demo of demos)
    test(`${demo}: an independent reader finds every fastener on its layer`, () => {
      const { answer } = solvedAsIs(demo);
      const drawing = new DxfParser().parseSync(layoutDxf(answer));
      const inserts = drawing?.entities.filter(({ type }) => type === 'INSERT') ?? [];
      for (const [connection, count] of counts(answer)) {
        const layer = `FASTENER-${connection.toUpperCase().replaceAll(/[^A-Z0-9]+/g, '-')}`;
        expect(
          inserts.filter((one) => one.layer === layer),
          layer,
        ).toHaveLength(count);
      }
      expect(inserts).toHaveLength([...counts(answer).values()].reduce((a, b) => a + b, 0));
      const kinds = new Set(drawing?.entities.map(({ type }) => type));
      expect([...kinds].sort()).toEqual(['INSERT', 'LINE', 'POLYLINE', 'TEXT']);
    });
  test('every layer an entity names is in the table, by the rules of release 12', () => {
    const drawing = new DxfParser().parseSync(layoutDxf(solvedAsIs('c-farm').answer));
    const table = Object.keys(drawing?.tables.layer.layers ?? {});
    for (const name of table) expect(name).toMatch(/^[A-Z0-9_$-]{1,31}$/);
    for (const { layer } of drawing?.entities ?? []) expect(table).toContain(layer);
    expect(drawing?.header.$ACADVER).toBe('AC1009');
  });
  test('zone outlines are as large as the zones, in inches', () => {
    const { answer } = solvedAsIs('b-long-hall');
    const drawing = new DxfParser().parseSync(layoutDxf(answer));
    const rings =
      drawing?.entities.filter(({ type, layer }) => type === 'POLYLINE' && layer === 'ZONE-3') ?? [];
    const area = rings.reduce((sum, ring) => sum + shoelace((ring as unknown as Vertices).vertices), 0);
    const zone = answer.field.zones.find(({ label }) => label === '3');
    expect(area / 144).toBeCloseTo(zone?.planArea_ft2 ?? Number.NaN, 0);
  });
  test('names that would fall together are kept apart', () => {
    const names = new DxfNames();
    const long = 'a very long name of a connection of the roof';
    expect(names.of(`${long} one`)).not.toBe(names.of(`${long} two`));
    expect(names.of(`${long} one`)).toBe(names.of(`${long} one`));
    expect(names.of("zone 2'")).not.toBe(names.of('zone 2'));
    expect(names.of('屋根')).toMatch(/^[A-Z0-9_$-]{1,31}$/);
  });
  test('a hostile job name stays one line of plain text', () => {
    const { answer } = solvedDemo('a-boathouse', { name: hostileName, reference: '%%U %%c\n0\nEOF' });
    const drawing = new DxfParser().parseSync(layoutDxf(answer));
    const texts = drawing?.entities.filter(({ type }) => type === 'TEXT') as unknown as { text: string }[];
    expect(texts).toHaveLength(5);
    for (const { text } of texts) expect(text).toMatch(/^[\x20-\x7e]+$/);
    expect(texts.map(({ text }) => text).join()).not.toContain('%%');
  });
});

interface Vertices {
  readonly vertices: readonly { readonly x: number; readonly y: number }[];
}
function shoelace(ring: Vertices['vertices']): number {
  return ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] as (typeof ring)[number];
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);
}

describe('layout.svg', () => {
  for (const demo of demos)
    test(`${demo}: is well-formed and draws every fastener once`, () => {
      const { answer } = solvedAsIs(demo);
      const svg = layoutSvg(answer);
      expect(illFormed(svg)).toBe('');
      const total = [...counts(answer).values()].reduce((a, b) => a + b, 0);
      expect(svg.match(/<use href="#f"/g)).toHaveLength(total);
    });
  test('a hostile name is text, not markup', () => {
    const svg = layoutSvg(solvedDemo('a-boathouse', { name: hostileName }).answer);
    expect(illFormed(svg)).toBe('');
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;script&gt;');
  });
  test('many fasteners become one path for the connection, with as many marks', () => {
    const svg = layoutSvg(withFasteners(25_000));
    expect(svg).not.toContain('<use');
    const path = /<g class="fasteners"[^>]*><path[^>]* d="([^"]*)"/.exec(svg)?.[1] ?? '';
    expect(path.match(/m/g)).toHaveLength(25_000);
    expect(lastPoint(path)[0]).toBeCloseTo(999 * 1.013, 0);
  });
  test('three hundred thousand fasteners stay below 8 MB', () => {
    expect(Buffer.byteLength(layoutSvg(withFasteners(300_000)))).toBeLessThan(8e6);
  });
});

function lastPoint(path: string): readonly [number, number] {
  let [x, y] = [0, 0];
  for (const [, dx, dy] of path.matchAll(/m(-?[\d.]+) (-?[\d.]+)h0/g))
    [x, y] = [x + Number(dx), y + Number(dy)];
  return [x, y];
}

/** What is wrong with a text as XML, or nothing: tags nest, attributes are quoted, entities are known. */
function illFormed(xml: string): string {
  const open: string[] = [];
  const body = xml.replace(/^<\?xml [^?]*\?>\n/, '');
  let at = 0;
  for (const tag of body.matchAll(/<(\/?)([a-zA-Z][\w:-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g)) {
    const between = body.slice(at, tag.index);
    if (/[<>]|&(?!(amp|lt|gt|quot|#39);)|\p{Cc}/u.test(between.replaceAll('\n', '')))
      return between.slice(0, 80);
    at = tag.index + tag[0].length;
    if (/&(?!(amp|lt|gt|quot|#39);)/.test(tag[3] ?? '')) return tag[0].slice(0, 80);
    if (tag[1] === '/') {
      if (open.pop() !== tag[2]) return tag[0];
    } else if (tag[4] !== '/') open.push(tag[2] ?? '');
  }
  return open.length > 0 || body.slice(at).trim() !== '' ? `open at the end: ${open.join()}` : '';
}

describe('the place of a label', () => {
  const box = (x0: number, y0: number, x1: number, y1: number) => [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ];
  test('is the middle of a rectangle', () => {
    const place = labelPlace([box(0, 0, 160, 32)]);
    expect(place?.at.x).toBeCloseTo(80, 6);
    expect(place?.at.y).toBeCloseTo(16, 6);
    expect([place?.width, place?.height]).toEqual([160, 32]);
  });
  test('keeps out of a hole', () => {
    const hole = [...box(40, 40, 60, 60)].reverse();
    const { at } = labelPlace([box(0, 0, 100, 100), hole]) ?? { at: { x: 50, y: 50 } };
    expect(at.x > 40 && at.x < 60 && at.y > 40 && at.y < 60).toBe(false);
  });
  test('is nothing where there is no region', () => {
    expect(labelPlace([])).toBeUndefined();
  });
});
