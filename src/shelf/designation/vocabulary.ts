/** The trade's words, English and Spanish, and what each means. Common practice, no source, unless a standard is named. */
import { coatings, metals } from './finish-words.ts';
import { drives, heads, points } from './form-words.ts';
import { kind, of, type Row } from './sense.ts';

const kinds: readonly Row[] = [
  ['screw|screws|tornillo|tornillos|pija|pijas', kind('screw')],
  ['nail|nails|clavo|clavos', kind('nail')],
  ['blind rivet|blind rivets|rivet|rivets|remache|remaches|remache ciego|remaches ciegos', kind('rivet')],
  ['bolt|bolts|machine bolt|carriage bolt|perno|pernos', kind('bolt')],
];

const duties: readonly Row[] = [
  [
    'lag|lags|lag screw|lag screws|lag bolt|lag bolts|tirafondo|tirafondos',
    of('duty', 'lag', 'a lag screw, for wood', { kind: 'screw' }),
  ],
  [
    'woodscrew|woodscrews|wood screw|wood screws|woodgrip|metal to wood|pija para madera|para madera|madera',
    of('duty', 'wood', 'a screw for wood', { kind: 'screw' }),
  ],
  [
    'stitch|stitch screw|stitch screws|lap screw|lap screws|side lap|traslape',
    of('duty', 'stitch', 'joins sheet to sheet at laps', { kind: 'screw' }),
  ],
  [
    'metal to metal|sheet metal screw|sheet metal screws|sheet metal',
    of('duty', 'steel', 'a screw for steel', { kind: 'screw' }),
  ],
  [
    'machine screw|machine screws|csd',
    of('thread', 'machine', 'machine-screw thread (type CSD when it drills, ASME B18.6.4)', {
      kind: 'screw',
    }),
  ],
  [
    'bsd',
    of('thread', 'spaced', 'spaced thread with a drill point (type BSD, ASME B18.6.4)', { kind: 'screw' }),
  ],
  [
    'type ab|ab',
    of('pointForm', 'gimlet', 'type AB (ASME B18.6.4): spaced thread to a gimlet point', { kind: 'screw' }),
  ],
  [
    'self tapping|self tapper|self tappers|selftapping|autorroscante|autorroscantes',
    {
      kind: 'screw',
      means: 'cuts its own thread',
      doubt: 'it cuts its own thread, but whether it drills its own hole is not said',
    },
  ],
];

const nailWords: readonly Row[] = [
  ['common|comun', of('nailType', 'common', 'common wire nail', { kind: 'nail' })],
  ['box', of('nailType', 'box', 'box nail: thinner than a common nail', { kind: 'nail' })],
  [
    'sinker|sinkers',
    of('nailType', 'sinker', 'sinker: thinner and shorter than a common nail', { kind: 'nail' }),
  ],
  ['cooler|coolers', of('nailType', 'cooler', 'cooler nail', { kind: 'nail' })],
  [
    'roofing nail|roofing nails|clavo para techo',
    of('nailType', 'roofing', 'roofing nail: wide head', { kind: 'nail' }),
  ],
  [
    'roof sheathing ring shank|roof sheathing ring shank nail|rsrs',
    of('shank', 'ring', 'roof sheathing ring-shank nail (ASTM F1667)', { kind: 'nail' }),
  ],
  [
    'ring shank|ring shanked|ringshank|ring|rs|annular|annular ring|anillado|anillados',
    of('shank', 'ring', 'ring shank: holds better against withdrawal', { kind: 'nail' }),
  ],
  ['screw shank|spiral shank|spiral|helicoidal', of('shank', 'screw', 'spiral shank', { kind: 'nail' })],
  ['smooth shank|smooth|liso|lisos', of('shank', 'smooth', 'smooth shank', { kind: 'nail' })],
];

const rivetWords: readonly Row[] = [
  [
    'sealed|sealing|closed end|closed-end|waterproof|watertight|estanco|sellado',
    of('sealed', 'yes', 'closed end: no hole for water', { kind: 'rivet' }),
  ],
  [
    'open end|open type|unsealed|abierto',
    of('sealed', 'no', 'open end: lets water through', { kind: 'rivet' }),
  ],
];

export const vocabulary: readonly Row[] = [
  ...kinds,
  ...duties,
  ...heads,
  ...points,
  ...metals,
  ...coatings,
  ...nailWords,
  ...rivetWords,
  ...drives,
];

/** Words that carry no meaning of their own here and may be passed over. */
export const fillers: ReadonlySet<string> = new Set(
  'x w with con c and y e of de del the a an for para in on en por by type tipo head heads hd cabeza point pt punta tip drive bit socket finish acabado colour color long lg largo length dia diam diameter nominal shank body each ea size to dr cab'.split(
    ' ',
  ),
);
