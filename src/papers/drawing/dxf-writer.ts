/** DXF of release 12 (AC1009): the form every drawing program reads. Layers, blocks, lines, polylines, text. */
import type { Point, Ring } from '../../roof/point.ts';

/** Layer and block names of R12: capitals, digits, _ - $, at most 31 signs, each used for one thing only. */
export class DxfNames {
  private readonly byText = new Map<string, string>();
  private readonly taken = new Set<string>();

  of(text: string): string {
    const held = this.byText.get(text);
    if (held !== undefined) return held;
    const plain = text
      .normalize('NFD')
      .replace(/[\u0300-\u036f]/g, '')
      .toUpperCase()
      .replace(/['′]/g, '$')
      .replace(/[^A-Z0-9_$-]+/g, '-')
      .replace(/^-+|-+$/g, '');
    const base = plain === '' ? 'LAYER' : plain.slice(0, 31);
    let name = base;
    for (let n = 2; this.taken.has(name); n++) name = `${base.slice(0, 31 - String(n).length - 1)}_${n}`;
    this.taken.add(name);
    this.byText.set(text, name);
    return name;
  }
}

/** To a thousandth of an inch; a minus zero would print as such. */
const at = (value: number): number => Math.round(value * 1000) / 1000 + 0;

export class DxfWriter {
  private readonly layers = new Map<string, number>();
  private readonly blocks: string[] = [];
  private readonly entities: string[] = [];

  /** @param colour index of the standard palette: 7 ink, 1 red, 5 blue, 8 grey */
  layer(name: string, colour: number): void {
    this.layers.set(name, colour);
  }

  /** A block drawn as closed outlines around its own origin. */
  block(name: string, rings: readonly Ring[]): void {
    const body = rings.map((ring) => polyline('0', ring, true)).join('');
    this.blocks.push(
      `0\nBLOCK\n8\n0\n2\n${name}\n70\n0\n10\n0\n20\n0\n30\n0\n3\n${name}\n${body}0\nENDBLK\n8\n0\n`,
    );
  }

  line(layer: string, from: Point, to: Point): void {
    this.entities.push(
      `0\nLINE\n8\n${layer}\n10\n${at(from.x)}\n20\n${at(from.y)}\n30\n0\n11\n${at(to.x)}\n21\n${at(to.y)}\n31\n0\n`,
    );
  }

  ring(layer: string, ring: Ring): void {
    this.entities.push(polyline(layer, ring, true));
  }

  insert(layer: string, block: string, x: number, y: number): void {
    this.entities.push(`0\nINSERT\n8\n${layer}\n2\n${block}\n10\n${at(x)}\n20\n${at(y)}\n30\n0\n`);
  }

  text(layer: string, p: Point, height: number, text: string): void {
    const plain = ascii(text);
    if (plain === '') return;
    this.entities.push(
      `0\nTEXT\n8\n${layer}\n10\n${at(p.x)}\n20\n${at(p.y)}\n30\n0\n40\n${at(height)}\n1\n${plain}\n`,
    );
  }

  done(min: Point, max: Point): string {
    const layers = [...this.layers].map(
      ([name, colour]) => `0\nLAYER\n2\n${name}\n70\n0\n62\n${colour}\n6\nCONTINUOUS\n`,
    );
    return [
      `0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1009\n9\n$EXTMIN\n10\n${at(min.x)}\n20\n${at(min.y)}\n30\n0\n`,
      `9\n$EXTMAX\n10\n${at(max.x)}\n20\n${at(max.y)}\n30\n0\n0\nENDSEC\n`,
      '0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLTYPE\n70\n1\n0\nLTYPE\n2\nCONTINUOUS\n70\n0\n3\nSolid line\n72\n65\n73\n0\n40\n0\n0\nENDTAB\n',
      `0\nTABLE\n2\nLAYER\n70\n${layers.length}\n${layers.join('')}0\nENDTAB\n`,
      '0\nTABLE\n2\nSTYLE\n70\n1\n0\nSTYLE\n2\nSTANDARD\n70\n0\n40\n0\n41\n1\n50\n0\n71\n0\n42\n1\n3\ntxt\n4\n\n0\nENDTAB\n0\nENDSEC\n',
      `0\nSECTION\n2\nBLOCKS\n${this.blocks.join('')}0\nENDSEC\n`,
      `0\nSECTION\n2\nENTITIES\n${this.entities.join('')}0\nENDSEC\n0\nEOF\n`,
    ].join('');
  }
}

function polyline(layer: string, ring: Ring, closed: boolean): string {
  const vertices = ring.map(({ x, y }) => `0\nVERTEX\n8\n${layer}\n10\n${at(x)}\n20\n${at(y)}\n30\n0\n`);
  return `0\nPOLYLINE\n8\n${layer}\n66\n1\n70\n${closed ? 1 : 0}\n10\n0\n20\n0\n30\n0\n${vertices.join('')}0\nSEQEND\n8\n${layer}\n`;
}

/** R12 text is of one line and, to be safe, of plain signs; %% would start a control code. */
function ascii(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replaceAll('²', '2')
    .replaceAll('−', '-')
    .replaceAll('·', ',')
    .replace(/%+/g, 'pct')
    .replace(/[^\x20-\x7e]+/g, '?')
    .slice(0, 200)
    .trim();
}
