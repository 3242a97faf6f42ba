/** Metals, coatings and colours, English and Spanish. Common practice, no source, unless a standard is named. */
import { of, type Row } from './sense.ts';

const gradeOf = (grade: string, more: string): Row => {
  const words = [
    'stainless steel',
    'stainless',
    'ss',
    'inox',
    'acero inoxidable',
    'inoxidable',
    'type',
    'grade',
  ];
  const both = words.flatMap((word) =>
    word === 'type' || word === 'grade'
      ? [`${word} ${grade}`, `${word} ${grade} ss`, `${word} ${grade} stainless`]
      : [`${word} ${grade}`, `${grade} ${word}`],
  );
  return [
    [...both, grade, ...more.split('|').filter(Boolean)].join('|'),
    of('metal', `stainless ${grade}`, `stainless steel, grade ${grade}`),
  ];
};

export const metals: readonly Row[] = [
  gradeOf('304', 'a2'),
  gradeOf('316', 'a4|316l|ss 316l|316l ss'),
  gradeOf('410', ''),
  [
    'bi metal 304|bimetal 304|304 bi metal|304 bimetal',
    of('metal', 'bi-metal 304', 'body of stainless 304, point of carbon steel'),
  ],
  [
    'bi metal|bimetal|bimetalico',
    of('metal', 'bi-metal 304', 'stainless body, point of carbon steel', {
      doubt: 'bi-metal: which stainless the body is of is not said; 304 is taken',
    }),
  ],
  [
    '18 8 stainless steel|18 8 stainless|18 8 ss|18 8',
    of('metal', 'stainless 304', 'stainless with about 18 % chromium and 8 % nickel', {
      doubt: '"18-8" is a family of stainless steels; 304 is taken',
    }),
  ],
  [
    'stainless steel|stainless|ss|inox|acero inox|acero inoxidable|inoxidable',
    of('metal', 'stainless', 'stainless steel', {
      doubt: 'stainless, but the grade is not said: 304, 316 and 410 do not stand the same weather',
    }),
  ],
  ['carbon steel|steel|acero|acero al carbon', of('metal', 'carbon steel', 'carbon steel')],
  [
    'galvanized steel|galvanised steel|acero galvanizado',
    of('metal', 'galvanized steel', 'galvanized steel'),
  ],
  [
    'aluminium zinc coated steel',
    of('metal', 'aluminium-zinc coated steel', 'steel with an aluminium-zinc coat'),
  ],
  ...['5050', '5052', '5056', '5154'].map(
    (alloy): Row => [
      `aluminium ${alloy}|aluminum ${alloy}|${alloy} aluminium|${alloy} aluminum|alum ${alloy}|al ${alloy}|${alloy} alum`,
      of('metal', 'aluminium', `aluminium, alloy ${alloy}`),
    ],
  ),
  ['aluminium|aluminum|alum|alu|al|aluminio', of('metal', 'aluminium', 'aluminium')],
  ['copper|cobre', of('metal', 'copper', 'copper')],
  ['solid zinc', of('metal', 'zinc', 'zinc throughout')],
  ['brass|laton', of('metal', 'brass', 'brass')],
];

const processOpen =
  'galvanized, but the process is not said: hot-dip, mechanical and electroplated zinc differ many times over in thickness';
export const coatings: readonly Row[] = [
  ['uncoated|no coating|plain finish|bright|bright finish', of('coating', 'none', 'no coating')],
  [
    'zinc electroplate|zinc electroplated|electroplated zinc|zinc plated|zinc plate|zinc|zp|zn|zinc clear|clear zinc|yellow zinc|electrogalvanized|electro galvanized|eg|zincado|cincado|zincada|electrozincado',
    of('coating', 'zinc electroplate', 'electroplated zinc: thin, for dry places'),
  ],
  [
    'mechanical zinc class 55|mechanically galvanized|mechanical galvanized|mech galv|mechanical zinc|class 55',
    of('coating', 'mechanical zinc class 55', 'mechanically deposited zinc, class 55 (ASTM B695)'),
  ],
  [
    'hot dip zinc|hot dip galvanized|hot dipped galvanized|hot dip galvanised|hot dipped|hot dip galv|hot dipped galv|hot dip|hdg|hd galv|galvanizado en caliente|galvanizada en caliente|galvanizado por inmersion',
    of('coating', 'hot-dip zinc', 'hot-dip zinc: thick'),
  ],
  [
    'galv|galvanized|galvanised|galvanizado|galvanizada|galvanizados',
    of('coating', 'galvanized', 'zinc coated, process not said', { doubt: processOpen }),
  ],
  [
    'zinc flake 1000 h|zinc flake 1000 hour',
    of('coating', 'zinc flake 1000 h', 'zinc flake, 1000 hours of salt spray'),
  ],
  [
    'organic topcoat over zinc 1000 h|organic topcoat over zinc|1000 h coated|1000 hour coated|1000 hr coated|1000 h coating|1000 hour coating|1000 hr|1000 hour',
    of('coating', 'organic topcoat over zinc 1000 h', 'organic topcoat over zinc, 1000 hours of salt spray'),
  ],
  [
    'zinc aluminium cast head|zinc aluminum cast head|cast head|zamac head',
    of('coating', 'zinc-aluminium cast head', 'head cast of zinc-aluminium over the screw'),
  ],
  ['painted|prepainted|paint|pintado|pintada|pintados', of('coating', 'painted', 'painted')],
];

/** Paint colours, with the shades that stand before them. */
export const colours =
  'white|black|brown|red|green|blue|grey|gray|tan|beige|cream|ivory|charcoal|almond|burgundy|yellow|orange|bronze|silver|clay|stone|sand|blanco|negro|rojo|verde|azul|gris|cafe|marron';
export const shades =
  'bone|slate|barn|forest|light|dark|medium|bright|deep|pale|ash|ocean|royal|snow|matte|gloss|hunter|desert|sky|brick|navy';
