/** Heads, points and drives, English and Spanish. Common practice, no source, unless a standard is named. */
import { of, type Row } from './sense.ts';

export const heads: readonly Row[] = [
  ['pancake head|pancake hd|pancake', of('head', 'pancake', 'pancake head: thin, flat underneath')],
  ['wafer head|wafer hd|wafer', of('head', 'wafer', 'wafer head: thin and wide')],
  ['low profile head|low profile|lo profile|perfil bajo', of('head', 'low profile', 'low-profile head')],
  [
    'hex washer head|hex washer hd|hex washer|hwh|h w h|hw hd|hw head|hw|hexagonal con rondana integrada',
    of('head', 'hex washer', 'hex head with a washer face made in one with it'),
  ],
  ['round washer head|round washer', of('head', 'round washer', 'round head with a washer face')],
  ['hex head|hex hd|hh|hexagonal|cabeza hexagonal|hex', of('head', 'hex', 'plain hex head')],
  [
    'flat head|flat hd|flathead|fh|flat|countersunk|csk|avellanada|avellanado|cabeza plana|plana',
    of('head', 'flat', 'flat countersunk head'),
  ],
  ['pan head|pan hd|panhead|pan', of('head', 'pan', 'pan head')],
  [
    'ph',
    of('head', 'pan', 'pan head', {
      doubt: '"PH": pan head, pancake head, or a cross recess whose number is not given; pan head is taken',
    }),
  ],
  [
    'modified truss head|modified truss|truss head|truss hd|truss',
    of('head', 'truss', 'truss head: wide and low'),
  ],
  ['oval head|oval hd|oval', of('head', 'oval', 'oval countersunk head')],
  ['round head|round hd|rh', of('head', 'round', 'round head')],
  ['button head|button', of('head', 'button', 'button head')],
  ['bugle head|bugle', of('head', 'bugle', 'bugle head')],
  ['trim head', of('head', 'trim', 'trim head: small')],
  [
    'dome head|domed head|dome|cabeza abombada',
    of('head', 'dome', 'domed head, the usual one of a blind rivet'),
  ],
  ['large flange head|large flange', of('head', 'large flange', 'wide flange under the head')],
  [
    'washer head',
    of('head', 'round washer', 'head with a washer face', {
      doubt: '"washer head" does not say whether it is hex or round; round is taken',
    }),
  ],
];

export const points: readonly Row[] = [
  [
    'self drilling|self driller|self drillers|selfdrilling|self drill|sds|sd|drill point|drill pt|drillpoint|drilling|dp|autoperforante|autoperforantes|autotaladrante|autotaladrantes|punta de broca|punta broca',
    of('pointForm', 'drill', 'drills its own hole', { kind: 'screw' }),
  ],
  [
    'type 17 point|type 17|type17|t 17|tipo 17|punta tipo 17',
    of('pointForm', 'type 17', 'type 17: a cut in the point clears wood chips', { kind: 'screw' }),
  ],
  [
    'sharp point|sharp pt|sharp|needle point|needle|piercing point|self piercing|punta aguda|punta de aguja|punta fina',
    of('pointForm', 'sharp', 'sharp point: pierces, does not drill', { kind: 'screw' }),
  ],
  ['gimlet point|gimlet|type a', of('pointForm', 'gimlet', 'gimlet point', { kind: 'screw' })],
  ['chip free point|chip free', of('pointForm', 'chip-free', 'point that makes no chips', { kind: 'screw' })],
];

export const drives: readonly Row[] = [
  [
    'square drive|square recess|square bit|square|cuadrada|cuadrado|sq|sq drive',
    of('drive', 'square bit', 'square recess, number not given'),
  ],
  [
    'six lobe drive|six lobe|star drive|star',
    of('drive', 'six-lobe bit', 'six-lobe recess (ISO 10664), number not given'),
  ],
  [
    'cross recess|cross recessed|cruz',
    of('drive', 'cross recess bit', 'cross recess (ISO 4757), number not given'),
  ],
  ['slotted|slot|ranurada', of('drive', 'slotted', 'slot for a blade')],
  ['hex socket|hex drive|hex bit', of('drive', 'hex socket', 'hex socket, width not given')],
];
