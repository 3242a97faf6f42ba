/** Faults of sizes that no roof has: most often a slip of the unit, and they would stall the layout. */
import type { Job } from '../job/job.ts';
import type { Fault } from '../quantities/fault.ts';
import type { Roof } from '../roof/roof.ts';

const MOST_SQUARE_FEET = 2_000_000;
const MOST_FASTENERS = 3_000_000;
/** Closest spacing the choice tries where nothing else sets one, in inches. */
const CLOSEST = 3;

export function checkSize(job: Job, roof: Roof): Fault[] {
  const area = roof.planes.reduce((sum, plane) => sum + plane.slopeArea_ft2, 0);
  if (area > MOST_SQUARE_FEET)
    return [
      {
        path: 'roof',
        message: `measures ${whole(area)} square feet; at most ${whole(MOST_SQUARE_FEET)} are taken, check the units or divide the roof`,
      },
    ];
  const pitch = job.panel.ribSpacing ?? job.panel.coverage;
  const [path, spacing] = closest(job);
  const fasteners = (area * 144) / (pitch * spacing);
  if (fasteners <= MOST_FASTENERS) return [];
  return [
    {
      path,
      message: `${whole(area)} square feet with a fastener every ${short(pitch)} by ${short(spacing)} in would take about ${whole(fasteners)}; at most ${whole(MOST_FASTENERS)} are laid out, widen the spacing or divide the roof`,
    },
  ];
}

/** The closest spacing up the slope that this job can come to, and the field that sets it. */
function closest({ support, overrides, spacingCap }: Job): readonly [path: string, spacing: number] {
  if ('spacing' in support) return ['support.spacing', support.spacing];
  const own = overrides.flatMap(({ spacing }, i) =>
    spacing === undefined ? [] : [[`overrides.${i}.spacing`, spacing as number] as const],
  );
  const cap = spacingCap === undefined ? [] : [['spacingCap', spacingCap as number] as const];
  return [['roof', CLOSEST] as const, ...cap, ...own].reduce((a, b) => (b[1] < a[1] ? b : a));
}

const whole = (value: number): string => Math.round(value).toLocaleString('en-US');
const short = (value: number): string => String(Number(value.toFixed(2)));
