/** Ten thousand readings of written descriptions: short ones, long ones, and text that is none. */
import { readDesignation } from '../src/shelf/designation/read-designation.ts';
import { median, report } from './timing.ts';

const COUNT = 10_000;
const short = ['10-13 x 1', '#10-16 x 1 1/2 pancake', 'M5.5x25', '8d common', 'rivet 4-3', '1/4 x 3 lag'];
const long = [
  '500 pcs 12-14 x 1-1/2" HWH SDS #3 5/16 hex, 304 SS, w/ 5/8 bonded EPDM washer, painted barn red',
  'tornillo autoperforante 1/4-14 x 7/8 cabeza hexagonal con rondana de neopreno galvanizado en caliente',
  '#10-13 x 1 1/2 in, pancake head, sharp point, No. 2 square bit, carbon steel, zinc electroplate',
];
const none = ['the roof of the boathouse leaks near the chimney', '1-1-1-1-1-1-1-1/1/1/1x1x1x1', '        '];

const readAll =
  (texts: readonly string[]): (() => number) =>
  () => {
    let sum = 0;
    for (let i = 0; i < COUNT; i++) {
      const read = readDesignation(texts[i % texts.length] as string);
      sum += (read.fields.length_in?.value ?? 0) + read.doubts.length + read.leftovers.length;
    }
    return sum;
  };

report(
  'reading 10,000 designations',
  (
    [
      ['short', short],
      ['long', long],
      ['no designation at all', none],
    ] as const
  ).map(([name, texts]) => {
    const timing = median(readAll(texts), 5);
    return [name, timing, `${((timing.ms * 1000) / COUNT).toFixed(1)} µs each`];
  }),
);
