/** Plausible ranges of the panel, its test and its clip, and of insulation. */
import type { Job } from '../../job/job.ts';
import type { PlausibleRange } from './plausible-range.ts';
import { always, texts } from './texts.ts';

type Metal = Job['panel']['metal'];

interface SheetRow {
  readonly metal: Metal;
  readonly thickness: readonly string[];
  readonly usualThickness: number;
  readonly grade: readonly string[];
  readonly usualGrade: number;
}

/** What roofs are covered with, thinnest and weakest first. */
const sheets: readonly SheetRow[] = [
  {
    metal: 'steel',
    thickness: ['29 ga', '26 ga', '24 ga', '22 ga'],
    usualThickness: 2,
    grade: ['SS33', 'SS50', 'SS80'],
    usualGrade: 1,
  },
  {
    metal: 'aluminium',
    thickness: ['0.032 in', '0.040 in', '0.050 in'],
    usualThickness: 0,
    grade: ['3003-H14', '3105-H25', '3004-H34'],
    usualGrade: 1,
  },
  { metal: 'copper', thickness: ['16 oz', '20 oz'], usualThickness: 0, grade: ['H00'], usualGrade: 0 },
  { metal: 'stainless', thickness: ['26 ga', '24 ga'], usualThickness: 0, grade: ['304'], usualGrade: 0 },
  {
    metal: 'zinc',
    thickness: ['0.7 mm', '0.8 mm', '1.0 mm'],
    usualThickness: 0,
    grade: ['titanium zinc'],
    usualGrade: 0,
  },
];

const sheetRanges: readonly PlausibleRange[] = sheets.flatMap((row): PlausibleRange[] => {
  const serves = ({ panel }: Job) => panel.metal === row.metal;
  const source = `${row.metal} sheet as usually sold for roofs`;
  return [
    {
      path: 'panel.thickness',
      serves,
      values: texts(...row.thickness),
      usual: row.usualThickness,
      source,
      origin: 'common practice',
    },
    {
      path: 'panel.grade',
      serves,
      values: texts(...row.grade),
      usual: row.usualGrade,
      source,
      origin: 'common practice',
    },
  ];
});

/** More than any roof asks for, at every spacing: it stands for a test whose table is sufficient, whatever it says. */
export const sufficientTest = {
  source: 'supposed here: a test whose table is sufficient',
  safetyFactor: 1,
  rows: [
    { spacing: '1 in', ultimate: '2000 psf', failure: 'none' },
    { spacing: '144 in', ultimate: '2000 psf', failure: 'none' },
  ],
};

export const coverRanges: readonly PlausibleRange[] = [
  ...sheetRanges,
  {
    path: 'panel.upliftTest',
    serves: always,
    mattersLeftOut: always,
    values: () => [
      { text: 'a test whose table is sufficient', put: sufficientTest },
      { text: 'no test', put: undefined },
    ],
    usual: 0,
    source: 'only a test can answer it: a sufficient one, or none',
    origin: 'common practice',
  },
  {
    path: 'panel.clip',
    serves: ({ panel }) => panel.system === 'standing seam on clips',
    mattersLeftOut: always,
    values: ({ panel }, { items }) => [
      { text: 'any: the cheapest that serves', put: undefined },
      ...items.flatMap((item) =>
        item.kind === 'clip' && item.seamHeight === panel.seamHeight
          ? [{ text: `${item.id}, ${item.designation}`, put: item.id }]
          : [],
      ),
    ],
    usual: 0,
    source: 'clips of the shelf for this seam',
    origin: 'shelf',
  },
  {
    path: 'insulation.compressiveStrength',
    serves: ({ insulation }) => insulation !== undefined,
    mattersLeftOut: always,
    values: texts('16 psi', '20 psi', '25 psi'),
    usual: 1,
    source: 'ASTM C1289, grades 1 to 3 of faced polyisocyanurate boards',
    origin: 'memory',
  },
  {
    path: 'insulation.plate',
    serves: ({ insulation }) => insulation !== undefined,
    mattersLeftOut: always,
    values: (_job, { items }) =>
      items.flatMap((item) =>
        item.kind === 'plate' ? [{ text: `${item.id}, ${item.designation}`, put: item.id }] : [],
      ),
    usual: 0,
    source: 'bearing plates of the shelf',
    origin: 'shelf',
  },
];
