/** Plausible ranges of what the thread holds in, and of how a deck is held to its frame. */
import type { SupportKind } from '../../job/cover-input.ts';
import type { Job } from '../../job/job.ts';
import type { Shelf } from '../../shelf/shelf.ts';
import type { PlausibleRange, PlausibleValue } from './plausible-range.ts';
import { texts } from './texts.ts';

const on =
  (...kinds: readonly SupportKind[]) =>
  ({ support }: Job): boolean =>
    kinds.includes(support.kind);
const wood = on('plywood', 'OSB', 'lumber deck', 'wood purlins');
const nailed = on('plywood', 'OSB', 'lumber deck');

type Row = readonly [
  path: string,
  serves: (job: Job) => boolean,
  values: readonly string[],
  usual: number,
  source: string,
  origin: 'published' | 'common practice' | 'memory',
];

const rows: readonly Row[] = [
  [
    'support.thickness',
    on('plywood', 'OSB'),
    ['7/16 in', '15/32 in', '19/32 in', '23/32 in'],
    1,
    'performance categories of PS 1 and PS 2 used on roofs',
    'published',
  ],
  [
    'support.thickness',
    on('lumber deck'),
    ['3/4 in', '1 in', '1 1/2 in'],
    0,
    'boards of an inch nominal to planks of two',
    'common practice',
  ],
  [
    'support.thickness',
    on('steel deck'),
    ['22 ga', '20 ga', '18 ga'],
    0,
    'roof deck as usually sold',
    'common practice',
  ],
  [
    'support.thickness',
    on('cold-formed purlins', 'hat channels'),
    ['43 mil', '54 mil', '68 mil', '97 mil'],
    1,
    'framing thicknesses of AISI S240',
    'published',
  ],
  [
    'support.thickness',
    on('structural steel'),
    ['0.1875 in', '0.25 in', '0.375 in'],
    1,
    'flanges of light sections',
    'common practice',
  ],
  [
    'support.grade',
    on('cold-formed purlins', 'hat channels', 'steel deck'),
    ['SS33', 'SS50', 'SS80'],
    0,
    'ASTM A653 and A1003 grades of framing and deck',
    'published',
  ],
  [
    'support.grade',
    on('structural steel'),
    ['A36', 'A572-50'],
    0,
    'structural steel as usually sold',
    'common practice',
  ],
  [
    'support.depth',
    on('wood purlins'),
    ['1 1/2 in', '2 1/2 in', '3 1/2 in'],
    0,
    'dressed lumber',
    'published',
  ],
];

const deckNailing = (job: Job, { items }: Shelf): readonly PlausibleValue[] => {
  const nails = items
    .filter((item) => item.kind === 'nail')
    .filter((nail) => nail.length >= 2.25)
    .sort((a, b) => a.length - b.length || a.diameter - b.diameter || (a.id < b.id ? -1 : 1));
  const patterns = [
    ['smooth', '6 in', '12 in', 'Spruce-Pine-Fir (South)'],
    ['smooth', '6 in', '12 in', 'Southern Pine'],
    ['smooth', '6 in', '6 in', 'Spruce-Pine-Fir'],
    ['ring', '6 in', '6 in', 'Spruce-Pine-Fir'],
    ['ring', '4 in', '4 in', 'Southern Pine'],
  ] as const;
  const framing = job.support.kind === 'lumber deck' ? '16 in' : '24 in';
  return patterns.flatMap(([shank, edge, field, framingSpecies]) => {
    const nail = nails.find((one) => one.shank === shank);
    if (!nail) return [];
    return [
      {
        text: `${nail.designation}, ${edge} at edges, ${field} between, framing ${framing}, ${framingSpecies}`,
        put: { nail: nail.id, edge, field, framing, framingSpecies },
      },
    ];
  });
};

const allowables = ['30 psf', '45 psf', '60 psf', '90 psf'];

export const supportRanges: readonly PlausibleRange[] = [
  ...rows.map(
    ([path, serves, values, usual, source, origin]): PlausibleRange => ({
      path,
      serves,
      values: texts(...values),
      usual,
      source,
      origin,
    }),
  ),
  {
    path: 'support.specificGravity',
    serves: on('plywood', 'OSB'),
    values: () => [0.42, 0.5].map((put) => ({ text: put.toFixed(2), put })),
    usual: 0,
    source: 'NDS Table 12.3.3B: other plywood, and Structural I or OSB',
    origin: 'published',
  },
  {
    path: 'support.species',
    serves: on('lumber deck', 'wood purlins'),
    values: texts(
      'Spruce-Pine-Fir (South)',
      'Spruce-Pine-Fir',
      'Hem-Fir',
      'Douglas Fir-Larch',
      'Southern Pine',
    ),
    usual: 1,
    source: 'NDS Table 12.3.3A: framing lumber from G 0.36 to 0.55',
    origin: 'published',
  },
  {
    path: 'support.moisture',
    serves: wood,
    mattersLeftOut: () => true,
    values: texts('dry', 'wet'),
    usual: 0,
    source: 'both that NDS Table 11.3.3 knows',
    origin: 'published',
  },
  {
    path: 'support.nailing',
    serves: nailed,
    mattersLeftOut: () => true,
    values: deckNailing,
    usual: 3,
    source: '8d at 6 and 12 in of the model code up to ring shank nails of high-wind guidance',
    origin: 'common practice',
  },
  {
    path: 'support.fastening',
    serves: on('steel deck'),
    mattersLeftOut: () => true,
    values: () =>
      allowables.map((allowable) => ({
        text: `${allowable} allowable`,
        put: { allowable, source: 'supposed here, to see what it decides' },
      })),
    usual: 2,
    source: 'roof deck designed for 30 to 90 psf of uplift',
    origin: 'common practice',
  },
];
