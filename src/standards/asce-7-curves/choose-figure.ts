/**
 * Which figure holds for a roof. Bands of slope are steps: up to 7 degrees, over 7 to 20, and so on, nothing between.
 * Over 60 ft a low slope has a figure of its own; a steeper roof keeps the low-rise figure of its shape, with qh.
 */
import type { Degree, Foot } from '../../quantities/quantity.ts';
import { needs, oneOf, outside } from '../../trace/clause.ts';
import { type Refusal, refuse } from '../../trace/refusal.ts';
import {
  type Asce7,
  citation,
  type EditionName,
  type FigureId,
  type RoofShape,
  roofShapes,
} from './edition.ts';

export interface SlopeBand<F extends string> {
  /** Highest slope of the band, degrees; it begins over the one before. */
  readonly to: number;
  readonly figure: F;
}

export interface FigureBands<F extends string> {
  readonly byShape: Readonly<Record<RoofShape, readonly SlopeBand<F>[]>>;
  readonly over60: SlopeBand<F>;
}

/** The exception for 60 to 90 ft: used only when it is asked for. */
export interface BelowNinety {
  readonly leastDimension: Foot;
}

export type ChooseFigure<E extends EditionName> = (
  shape: RoofShape,
  theta: Degree,
  h: Foot,
  belowNinety?: BelowNinety,
) => FigureId<E> | Refusal;

const LOW_RISE_FT = 60;
const NINETY_FT = 90;
const inputs = {
  shape: oneOf(roofShapes, 'shape of the roof'),
  theta: needs('deg', 'roof slope', { min: 0, max: 45 }),
  h: needs('ft', 'mean roof height', { above: 0 }),
};

export function makeChooseFigure<E extends EditionName>(
  of: Asce7<E>,
  bands: FigureBands<FigureId<E>>,
): ChooseFigure<E> {
  const cites = citation(of, 'Chapter 30, roof figures');
  return (shape, theta, h, belowNinety) => {
    const bad =
      outside(cites, 'shape', inputs.shape, shape) ??
      outside(cites, 'theta', inputs.theta, theta) ??
      outside(cites, 'h', inputs.h, h);
    if (bad) return bad;
    const asLowRise =
      h <= LOW_RISE_FT || (belowNinety !== undefined && h < NINETY_FT && h <= belowNinety.leastDimension);
    if (!asLowRise && theta <= bands.over60.to) return bands.over60.figure;
    const list = bands.byShape[shape];
    const band = list.find(({ to }) => theta <= to);
    return band?.figure ?? refuse(cites, 'theta', theta, `${shape}: up to ${list.at(-1)?.to} deg`);
  };
}
