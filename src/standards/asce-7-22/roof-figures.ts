/** All roof figures of ASCE/SEI 7-22 held here, and which of them a roof takes. */
import { makeChooseFigure } from '../asce-7-curves/choose-figure.ts';
import { citation, type FigureId } from '../asce-7-curves/edition.ts';
import type { RoofFigure } from '../asce-7-curves/roof-figure.ts';
import {
  highBuildingFigure,
  lowSlopeFigure,
  monoslopeTo10Figure,
  monoslopeTo30Figure,
} from '../asce-7-curves/roof-figures.ts';
import { asce7of2022 } from './edition.ts';
import { gable7to20, gable20to27, gable27to45 } from './figures-30.3-2-gable.ts';
import { hip7to20, hip20to27, hip27to45 } from './figures-30.3-2-hip.ts';

const cited = (figure: FigureId<'7-22'>): string => citation(asce7of2022, `Fig. ${figure}`);

/** An erratum of 2024 is said to touch Fig. 30.4-1; it was not seen. */
export const roofFiguresOf722: Readonly<Record<FigureId<'7-22'>, RoofFigure>> = {
  '30.3-2A': lowSlopeFigure(cited('30.3-2A')),
  '30.3-2B': gable7to20,
  '30.3-2C': gable20to27,
  '30.3-2D': gable27to45,
  '30.3-2E': hip7to20,
  '30.3-2F': hip20to27,
  '30.3-2G': hip27to45,
  '30.3-5A': monoslopeTo10Figure(cited('30.3-5A')),
  '30.3-5B': monoslopeTo30Figure(cited('30.3-5B')),
  '30.4-1': highBuildingFigure(cited('30.4-1')),
};

/** The exception below 90 ft is that of 30.4.2. */
export const chooseFigureOf722 = makeChooseFigure(asce7of2022, {
  byShape: {
    flat: [{ to: 7, figure: '30.3-2A' }],
    gable: [
      { to: 7, figure: '30.3-2A' },
      { to: 20, figure: '30.3-2B' },
      { to: 27, figure: '30.3-2C' },
      { to: 45, figure: '30.3-2D' },
    ],
    hip: [
      { to: 7, figure: '30.3-2A' },
      { to: 20, figure: '30.3-2E' },
      { to: 27, figure: '30.3-2F' },
      { to: 45, figure: '30.3-2G' },
    ],
    monoslope: [
      { to: 3, figure: '30.3-2A' },
      { to: 10, figure: '30.3-5A' },
      { to: 30, figure: '30.3-5B' },
    ],
  },
  over60: { to: 7, figure: '30.4-1' },
});
