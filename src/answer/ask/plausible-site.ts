/** Plausible ranges of the basis, the place and the wind. */
import { codeYears, type Job } from '../../job/job.ts';
import type { PlausibleRange } from './plausible-range.ts';
import { always, texts } from './texts.ts';

const byStandard = ({ wind }: Job): boolean => wind.by === 'standard';
const onDeck = ({ support }: Job): boolean =>
  support.kind === 'plywood' ||
  support.kind === 'OSB' ||
  support.kind === 'lumber deck' ||
  support.kind === 'steel deck';
const onLines = ({ support }: Job): boolean => 'spacing' in support;

export const siteRanges: readonly PlausibleRange[] = [
  {
    path: 'basis.codeYear',
    serves: always,
    values: texts(...codeYears),
    usual: codeYears.length - 1,
    source: 'model code years whose editions are here',
    origin: 'published',
  },
  {
    path: 'place.saltWater',
    serves: always,
    mattersLeftOut: always,
    values: texts('500 ft', '2 mi'),
    usual: 1,
    source: 'one value on each side of the 3000 ft line of FEMA P-499',
    origin: 'published',
  },
  {
    path: 'place.below',
    serves: (job) => onDeck(job) || job.support.kind === 'wood purlins',
    mattersLeftOut: always,
    values: texts('hidden', 'in view'),
    usual: 0,
    source: 'both that there are',
    origin: 'common practice',
  },
  {
    path: 'wind.speed',
    serves: byStandard,
    values: texts('95 mph', '105 mph', '115 mph', '130 mph', '150 mph', '180 mph'),
    usual: 2,
    source: 'span of the basic wind speed maps of ASCE/SEI 7, risk category II',
    origin: 'memory',
  },
  {
    path: 'wind.exposure',
    serves: byStandard,
    values: texts('B', 'C', 'D'),
    usual: 1,
    source: 'ASCE/SEI 7, 26.7.3',
    origin: 'published',
  },
  {
    path: 'wind.enclosure',
    serves: byStandard,
    values: texts('enclosed', 'partially open', 'partially enclosed'),
    usual: 0,
    source: 'ASCE/SEI 7, 26.12; an open building is known to be one',
    origin: 'published',
  },
  {
    path: 'wind.groundElevation',
    serves: byStandard,
    mattersLeftOut: always,
    values: texts('0 ft', '1000 ft', '3000 ft', '6000 ft'),
    usual: 0,
    source: 'rows of ASCE/SEI 7, Table 26.9-1',
    origin: 'published',
  },
  {
    path: 'wind.meanRoofHeight',
    serves: byStandard,
    values: texts('15 ft', '20 ft', '30 ft', '40 ft', '60 ft'),
    usual: 1,
    source: 'low-rise buildings of ASCE/SEI 7',
    origin: 'common practice',
  },
  {
    path: 'roof.eaveHeight',
    serves: always,
    values: texts('9 ft', '12 ft', '16 ft', '20 ft', '30 ft'),
    usual: 1,
    source: 'houses, barns and halls of one and two floors',
    origin: 'common practice',
  },
  {
    path: 'roof.highestPoint',
    serves: ({ roof }) => roof.form === 'planes',
    values: texts('16 ft', '20 ft', '26 ft', '34 ft', '44 ft'),
    usual: 1,
    source: 'houses, barns and halls of one and two floors',
    origin: 'common practice',
  },
  {
    path: 'roofSnow',
    serves: (job) => job.insulation !== undefined,
    mattersLeftOut: always,
    values: texts('0 psf', '20 psf', '40 psf', '70 psf'),
    usual: 1,
    source: 'no snow to a snow district; snow is checked on insulation only',
    origin: 'common practice',
  },
  {
    path: 'details.edgeMember',
    serves: onLines,
    mattersLeftOut: always,
    values: () => [
      { text: 'like the supports', put: 'like the supports' },
      { text: 'none', put: undefined },
    ],
    usual: 0,
    source: 'both that there are',
    origin: 'common practice',
  },
];
