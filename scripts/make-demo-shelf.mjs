// Writes demo/shelf.json: the shelf of an invented maker. Dimensions follow published standards (named beside each
// table); prices, weights, finishes, test reports and clip strengths are invented for the demos.
import { writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';

// Nominal and root diameters: ASME B18.6.4 spaced threads; bearing diameter of hex washer heads: least washer
// diameter of ASME B18.6.4. Shear and tension: mean shear and lowest tension of several published sets, as the
// framing associations' screw table uses them. Torsion: least torsional strength, SAE J78 (from memory).
// #14: diameter and root of ASME B18.6.1; its strengths are invented.
const sizes = {
  '#10': {
    d: 0.19,
    root: 0.135,
    hex: 0.384,
    hexHigh: 0.105,
    flat: 0.42,
    flatHigh: 0.075,
    shear: 1644,
    tension: 1158,
    torsion: 61,
  },
  '#12': {
    d: 0.216,
    root: 0.157,
    hex: 0.398,
    hexHigh: 0.139,
    flat: 0.46,
    flatHigh: 0.085,
    shear: 2330,
    tension: 2325,
    torsion: 92,
  },
  '#14': {
    d: 0.242,
    root: 0.196,
    hex: 0.48,
    hexHigh: 0.172,
    flat: 0.5,
    flatHigh: 0.095,
    shear: 2600,
    tension: 2900,
    torsion: 130,
  },
  '1/4': {
    d: 0.25,
    root: 0.185,
    hex: 0.48,
    hexHigh: 0.172,
    flat: 0.52,
    flatHigh: 0.095,
    shear: 3048,
    tension: 3201,
    torsion: 150,
  },
};
const strengthSource = (size) =>
  size === '#14'
    ? 'invented test report D-14, demonstration only'
    : 'framing associations, screw capacity table (mean shear, lowest tension of published sets)';

// Drill points: total metal they clear and how far the point stands beyond the last sheet, by screw size
// (trade page, published; point 4 and 5 from memory).
const drills = {
  1: { '#12': [0.02, 0.07, 0.2], '1/4': [0.024, 0.095, 0.22] },
  2: {
    '#10': [0.024, 0.1, 0.235],
    '#12': [0.024, 0.14, 0.283],
    '#14': [0.02, 0.1, 0.3],
    '1/4': [0.03, 0.175, 0.318],
  },
  3: {
    '#10': [0.09, 0.175, 0.3],
    '#12': [0.09, 0.21, 0.353],
    '#14': [0.09, 0.21, 0.36],
    '1/4': [0.09, 0.21, 0.393],
  },
  5: { '#12': [0.15, 0.5, 0.6], '1/4': [0.15, 0.5, 0.62] },
};
const DENSITY = 0.283; // lb/in³, steel

const finishes = {
  Z: { metal: 'carbon steel', coating: 'zinc electroplate', cost: 1, words: 'zinc plated' },
  K: {
    metal: 'carbon steel',
    coating: 'organic topcoat over zinc 1000 h',
    cost: 1.35,
    words: '1000 h coated',
  },
  H: { metal: 'carbon steel', coating: 'zinc-aluminium cast head', cost: 1.9, words: 'cast head' },
  G: { metal: 'carbon steel', coating: 'hot-dip zinc', cost: 1.5, words: 'hot-dip galvanized' },
  S: { metal: 'stainless 304', coating: 'none', cost: 2.9, words: '304 stainless' },
  M: { metal: 'stainless 316', coating: 'none', cost: 4.1, words: '316 stainless' },
  B: { metal: 'bi-metal 304', coating: 'none', cost: 3.8, words: 'bi-metal 304' },
};
const colours = ['bone white', 'slate grey', 'barn red', 'forest green', 'plain'];

const inches = (x) => `${Number(x.toFixed(4))} in`;
const fraction = (x) => {
  const whole = Math.floor(x);
  const eighths = Math.round((x - whole) * 8);
  const names = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
  return [whole || '', names[eighths]].filter(Boolean).join(' ');
};
const code = (x) => String(Math.round(x * 100)).padStart(3, '0');
const sizeCode = (size) => ({ '#10': '10', '#12': '12', '#14': '14', '1/4': '25' })[size];
const money = (x) => Number(x.toFixed(4));

/** The metal of a bonded washer follows the screw's. */
function washerOf(washer, { metal }) {
  if (!washer) return {};
  const disc = metal === 'carbon steel' ? 'galvanized steel' : 'stainless 304';
  return {
    washer: {
      metalDiameter: inches(washer.diameter),
      metalThickness: inches(washer.thick ?? 0.05),
      shape: 'domed',
      metal: disc,
      rubber: 'EPDM',
    },
  };
}

function screw({ family, size, tpi, length, thread, point, head, finish, washer, drive, price, tests = [] }) {
  const s = sizes[size];
  const f = finishes[finish];
  const drill = point.number ? drills[point.number][size] : undefined;
  // A bi-metal screw has a hardened tip that must pass the metal whole before the stainless thread holds.
  const tip = drill ? drill[2] + (finish === 'B' ? 0.06 : 0) : 1.1 * s.d;
  const full = thread === 'full' ? length : Math.min(thread, length);
  const flat = head === 'pancake' || head === 'low profile';
  const sized = size.startsWith('#') ? size.slice(1) : size;
  const words = [
    `${sized}-${tpi} x ${fraction(length)}`,
    head,
    point.number ? `drill point ${point.number}` : point.form,
    washer ? `${washer.diameter} in washer` : '',
    f.words,
  ]
    .filter(Boolean)
    .join(', ');
  return {
    kind: 'screw',
    id: `${family}${sizeCode(size)}-${code(length)}${finish}`,
    designation: words,
    metal: f.metal,
    coating: f.coating,
    colours: washer ? colours : [],
    pack: length > 4 ? 250 : 500,
    price: money((0.035 + 0.9 * s.d ** 2 * length + (washer ? 0.035 : 0)) * f.cost * (price ?? 1)),
    weight: `${Number((DENSITY * (Math.PI / 4) * ((s.d + s.root) / 2) ** 2 * length + 0.004).toFixed(5))} lbf`,
    tests,
    size,
    diameter: inches(s.d),
    rootDiameter: inches(s.root),
    threadsPerInch: `${tpi} tpi`,
    length: inches(length),
    threadLength: inches(full),
    point: {
      form: point.form,
      ...(point.number ? { number: point.number } : {}),
      length: inches(tip),
      drillsFrom: inches(drill?.[0] ?? 0),
      drillsTo: inches(drill?.[1] ?? point.pierces ?? 0.05),
    },
    head: {
      form: head,
      bearingDiameter: inches(flat ? s.flat : s.hex),
      height: inches(flat ? s.flatHigh : s.hexHigh),
    },
    ...washerOf(washer, f),
    drive,
    tension: { value: `${s.tension} lbf`, source: strengthSource(size) },
    shear: { value: `${s.shear} lbf`, source: strengthSource(size) },
    torsion: {
      value: `${s.torsion} lbf·in`,
      source:
        size === '#14' ? 'invented, demonstration only' : 'SAE J78, least torsional strength (from memory)',
    },
  };
}

const square2 = 'No. 2 square bit';
const square3 = 'No. 3 square bit';
const hex14 = '1/4 in hex socket';
const hex516 = '5/16 in hex socket';
const hex38 = '3/8 in hex socket';

/** Pull-out of number 10 screws in 15/32 in plywood, invented for the demonstration. */
const plyTest = (mean) => [
  {
    load: 'pull-out',
    substrate: 'plywood 15/32 in',
    n: 12,
    mean: `${mean} lbf`,
    coefficientOfVariation: 0.14,
    safetyFactor: 4,
    date: '2026-03-12',
    source: 'invented pull-out report D-031, 12 pulls, demonstration only',
  },
];

const items = [];
const add = (list) => items.push(...list);
const each = (lengths, marks, make) =>
  lengths.flatMap((length) => marks.map((finish) => make(length, finish)));

// Flat heads for clips and flanges, into wood: coarse thread, sharp point.
add(
  each([1, 1.25, 1.5, 2, 2.5, 3], ['Z', 'K', 'S'], (length, finish) =>
    screw({
      family: 'CW',
      size: '#10',
      tpi: 13,
      length,
      thread: 'full',
      point: { form: 'sharp', pierces: 0.036 },
      head: 'pancake',
      finish,
      drive: square2,
      tests: finish === 'K' && length === 1.5 ? plyTest(306) : [],
    }),
  ),
);
add(
  each([1.25, 1.5, 2, 3], ['K', 'S', 'M'], (length, finish) =>
    screw({
      family: 'CW',
      size: '#12',
      tpi: 11,
      length,
      thread: 'full',
      point: { form: 'type 17', pierces: 0.036 },
      head: 'pancake',
      finish,
      drive: square3,
    }),
  ),
);
add(
  each([2, 3], ['S'], (length, finish) =>
    screw({
      family: 'CW',
      size: '#14',
      tpi: 10,
      length,
      thread: 'full',
      point: { form: 'type 17', pierces: 0.036 },
      head: 'pancake',
      finish,
      drive: square3,
    }),
  ),
);
// Flat heads into light steel, medium thread, and into heavier steel, fine thread.
add(
  each([1, 1.25, 1.5, 2], ['Z', 'K', 'B'], (length, finish) =>
    screw({
      family: 'CS',
      size: '#10',
      tpi: 16,
      length,
      thread: 'full',
      point: { form: 'drill', number: 2 },
      head: 'pancake',
      finish,
      drive: square2,
    }),
  ),
);
add(
  each([1.25, 1.5, 2, 3], ['K', 'B'], (length, finish) =>
    screw({
      family: 'CS',
      size: '#12',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'drill', number: 2 },
      head: 'pancake',
      finish,
      drive: square3,
    }),
  ),
);
add(
  each([1.25, 1.5], ['K', 'B'], (length, finish) =>
    screw({
      family: 'CT',
      size: '#12',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'drill', number: 3 },
      head: 'pancake',
      finish,
      drive: square3,
    }),
  ),
);
add(
  each([1.25, 1.5, 2], ['K', 'B'], (length, finish) =>
    screw({
      family: 'CS',
      size: '1/4',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'drill', number: 2 },
      head: 'pancake',
      finish,
      drive: square3,
    }),
  ),
);
add(
  each([1.5, 2], ['K'], (length, finish) =>
    screw({
      family: 'CH',
      size: '#12',
      tpi: 24,
      length,
      thread: 'full',
      point: { form: 'drill', number: 5 },
      head: 'pancake',
      finish,
      drive: square3,
    }),
  ),
);
// Long screws through insulation into steel deck.
add(
  each([3, 4, 5, 6, 7, 8, 10], ['K', 'S'], (length, finish) =>
    screw({
      family: 'CI',
      size: '#14',
      tpi: 13,
      length,
      thread: 3,
      point: { form: 'drill', number: 2 },
      head: 'low profile',
      finish,
      drive: square3,
      price: 0.8,
    }),
  ),
);
// Washer heads, into wood.
add(
  each([1, 1.5, 2, 2.5, 3], ['K', 'H', 'S'], (length, finish) =>
    screw({
      family: 'PW',
      size: '#10',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'type 17', pierces: 0.036 },
      head: 'hex washer',
      finish,
      washer: { diameter: 0.5, thick: 0.04 },
      drive: hex14,
    }),
  ),
);
add(
  each([1.5, 2, 2.5, 3], ['K', 'G', 'S'], (length, finish) =>
    screw({
      family: 'PW',
      size: '#12',
      tpi: 11,
      length,
      thread: 'full',
      point: { form: 'type 17', pierces: 0.036 },
      head: 'hex washer',
      finish,
      washer: { diameter: 0.625 },
      drive: hex516,
    }),
  ),
);
add(
  each([2, 3], ['G', 'S'], (length, finish) =>
    screw({
      family: 'PW',
      size: '1/4',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'type 17', pierces: 0.036 },
      head: 'hex washer',
      finish,
      washer: { diameter: 0.75 },
      drive: hex38,
    }),
  ),
);
// Washer heads, into steel.
add(
  each([1, 1.25, 1.5, 2], ['K', 'H', 'B'], (length, finish) =>
    screw({
      family: 'PS',
      size: '#12',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'drill', number: 3 },
      head: 'hex washer',
      finish,
      washer: { diameter: 0.625 },
      drive: hex516,
    }),
  ),
);
add(
  each([1.25, 1.5], ['K', 'B'], (length, finish) =>
    screw({
      family: 'PL',
      size: '#12',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'drill', number: 2 },
      head: 'hex washer',
      finish,
      washer: { diameter: 0.625 },
      drive: hex516,
    }),
  ),
);
add(
  each([1.25, 1.5, 2], ['K', 'H', 'B'], (length, finish) =>
    screw({
      family: 'PS',
      size: '1/4',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'drill', number: 3 },
      head: 'hex washer',
      finish,
      washer: { diameter: 0.75 },
      drive: hex38,
    }),
  ),
);
add(
  each([1.5, 2], ['K', 'B'], (length, finish) =>
    screw({
      family: 'PH',
      size: '#12',
      tpi: 24,
      length,
      thread: 'full',
      point: { form: 'drill', number: 5 },
      head: 'hex washer',
      finish,
      washer: { diameter: 0.625 },
      drive: hex516,
    }),
  ),
);
// Lap screws: short, two sheets.
add(
  each([0.75], ['K', 'H', 'S'], (length, finish) =>
    screw({
      family: 'LS',
      size: '#12',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'drill', number: 1 },
      head: 'hex washer',
      finish,
      washer: { diameter: 0.5, thick: 0.04 },
      drive: hex516,
    }),
  ),
);
add(
  each([0.875], ['K', 'H', 'B', 'S'], (length, finish) =>
    screw({
      family: 'LS',
      size: '1/4',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'drill', number: 1 },
      head: 'hex washer',
      finish,
      washer: { diameter: 0.625 },
      drive: hex516,
    }),
  ),
);
// Brackets: washer head without rubber.
add(
  each([1.5, 2], ['K', 'S'], (length, finish) =>
    screw({
      family: 'BW',
      size: '#12',
      tpi: 11,
      length,
      thread: 'full',
      point: { form: 'type 17', pierces: 0.09 },
      head: 'round washer',
      finish,
      drive: square3,
    }),
  ),
);
add(
  each([1.25], ['K', 'B'], (length, finish) =>
    screw({
      family: 'BS',
      size: '#12',
      tpi: 14,
      length,
      thread: 'full',
      point: { form: 'drill', number: 2 },
      head: 'round washer',
      finish,
      drive: square3,
    }),
  ),
);

// Blind rivets: diameter in 1/32 in, greatest grip in 1/16 in. Holes and drills: US Army TM 10-5410-221-14-1
// (3/16 from memory). Strengths: IFI-114 minimum shear and tension (from memory).
const rivetSizes = {
  4: { d: 0.125, hole: [0.128, 0.132], drill: 'No. 30', head: 0.25 },
  5: { d: 0.15625, hole: [0.16, 0.164], drill: 'No. 20', head: 0.312 },
  6: { d: 0.1875, hole: [0.192, 0.196], drill: 'No. 11', head: 0.375 },
};
const rivetMetals = {
  A: {
    metal: 'aluminium',
    words: 'aluminium 5056',
    strength: { 4: [170, 220], 5: [260, 350], 6: [380, 500] },
    price: 0.05,
  },
  C: {
    metal: 'carbon steel',
    words: 'steel, zinc plated',
    coating: 'zinc electroplate',
    strength: { 4: [260, 310], 5: [370, 470], 6: [540, 680] },
    price: 0.055,
  },
  S: {
    metal: 'stainless 304',
    words: '304 stainless',
    strength: { 4: [420, 530], 5: [650, 820], 6: [950, 1200] },
    price: 0.14,
  },
};
for (const [mark, m] of Object.entries(rivetMetals))
  for (const [dia, grips] of [
    [4, [2, 3, 4]],
    [5, [3, 4]],
    [6, [4]],
  ])
    for (const grip of grips) {
      const r = rivetSizes[dia];
      const source = 'IFI-114 least strength (from memory)';
      items.push({
        kind: 'rivet',
        id: `RV${dia}${grip}${mark}`,
        designation: `blind rivet ${dia}-${grip}, ${m.words}`,
        metal: m.metal,
        coating: m.coating ?? 'none',
        colours,
        pack: 250,
        price: money(m.price * (0.7 + 0.1 * dia + 0.05 * grip)),
        weight: '0.004 lbf',
        diameter: inches(r.d),
        gripFrom: inches(grip === 2 ? 0.02 : grip === 3 ? 0.02 : (grip - 1) / 16),
        gripTo: inches(grip / 16),
        hole: { from: inches(r.hole[0]), to: inches(r.hole[1]), drill: r.drill },
        headDiameter: inches(r.head),
        sealed: true,
        shear: { value: `${m.strength[dia][0]} lbf`, source },
        tension: { value: `${m.strength[dia][1]} lbf`, source },
      });
    }

// Nails: NDS Table L4 (common) and ASTM F1667 roof sheathing ring shank; ring length of -01 from one drawing note.
for (const [id, words, shank, d, length, ring, head, finish] of [
  ['NC08', '8d common, 0.131 x 2 1/2', 'smooth', 0.131, 2.5, 0, 0.281, 'none'],
  ['NC10', '10d common, 0.148 x 3', 'smooth', 0.148, 3, 0, 0.312, 'none'],
  ['NC12', '12d common, 0.148 x 3 1/4', 'smooth', 0.148, 3.25, 0, 0.312, 'none'],
  ['NC16', '16d common, 0.162 x 3 1/2', 'smooth', 0.162, 3.5, 0, 0.344, 'none'],
  ['NR01', 'roof sheathing ring shank 0.113 x 2 3/8', 'ring', 0.113, 2.375, 1.5, 0.281, 'none'],
  ['NR03', 'roof sheathing ring shank 0.131 x 2 1/2', 'ring', 0.131, 2.5, 1.5, 0.281, 'none'],
  ['NR04', 'roof sheathing ring shank 0.120 x 3', 'ring', 0.12, 3, 1.5, 0.281, 'none'],
  [
    'NR03G',
    'roof sheathing ring shank 0.131 x 2 1/2, hot-dip galvanized',
    'ring',
    0.131,
    2.5,
    1.5,
    0.281,
    'hot-dip zinc',
  ],
])
  items.push({
    kind: 'nail',
    id,
    designation: words,
    metal: 'carbon steel',
    coating: finish,
    pack: 1000,
    price: money(0.012 + d * length * 0.02),
    weight: `${Number((DENSITY * (Math.PI / 4) * d * d * length).toFixed(5))} lbf`,
    shank,
    diameter: inches(d),
    length: inches(length),
    ringLength: inches(ring),
    headDiameter: inches(head),
  });

// Clips. Lever arms let the prying be computed; two clips leave them out on purpose. Strengths are invented.
for (const [id, words, form, height, base, metal, screws, sizesTaken, room, travel, lever, uplift, price] of [
  [
    'CL100F',
    'one-piece clip for 1 in seam',
    'one-piece',
    1,
    0.0346,
    'carbon steel',
    2,
    ['#10'],
    0.11,
    0,
    [0.35, 0.65],
    690,
    0.34,
  ],
  [
    'CL150F',
    'one-piece clip for 1 1/2 in seam',
    'one-piece',
    1.5,
    0.0451,
    'carbon steel',
    2,
    ['#10', '#12'],
    0.14,
    0,
    [0.4, 0.75],
    980,
    0.42,
  ],
  [
    'CL175T',
    'two-piece clip for 1 3/4 in seam',
    'two-piece',
    1.75,
    0.0566,
    'carbon steel',
    2,
    ['#10', '#12'],
    0.16,
    1.25,
    [0.45, 0.85],
    1180,
    0.86,
  ],
  [
    'CL175TS',
    'two-piece clip for 1 3/4 in seam, 304 stainless',
    'two-piece',
    1.75,
    0.05,
    'stainless 304',
    2,
    ['#10', '#12'],
    0.16,
    1.25,
    [0.45, 0.85],
    1240,
    1.92,
  ],
  [
    'CL200T',
    'two-piece clip for 2 in seam',
    'two-piece',
    2,
    0.0566,
    'carbon steel',
    2,
    ['#10', '#12', '1/4'],
    0.2,
    1.5,
    [0.5, 0.9],
    1320,
    0.95,
  ],
  [
    'CL200TW',
    'two-piece clip for 2 in seam, wide base',
    'two-piece',
    2,
    0.0713,
    'carbon steel',
    2,
    ['#10', '#12', '#14', '1/4'],
    0.2,
    1.5,
    [0.45, 1.4],
    1480,
    1.2,
  ],
  [
    'CL200TI',
    'two-piece clip for 2 in seam over insulation',
    'two-piece',
    2,
    0.0713,
    'carbon steel',
    2,
    ['#12', '#14'],
    0.25,
    1.5,
    [0.45, 1.4],
    1420,
    1.35,
  ],
  [
    'CL300T',
    'two-piece clip for 3 in seam',
    'two-piece',
    3,
    0.0713,
    'carbon steel',
    2,
    ['#12', '1/4'],
    0.3,
    2,
    undefined,
    1650,
    1.55,
  ],
  [
    'CL150S',
    'one-piece clip for 1 1/2 in seam, 304 stainless',
    'one-piece',
    1.5,
    0.04,
    'stainless 304',
    2,
    ['#10', '#12'],
    0.14,
    0,
    [0.4, 0.75],
    1020,
    1.1,
  ],
  [
    'CL100C',
    'cleat for 1 in double-lock seam, copper',
    'one-piece',
    1,
    0.0216,
    'copper',
    2,
    ['#10'],
    0.11,
    0,
    undefined,
    undefined,
    0.9,
  ],
])
  items.push({
    kind: 'clip',
    id,
    designation: words,
    metal,
    coating: metal === 'carbon steel' ? 'hot-dip zinc' : 'none',
    pack: 100,
    price,
    weight: `${Number((0.05 + base * 1.2).toFixed(3))} lbf`,
    form,
    seamHeight: inches(height),
    baseThickness: inches(base),
    tensileStrength: metal === 'carbon steel' ? '65000 psi' : metal === 'copper' ? '32000 psi' : '75000 psi',
    screws,
    screwSize: sizesTaken,
    headRoom: inches(room),
    travel: inches(travel),
    ...(lever ? { lever: { seamToScrew: inches(lever[0]), screwToToe: inches(lever[1]) } } : {}),
    ...(uplift
      ? {
          uplift: {
            value: `${uplift} lbf`,
            source: `invented clip test report D-C${id.slice(2)}, mean of 3, demonstration only`,
          },
          upliftSafetyFactor: 2.5,
          upliftCoversBase: metal !== 'carbon steel',
        }
      : {}),
  });

for (const [id, length, width, t, price] of [
  ['BP44', 4, 4, 0.0346, 0.45],
  ['BP46', 4, 6, 0.0451, 0.62],
  ['BP68', 6, 8, 0.0451, 0.95],
])
  items.push({
    kind: 'plate',
    id,
    designation: `bearing plate ${length} x ${width}, punched`,
    metal: 'galvanized steel',
    coating: 'hot-dip zinc',
    pack: 100,
    price,
    weight: `${Number((length * width * t * DENSITY).toFixed(4))} lbf`,
    size: { length: inches(length), width: inches(width) },
    thickness: inches(t),
    tensileStrength: '45000 psi',
  });

for (const [id, hole, diameter] of [
  ['WB12', 0.25, 0.5],
  ['WB34', 0.25, 0.75],
])
  items.push({
    kind: 'washer',
    id,
    designation: `bonded EPDM washer, ${fraction(diameter)} in`,
    metal: 'stainless 304',
    coating: 'none',
    pack: 250,
    price: 0.06,
    weight: '0.003 lbf',
    hole: inches(hole),
    washer: {
      metalDiameter: inches(diameter),
      metalThickness: '0.05 in',
      shape: 'domed',
      metal: 'stainless 304',
      rubber: 'EPDM',
    },
  });

for (const [id, drive, price] of [
  ['BT2', square2, 1.2],
  ['BT3', square3, 1.3],
  ['BH14', hex14, 3.4],
  ['BH516', hex516, 3.4],
  ['BH38', hex38, 3.9],
])
  items.push({
    kind: 'bit',
    id,
    designation: drive,
    metal: 'carbon steel',
    coating: 'none',
    pack: 1,
    price,
    weight: '0.05 lbf',
    drives: drive,
  });

export const demoShelf = {
  schema: 'deckbite/shelf/1',
  name: 'Demonstration shelf of an invented maker',
  edition: 1,
  date: '2026-11-02',
  currency: 'USD',
  note: 'Invented for demonstration. Dimensions follow published standards; prices, clip strengths and test reports are made up and prove nothing on a real roof.',
  items,
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const path = fileURLToPath(new URL('../demo/shelf.json', import.meta.url));
  const rows = items.map((item) => `    ${JSON.stringify(item)}`).join(',\n');
  const { items: _, ...head } = demoShelf;
  writeFileSync(path, `${JSON.stringify(head, null, 2).slice(0, -2)},\n  "items": [\n${rows}\n  ]\n}\n`);
  console.log(`${items.length} items written to demo/shelf.json`);
}
