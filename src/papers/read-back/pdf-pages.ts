/** For tests of papers: the text of our own PDF files page by page, read back without any program. */
import { inflateSync } from 'node:zlib';

export interface PdfText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PdfText[];
}

interface PdfObject {
  readonly head: string;
  readonly stream: string;
}

/** @throws when the file is not one that our own writer makes */
export function pdfPages(bytes: Uint8Array): PdfPage[] {
  const objects = objectsOf(Buffer.from(bytes).toString('latin1'));
  const fonts = fontsOf(objects);
  return [...objects.values()]
    .filter(({ head }) => /\/Type \/Page\b(?!s)/.test(head))
    .map(({ head }) => {
      const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(head);
      const contents = /\/Contents (\d+) 0 R/.exec(head);
      const stream = objects.get(Number(contents?.[1]))?.stream;
      if (!box || stream === undefined) throw new Error('a page without size or contents');
      return { width: Number(box[1]), height: Number(box[2]), texts: textsOf(stream, fonts, Number(box[2])) };
    });
}

export const textOf = (pages: readonly PdfPage[]): string =>
  pages.map(({ texts }) => texts.map(({ text }) => text).join('\n')).join('\n');

function objectsOf(file: string): Map<number, PdfObject> {
  const objects = new Map<number, PdfObject>();
  for (const match of file.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) {
    const body = match[2] as string;
    const start = body.indexOf('stream\n');
    const head = start < 0 ? body : body.slice(0, start);
    const raw = start < 0 ? '' : body.slice(start + 7, body.lastIndexOf('\nendstream'));
    const packed = /\/FlateDecode/.test(head);
    const stream = packed ? inflateSync(Buffer.from(raw, 'latin1')).toString('latin1') : raw;
    objects.set(Number(match[1]), { head, stream });
  }
  return objects;
}

type Signs = ReadonlyMap<number, string>;

function fontsOf(objects: ReadonlyMap<number, PdfObject>): Map<string, Signs> {
  const fonts = new Map<string, Signs>();
  for (const { head } of objects.values())
    for (const [, name = '', id] of head.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
      const unicode = /\/ToUnicode (\d+) 0 R/.exec(objects.get(Number(id))?.head ?? '');
      const map = objects.get(Number(unicode?.[1]))?.stream;
      if (map !== undefined) fonts.set(name, signsOf(map));
    }
  return fonts;
}

function signsOf(map: string): Signs {
  const signs = new Map<number, string>();
  for (const [, from = '0', list = ''] of map.matchAll(/<([0-9a-f]+)> <[0-9a-f]+> \[([^\]]*)\]/gi)) {
    let code = Number.parseInt(from, 16);
    for (const [, hex = ''] of list.matchAll(/<([0-9a-f ]*)>/gi))
      signs.set(code++, Buffer.from(hex.replaceAll(' ', ''), 'hex').swap16().toString('utf16le'));
  }
  return signs;
}

function textsOf(stream: string, fonts: ReadonlyMap<string, Signs>, height: number): PdfText[] {
  const texts: PdfText[] = [];
  const part = /1 0 0 1 ([-\d.]+) ([-\d.]+) Tm[\s\S]*?\/(F\d+) [\d.]+ Tf[\s\S]*?\[([^\]]*)\] TJ/g;
  for (const [, x, y, font = '', glyphs = ''] of stream.matchAll(part)) {
    const signs = fonts.get(font);
    const codes = [...glyphs.matchAll(/<([0-9a-f]*)>/gi)].flatMap(([, hex = '']) => hex.match(/.{4}/g) ?? []);
    const text = codes.map((code) => signs?.get(Number.parseInt(code, 16)) ?? '').join('');
    texts.push({ text, x: Number(x), y: height - Number(y) });
  }
  return texts;
}
