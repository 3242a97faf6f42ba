/** What every link may look at: the editions in force, the method, the place, and the parts already decided. */
import type { Parts } from '../connections/build-ups.ts';
import type { Basis } from '../job/basis.ts';
import type { Job } from '../job/job.ts';
import { known } from '../job/stated.ts';
import type { Item } from '../shelf/item.ts';
import { adm2010 } from '../standards/adm-2010/edition.ts';
import type { AluminiumEdition } from '../standards/adm-2015/aluminium-edition.ts';
import { adm2015 } from '../standards/adm-2015/edition.ts';
import { aisiS10016 } from '../standards/aisi-s100-16/edition.ts';
import { aisiS10016S322 } from '../standards/aisi-s100-16-s3-22/edition.ts';
import type { ScrewEdition } from '../standards/aisi-s100-common/screw-edition.ts';
import { nds2018 } from '../standards/nds-2018/edition.ts';
import { nds2024 } from '../standards/nds-2024/edition.ts';
import type { WoodEdition } from '../standards/nds-common/wood-edition.ts';
import type { Surroundings } from './metal-rules.ts';

export interface LinkContext {
  readonly method: 'ASD' | 'LRFD';
  readonly steel: ScrewEdition;
  readonly wood: WoodEdition;
  readonly aluminium: AluminiumEdition;
  readonly surroundings: Surroundings;
  readonly parts: Parts;
  readonly support: Job['support'];
  readonly items: readonly Item[];
  readonly insulation: Job['insulation'];
  readonly roofSnow_psf: number | undefined;
  readonly snowAsked: boolean;
}

const steels = { 'AISI S100-16': aisiS10016, 'AISI S100-16 w/S3-22': aisiS10016S322 } as const;
const woods = { 'NDS 2018': nds2018, 'NDS 2024': nds2024 } as const;
const aluminiums = { 'ADM 2010': adm2010, 'ADM 2015': adm2015 } as const;

export function linkContext(job: Job, basis: Basis, parts: Parts, items: readonly Item[]): LinkContext {
  return {
    method: basis.method,
    steel: steels[basis.steel],
    wood: woods[basis.wood],
    aluminium: aluminiums[basis.aluminium],
    surroundings: surroundingsOf(job),
    parts,
    support: job.support,
    items,
    insulation: job.insulation,
    roofSnow_psf: known(job.roofSnow),
    snowAsked: job.roofSnow?.standing === 'asked',
  };
}

export const surroundingsOf = ({ place }: Job): Surroundings => ({
  saltWater_ft: known(place.saltWater),
  place: place.surroundings,
});
