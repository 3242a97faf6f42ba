import { citation } from '../asce-7-curves/edition.ts';
import type { RoofWindEdition } from '../asce-7-curves/roof-wind-edition.ts';
import { velocityPressureOf716 } from './26.10-velocity-pressure.ts';
import { asce7of2016 } from './edition.ts';
import { zonePlanOf716, zoneRules } from './figure-30.3-2-zones.ts';
import { chooseFigureOf716, roofFiguresOf716 } from './roof-figures.ts';
import { roofPressuresOf716 } from './roof-pressure.ts';
import { unchangedClausesOf716 } from './unchanged-clauses.ts';

const { meanRoofHeight, edgeStripWidth, areaOfFastener, topographicFactor, asdPressure } =
  unchangedClausesOf716;

/** Wind on roofs by ASCE/SEI 7-16, as the engine uses it. */
export const asce716: RoofWindEdition<'7-16'> = {
  edition: '7-16',
  name: asce7of2016.name,
  cites: {
    velocityPressure: citation(asce7of2016, 'Eq. 26.10-1'),
    netPressure: citation(asce7of2016, 'Eq. 30.3-1'),
    minimum: citation(asce7of2016, '30.2.2'),
    overhang: citation(asce7of2016, '30.9'),
  },
  chooseFigure: chooseFigureOf716,
  figureCites: (figure) => roofFiguresOf716[figure].cites,
  zones: (figure) => roofFiguresOf716[figure].zones,
  zoneRules,
  readings: (figure) => {
    const { reading } = zonePlanOf716(figure);
    return reading === undefined ? [] : [reading];
  },
  meanRoofHeight,
  edgeStripWidth,
  areaOfFastener,
  topographicFactor,
  velocityPressure: velocityPressureOf716.atRoof,
  ...roofPressuresOf716,
  asdPressure,
};
