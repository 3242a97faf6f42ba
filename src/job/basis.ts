/** The design basis of a job: editions fixed by the code year unless one is named, and the method. */
import type { Job } from './job.ts';
import { known } from './stated.ts';

type Editions = Pick<Job['basis'], 'wind' | 'steel' | 'wood' | 'aluminium'>;

export interface Basis {
  readonly codeYear: string | undefined;
  readonly method: 'ASD' | 'LRFD';
  readonly wind: NonNullable<Editions['wind']>;
  readonly steel: NonNullable<Editions['steel']>;
  readonly wood: NonNullable<Editions['wood']>;
  readonly aluminium: NonNullable<Editions['aluminium']>;
  /** Roof dead load deducted from uplift, psf, and its factor; nothing unless asked. */
  readonly deadLoad: { readonly load_psf: number; readonly factor: number } | undefined;
  /** Standards whose edition hangs on a code year that is not known yet. */
  readonly undecided: readonly string[];
  readonly remarks: readonly string[];
}

/** Referenced standards by code year (recalled: verify against the adopted code). */
const byYear = {
  'IBC 2018': { wind: 'ASCE 7-16', steel: 'AISI S100-16', wood: 'NDS 2018', aluminium: 'ADM 2015' },
  'IBC 2021': { wind: 'ASCE 7-16', steel: 'AISI S100-16', wood: 'NDS 2018', aluminium: 'ADM 2015' },
  'IBC 2024': { wind: 'ASCE 7-22', steel: 'AISI S100-16 w/S3-22', wood: 'NDS 2024', aluminium: 'ADM 2015' },
} as const;

export function basisOf({ basis }: Job): Basis {
  const year = known(basis.codeYear);
  const fixed = byYear[year ?? 'IBC 2024'];
  const named = (['wind', 'steel', 'wood', 'aluminium'] as const).filter(
    (part) => basis[part] !== undefined && basis[part] !== fixed[part],
  );
  const remarks = named.map(
    (part) => `${basis[part]} is named in the job; ${year ?? 'IBC 2024'} refers to ${fixed[part]}.`,
  );
  if (year === undefined)
    remarks.push('The code year is not known yet; the newest editions here are used until it is.');
  const open = (['wind', 'steel', 'wood', 'aluminium'] as const).filter((part) => basis[part] === undefined);
  return {
    codeYear: year,
    method: basis.method,
    wind: basis.wind ?? fixed.wind,
    steel: basis.steel ?? fixed.steel,
    wood: basis.wood ?? fixed.wood,
    aluminium: basis.aluminium ?? fixed.aluminium,
    deadLoad:
      basis.deductDeadLoad === undefined
        ? undefined
        : { load_psf: basis.deductDeadLoad, factor: basis.method === 'ASD' ? 0.6 : 0.9 },
    undecided: year === undefined ? open : [],
    remarks,
  };
}
