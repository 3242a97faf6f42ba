/** Faults that show only when the job meets its roof and its shelf: unknown items, supports that do not fit, names no table knows. */

import { isKnownSheet } from '../connections/sheet-ply.ts';
import type { Job } from '../job/job.ts';
import { known, type Stated } from '../job/stated.ts';
import { specificGravityOf } from '../materials/wood-species.ts';
import type { Fault } from '../quantities/fault.ts';
import type { Roof } from '../roof/roof.ts';
import { supportLines } from '../roof/runs.ts';
import type { Item } from '../shelf/item.ts';
import { checkSize } from './check-size.ts';

export function checkReferences(job: Job, roof: Roof, items: readonly Item[]): Fault[] {
  const size = checkSize(job, roof);
  if (size.length > 0) return size;
  return [
    ...itemFaults(job, items),
    ...clipFaults(job, items),
    ...sheetFaults(job),
    ...speciesFaults(job),
    ...supportFaults(job, roof),
    ...planeFaults(job, roof),
  ];
}

function itemFaults(job: Job, items: readonly Item[]): Fault[] {
  const nailing = 'nailing' in job.support ? known(job.support.nailing) : undefined;
  const wanted: readonly (readonly [path: string, id: string | undefined, kinds: readonly Item['kind'][]])[] =
    [
      ['panel.clip', job.panel.clip, ['clip']],
      ['insulation.plate', job.insulation?.plate, ['plate']],
      ['support.nailing.nail', nailing?.nail, ['nail', 'screw']],
      ...job.overrides.map((one, i) => [`overrides.${i}.item`, one.item, ['screw', 'rivet']] as const),
    ];
  return wanted.flatMap(([path, id, kinds]) => {
    if (id === undefined) return [];
    const item = items.find((one) => one.id === id);
    if (!item)
      return [{ path, message: `"${id}" is not on the shelf; check the stock number${near(id, items)}` }];
    return kinds.includes(item.kind)
      ? []
      : [{ path, message: `"${id}" is a ${item.kind}; a ${kinds.join(' or ')} is wanted here` }];
  });
}

/** Seam heights nearer than this are the same, written in another unit; in inches. */
const SAME_SEAM = 1 / 32;

function clipFaults({ panel }: Job, items: readonly Item[]): Fault[] {
  const clip = items.find((item) => item.kind === 'clip' && item.id === panel.clip);
  if (clip?.kind !== 'clip' || panel.seamHeight === undefined) return [];
  if (Math.abs(clip.seamHeight - panel.seamHeight) <= SAME_SEAM) return [];
  const inches = (height: number) => `${Number(height.toFixed(3))} in`;
  return [
    {
      path: 'panel.clip',
      message: `"${clip.id}" is for a seam of ${inches(clip.seamHeight)}, the panel has one of ${inches(panel.seamHeight)}; name a clip of that height or mend panel.seamHeight`,
    },
  ];
}

function near(id: string, items: readonly Item[]): string {
  const alike = items.filter((item) => item.id.slice(0, 3) === id.slice(0, 3).toUpperCase()).slice(0, 3);
  return alike.length === 0 ? '' : `, such as ${alike.map((item) => item.id).join(', ')}`;
}

function sheetFaults(job: Job): Fault[] {
  const { panel, support } = job;
  const faults = sheetFault('panel', panel.metal, panel.thickness, panel.grade);
  if ('grade' in support) faults.push(...sheetFault('support', 'steel', support.thickness, support.grade));
  return faults;
}

function sheetFault(
  path: string,
  metal: Job['panel']['metal'],
  thickness: Stated<string>,
  grade: Stated<string>,
): Fault[] {
  return isKnownSheet(metal, known(thickness), known(grade)).map((fault) => ({
    path: `${path}.${fault.field}`,
    message: fault.message,
  }));
}

function speciesFaults(job: Job): Fault[] {
  const { support, details } = job;
  const named: (readonly [string, string | undefined])[] = [
    ['support.species', 'species' in support ? known(support.species) : undefined],
    [
      'support.nailing.framingSpecies',
      'nailing' in support ? known(support.nailing)?.framingSpecies : undefined,
    ],
    ['details.treatedSill.species', details.treatedSill?.species],
  ];
  return named.flatMap(([path, name]) =>
    name === undefined || specificGravityOf(name) !== undefined
      ? []
      : [
          {
            path,
            message: `"${name}" is no species of NDS Table 12.3.3A; name it as the grade stamp does, for example "SPF" or "Southern Pine"`,
          },
        ],
  );
}

function supportFaults({ support }: Job, roof: Roof): Fault[] {
  if (!('spacing' in support)) return [];
  return roof.planes
    .filter(
      (plane) => supportLines(plane, support.spacing, support.firstOffset, support.lastOffset) === undefined,
    )
    .map((plane) => ({
      path: 'support.firstOffset',
      message: `the first line lies beyond the top of plane "${plane.id}"; reduce the first or last offset`,
    }));
}

function planeFaults(job: Job, roof: Roof): Fault[] {
  const names = roof.planes.map((plane) => plane.id);
  return job.details.pipes.flatMap((pipe, i) =>
    names.includes(pipe.plane)
      ? []
      : [
          {
            path: `details.pipes.${i}.plane`,
            message: `"${pipe.plane}" is no plane of this roof; its planes are: ${names.join(', ')}`,
          },
        ],
  );
}
