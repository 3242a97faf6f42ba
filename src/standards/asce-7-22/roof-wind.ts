import { citation } from '../asce-7-curves/edition.ts';
import type { RoofWindEdition } from '../asce-7-curves/roof-wind-edition.ts';
import { velocityPressureOf722 } from './26.10-velocity-pressure.ts';
import { asce7of2022 } from './edition.ts';
import { zonePlanOf722, zoneRules } from './figure-30.3-2-zones.ts';
import { chooseFigureOf722, roofFiguresOf722 } from './roof-figures.ts';
import { roofPressuresOf722 } from './roof-pressure.ts';
import { unchangedClausesOf722 } from './unchanged-clauses.ts';

const { meanRoofHeight, edgeStripWidth, areaOfFastener, topographicFactor, asdPressure } =
  unchangedClausesOf722;

/** Wind on roofs by ASCE/SEI 7-22, as the engine uses it. */
export const asce722: RoofWindEdition<'7-22'> = {
  edition: '7-22',
  name: asce7of2022.name,
  cites: {
    velocityPressure: citation(asce7of2022, 'Eq. 26.10-1'),
    netPressure: citation(asce7of2022, 'Eq. 30.3-1'),
    minimum: citation(asce7of2022, '30.2.2'),
    overhang: citation(asce7of2022, '30.7'),
  },
  chooseFigure: chooseFigureOf722,
  figureCites: (figure) => roofFiguresOf722[figure].cites,
  zones: (figure) => roofFiguresOf722[figure].zones,
  zoneRules,
  readings: (figure) => {
    const { reading } = zonePlanOf722(figure);
    return reading === undefined ? [] : [reading];
  },
  meanRoofHeight,
  edgeStripWidth,
  areaOfFastener,
  topographicFactor,
  velocityPressure: velocityPressureOf722.atRoof,
  ...roofPressuresOf722,
  asdPressure,
};
