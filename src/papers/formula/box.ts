/** Formulas are set from boxes: each knows its width and how far it reaches over and under the line it stands on. */
import type { Face } from '../pdf/fonts.ts';
import { INK, type Pen } from '../pdf/pen.ts';

export interface FormulaBox {
  readonly width: number;
  readonly over: number;
  readonly under: number;
  readonly draw: (x: number, baseline: number) => void;
}

/** How boxes are made: the pen, the size of type, its colour. */
export interface Setting {
  readonly pen: Pen;
  readonly size: number;
  readonly color?: string;
}

/** Height of the middle of operators and fraction bars over the line, in sizes of type. */
const AXIS = 0.25;
const smaller = (setting: Setting): Setting => ({ ...setting, size: Math.max(4.5, setting.size * 0.72) });

export function textBox(
  { pen, size, color = INK }: Setting,
  text: string,
  face: Face = 'regular',
): FormulaBox {
  const type = { size, face, color };
  return {
    width: pen.width(text, type),
    over: size * 0.72,
    under: size * 0.22,
    draw: (x, baseline) => pen.line(text, x, baseline, type),
  };
}

export function rowBox(boxes: readonly FormulaBox[], gap = 0): FormulaBox {
  return {
    width: boxes.reduce((sum, box) => sum + box.width, 0) + gap * Math.max(0, boxes.length - 1),
    over: Math.max(0, ...boxes.map((box) => box.over)),
    under: Math.max(0, ...boxes.map((box) => box.under)),
    draw: (x, baseline) => {
      let at = x;
      for (const box of boxes) {
        box.draw(at, baseline);
        at += box.width + gap;
      }
    },
  };
}

/** A symbol: its letter in italics, the rest lowered. */
export function symbolBox(setting: Setting, base: string, prime: string, sub: string): FormulaBox {
  const letter = textBox(setting, `${base}${prime}`, /^[A-Za-zα-ωµ]/.test(base) ? 'italic' : 'regular');
  if (sub === '') return letter;
  return rowBox([letter, shifted(textBox(smaller(setting), sub), setting.size * 0.2)]);
}

function shifted(box: FormulaBox, down: number): FormulaBox {
  return {
    width: box.width,
    over: box.over - down,
    under: box.under + down,
    draw: (x, baseline) => box.draw(x, baseline + down),
  };
}

export function fractionBox(
  { pen, size, color = INK }: Setting,
  top: FormulaBox,
  bottom: FormulaBox,
): FormulaBox {
  const width = Math.max(top.width, bottom.width) + 4;
  const axis = size * AXIS;
  const gap = size * 0.16;
  return {
    width: width + 2,
    over: axis + gap + top.under + top.over,
    under: bottom.over + gap + bottom.under - axis,
    draw: (x, baseline) => {
      const bar = baseline - axis;
      pen.rule(x + 1, bar, width, { width: size / 17, color });
      top.draw(x + 1 + (width - top.width) / 2, bar - gap - top.under);
      bottom.draw(x + 1 + (width - bottom.width) / 2, bar + gap + bottom.over);
    },
  };
}

export function powerBox(base: FormulaBox, exponent: FormulaBox): FormulaBox {
  const up = Math.max(base.over * 0.62, base.over - exponent.over * 0.6);
  return {
    width: base.width + exponent.width + 0.6,
    over: Math.max(base.over, up + exponent.over),
    under: base.under,
    draw: (x, baseline) => {
      base.draw(x, baseline);
      exponent.draw(x + base.width + 0.6, baseline - up);
    },
  };
}

export const exponentSetting = smaller;

export function rootBox({ pen, size, color = INK }: Setting, inner: FormulaBox): FormulaBox {
  const tick = size * 0.55;
  const over = inner.over + size * 0.14;
  return {
    width: tick + inner.width + 2,
    over: over + 0.5,
    under: inner.under,
    draw: (x, baseline) => {
      const top = baseline - over;
      pen.path(
        [
          { x, y: baseline - size * 0.28 },
          { x: x + tick * 0.3, y: baseline - size * 0.34 },
          { x: x + tick * 0.6, y: baseline + inner.under },
          { x: x + tick, y: top },
          { x: x + tick + inner.width + 2, y: top },
        ],
        { width: size / 17, color },
      );
      inner.draw(x + tick + 1, baseline);
    },
  };
}

/** Round brackets as tall as what they hold. */
export function bracketBox({ pen, size, color = INK }: Setting, inner: FormulaBox): FormulaBox {
  const tall = inner.over + inner.under > size * 1.3;
  if (!tall) {
    const type = { size, color };
    const wide = pen.width('(', type);
    return {
      width: inner.width + 2 * wide,
      over: inner.over,
      under: inner.under,
      draw: (x, baseline) => {
        pen.line('(', x, baseline, type);
        inner.draw(x + wide, baseline);
        pen.line(')', x + wide + inner.width, baseline, type);
      },
    };
  }
  const wide = size * 0.3;
  const arc = (from: number, to: number, top: number, bottom: number) => {
    pen.doc
      .save()
      .lineWidth(size / 15)
      .strokeColor(color)
      .moveTo(from, top)
      .quadraticCurveTo(to, (top + bottom) / 2, from, bottom)
      .stroke()
      .restore();
  };
  return {
    width: inner.width + 2 * wide + 1,
    over: inner.over + 1,
    under: inner.under + 1,
    draw: (x, baseline) => {
      const [top, bottom] = [baseline - inner.over - 1, baseline + inner.under + 1];
      arc(x + wide, x - wide * 0.4, top, bottom);
      inner.draw(x + wide + 0.5, baseline);
      arc(x + wide + 1 + inner.width, x + inner.width + 2.4 * wide + 1, top, bottom);
    },
  };
}
