/** ADM 2010: the screw provisions as one object that hands out available strengths. */
import { isRefusal } from '../../trace/refusal.ts';
import type { AluminiumEdition } from '../adm-2015/aluminium-edition.ts';
import { machineThread } from '../adm-2015/j.5.5.1-pull-out-unc.ts';
import { available } from './available.ts';
import { pullOver } from './j.5.5.2-pull-over.ts';
import {
  minimumEdgeDistance,
  minimumSpacing,
  pullOutSpaced,
  pullOutUNC,
  screwStrength,
  shear,
} from './j.5-same-as-2015.ts';
import { document } from './nominal.ts';

export const adm2010: AluminiumEdition = {
  name: document.name,
  pullOut: ({ D, n, Le, Fty2, Ftu2 }, method, trace) => {
    const thread = machineThread(D, n);
    const nominal = thread
      ? pullOutUNC({ thread, Le, Fty2, Ftu2 }, trace)
      : pullOutSpaced({ D, n, Le, Fty2, Ftu2 }, trace);
    return isRefusal(nominal) ? nominal : available(nominal, method, trace);
  },
  pullOver: ({ place = 'crest', t1, Dw, Dh, Ftu1 }, method, trace) => {
    const nominal = pullOver({ place, t1, Dws: Dw, Dh, Ftu1 }, trace);
    return isRefusal(nominal) ? nominal : available(nominal, method, trace);
  },
  shear: (values, method, trace) => {
    const nominal = shear(values, trace);
    return isRefusal(nominal) ? nominal : available(nominal, method, trace);
  },
  screwStrength: (values, method, trace) => {
    const nominal = screwStrength(values, trace);
    return isRefusal(nominal) ? nominal : available(nominal, method, trace);
  },
  minimumSpacing,
  minimumEdgeDistance,
};
