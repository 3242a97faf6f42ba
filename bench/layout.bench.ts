/** A million clips on one large plane with five zones: time, and the memory the columns take. */
import { roofInput } from '../src/job/roof-input.ts';
import { layField } from '../src/layout/lay-field.ts';
import { planeZones } from '../src/layout/line-stretches.ts';
import { buildRoof } from '../src/roof/build-roof.ts';
import { cutZones } from '../src/roof/cut-zones.ts';
import type { Plane } from '../src/roof/roof.ts';
import { upLines } from '../src/roof/runs.ts';
import { asce722 } from '../src/standards/asce-7-22/roof-wind.ts';
import { best, report } from './timing.ts';

const built = buildRoof(
  roofInput.parse({
    form: 'monoslope',
    length: '1150 ft',
    width: '1150 ft',
    slope: '1:12',
    eaveHeight: '30 ft',
  }),
);
if (!built.ok) throw new Error('no roof');
const plane = built.roof.planes[0] as Plane;
const names = asce722.zones('30.3-5A');
const pieces = cutZones(built.roof, () => asce722.zoneRules('30.3-5A'), { a: 30 * 12, h: 30 * 12 }).map(
  (piece) => ({ ...piece, index: names.indexOf(piece.zone) }),
);
const zones = planeZones(plane, pieces);
const spacings = [12.5, 12, 9, 9, 6];

function layOutMillion(): number {
  const lines = upLines(plane, 16, 0);
  const set = layField({
    connection: 'clips',
    plane,
    zones,
    lines,
    spacingOf: (zone) => spacings[zone] as number,
    eachOf: () => 2,
    ends: { first: 3, last: 3 },
    supports: undefined,
    endFactor: 1,
  });
  return set.count;
}

globalThis.gc?.();
const before = process.memoryUsage();
const count = layOutMillion();
const after = process.memoryUsage();
const peak = (after.arrayBuffers + after.heapUsed - before.arrayBuffers - before.heapUsed) / 1e6;
report(`layout of ${count.toLocaleString('en')} clips`, [
  [
    'one plane, five zones',
    best(layOutMillion, 7),
    `(at most 300 ms); ${peak.toFixed(0)} MB more in memory right after (at most 200)`,
  ],
]);
