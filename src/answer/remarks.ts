/** What a reader must know before using an answer: readings taken, conflicts of guidance, doubts of evidence. */
import type { Design } from '../choose/design.ts';
import type { ConnectionChoice } from '../choose/schedule.ts';
import { known } from '../job/stated.ts';
import { SALT_LINE_FT } from '../links/metal-rules.ts';

export function remarksOf(
  { basis, roof, field, job, parts }: Design,
  choices: readonly ConnectionChoice[],
): string[] {
  const ofChain = choices.flatMap((choice) => [
    ...choice.conflicts,
    ...choice.lines.flatMap((line) => line.checks.flatMap((check) => check.capacity.remarks)),
  ]);
  const own = [...basis.remarks, ...roof.readings, ...field.readings];
  if (basis.deadLoad)
    own.push(
      `${basis.deadLoad.factor} of a dead load of ${basis.deadLoad.load_psf} psf is deducted from uplift, as the job asks.`,
    );
  if (job.panel.system === 'standing seam on clips' && job.panel.clip === undefined)
    own.push(
      parts.clip
        ? `No clip is named; ${parts.clip.id} is the cheapest on the shelf for this seam.`
        : 'No clip is named and none on the shelf fits the seam; every link of the clip is unproven.',
    );
  own.push(...notChecked(job, roof));
  if (known(job.place.saltWater) === undefined)
    own.push(
      `The distance to salt water is not known: metals are judged as inland; within ${SALT_LINE_FT} ft other items would be asked for.`,
    );
  for (const override of job.overrides)
    own.push(
      `Changed by hand: ${override.connection}${override.zone ? `, zone ${override.zone}` : ''}: ${override.because}`,
    );
  return [...new Set([...own, ...ofChain])];
}

/** What a reader could think is proved here and is not. */
function notChecked(job: Design['job'], roof: Design['roof']): string[] {
  const list = [
    'Not checked here: loads on the frame, shear on the fasteners, drag of slope and snow on the fixed line, thermal movement, pull-over under rivet heads. The fixed line of floating panels must be designed by others.',
  ];
  const broken = roof.planes.some(
    (plane) => plane.openings.length > 0 || plane.edges.some(({ tag }) => tag === 'hip' || tag === 'valley'),
  );
  if ('spacing' in job.support && broken)
    list.push(
      'Runs that end between supports at hips, valleys and openings are fastened at their ends too: framing must be there to take those fasteners.',
    );
  return list;
}
