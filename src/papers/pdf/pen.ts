/** What papers draw with: text on a baseline, lines, shapes, hatches. Units are points, y grows down the page. */
import { clean } from '../clean-text.ts';
import type { Hatch } from '../hatch.ts';
import { breakLines } from './break-lines.ts';
import type { Face } from './fonts.ts';

export const INK = '#1c2733';
export const GREY = '#55606b';
export const FAINT = '#aeb6bd';
export const BLUE = '#1f4e79';
export const RED = '#a82a1f';
export const PAPER = '#ffffff';

export interface Type {
  readonly size?: number;
  readonly face?: Face;
  readonly color?: string;
  readonly align?: 'left' | 'right' | 'center';
}

export interface Block extends Type {
  readonly width: number;
  /** Lines above this number are cut, the last one ending in an ellipsis. */
  readonly most?: number;
  readonly leading?: number;
}

export interface Stroke {
  readonly color?: string;
  readonly width?: number;
  readonly dash?: readonly [number, number];
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export const SIZE = 8.5;
const LEADING = 1.3;
/** From the top of a line to its baseline, in sizes of type. */
const ASCENT = 0.96;

export class Pen {
  readonly doc: PDFKit.PDFDocument;
  private readonly widths = new Map<string, number>();

  constructor(doc: PDFKit.PDFDocument) {
    this.doc = doc;
  }

  width(text: string, { size = SIZE, face = 'regular' }: Type = {}): number {
    const key = `${face}${text}`;
    let unit = this.widths.get(key);
    if (unit === undefined) {
      unit = this.doc.font(face).fontSize(100).widthOfString(text) / 100;
      this.widths.set(key, unit);
    }
    return unit * size;
  }

  /** One line on its baseline; right and centred text hangs from x. */
  line(text: string, x: number, baseline: number, type: Type = {}): void {
    const shown = clean(text);
    if (shown === '') return;
    const { size = SIZE, face = 'regular', color = INK, align = 'left' } = type;
    const shift = align === 'left' ? 0 : this.width(shown, type) * (align === 'right' ? 1 : 0.5);
    this.doc
      .font(face)
      .fontSize(size)
      .fillColor(color)
      .text(shown, x - shift, baseline, { lineBreak: false, baseline: 'alphabetic' });
  }

  /** The lines a text takes in a width. */
  lines(text: string, block: Block): readonly string[] {
    return breakLines(clean(text), block.width, (part) => this.width(part, block), block.most);
  }

  heightOf(text: string, block: Block): number {
    return this.lines(text, block).length * leadingOf(block);
  }

  /** Text in a width from its top; gives back the y below it. */
  block(text: string, x: number, top: number, block: Block): number {
    const { size = SIZE, align = 'left', width } = block;
    const from = align === 'left' ? x : align === 'right' ? x + width : x + width / 2;
    let y = top;
    for (const line of this.lines(text, block)) {
      this.line(line, from, y + size * ASCENT, block);
      y += leadingOf(block);
    }
    return y;
  }

  path(points: readonly Spot[], { color = INK, width = 0.5, dash }: Stroke = {}, closed = false): void {
    const [first, ...rest] = points;
    if (!first) return;
    const { doc } = this;
    doc.save().lineWidth(width).strokeColor(color);
    if (dash) doc.dash(dash[0], { space: dash[1] });
    doc.moveTo(first.x, first.y);
    for (const p of rest) doc.lineTo(p.x, p.y);
    if (closed) doc.closePath();
    doc.stroke().restore();
  }

  rule(x: number, y: number, width: number, stroke: Stroke = {}): void {
    this.path(
      [
        { x, y },
        { x: x + width, y },
      ],
      stroke,
    );
  }

  box(x: number, y: number, width: number, height: number, stroke: Stroke = {}): void {
    this.path(corners(x, y, width, height), stroke, true);
  }

  fill(rings: readonly (readonly Spot[])[], color: string): void {
    this.trace(rings);
    this.doc.fillColor(color).fill('even-odd');
  }

  /** Parallel lines inside rings (even-odd). @param grain gap of a hatch of gap 1, in points */
  hatch(rings: readonly (readonly Spot[])[], hatch: Hatch, grain: number, stroke: Stroke = {}): void {
    const points = rings.flat();
    if (hatch.length === 0 || points.length === 0) return;
    const { doc } = this;
    const middle = {
      x: (Math.min(...points.map((p) => p.x)) + Math.max(...points.map((p) => p.x))) / 2,
      y: (Math.min(...points.map((p) => p.y)) + Math.max(...points.map((p) => p.y))) / 2,
    };
    const reach = Math.max(...points.map((p) => Math.hypot(p.x - middle.x, p.y - middle.y)));
    doc.save();
    this.trace(rings);
    doc
      .clip('even-odd')
      .lineWidth(stroke.width ?? 0.35)
      .strokeColor(stroke.color ?? INK);
    for (const { angle, gap } of hatch) {
      const turn = (-angle * Math.PI) / 180;
      const along = { x: Math.cos(turn), y: Math.sin(turn) };
      const across = { x: -along.y, y: along.x };
      // Lines are counted from the page's corner, so that neighbouring pieces of one zone match.
      const step = gap * grain;
      const offset = middle.x * across.x + middle.y * across.y;
      for (let i = Math.ceil((offset - reach) / step); i * step <= offset + reach; i++) {
        const d = i * step - offset;
        const base = { x: middle.x + across.x * d, y: middle.y + across.y * d };
        doc
          .moveTo(base.x - along.x * reach, base.y - along.y * reach)
          .lineTo(base.x + along.x * reach, base.y + along.y * reach);
      }
    }
    doc.stroke().restore();
  }

  private trace(rings: readonly (readonly Spot[])[]): void {
    for (const ring of rings) {
      ring.forEach((p, i) => {
        if (i === 0) this.doc.moveTo(p.x, p.y);
        else this.doc.lineTo(p.x, p.y);
      });
      this.doc.closePath();
    }
  }
}

export const leadingOf = ({ size = SIZE, leading = LEADING }: Pick<Block, 'size' | 'leading'>): number =>
  size * leading;

export const corners = (x: number, y: number, width: number, height: number): Spot[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];
