/** ADM 2015: the screw provisions as one object that hands out available strengths. */
import { isRefusal } from '../../trace/refusal.ts';
import type { AluminiumEdition } from './aluminium-edition.ts';
import { available } from './available.ts';
import { minimumEdgeDistance, minimumSpacing } from './j.5.1-spacing.ts';
import { pullOutSpaced } from './j.5.5.1-pull-out-spaced.ts';
import { machineThread, pullOutUNC } from './j.5.5.1-pull-out-unc.ts';
import { pullOver } from './j.5.5.2-pull-over.ts';
import { screwStrength } from './j.5.6.3-screw-strength.ts';
import { shear } from './j.5.6-shear.ts';
import { document } from './nominal.ts';

export const adm2015: AluminiumEdition = {
  name: document.name,
  pullOut: ({ D, n, Le, Fty2, Ftu2 }, method, trace) => {
    const thread = machineThread(D, n);
    const nominal = thread
      ? pullOutUNC({ thread, Le, Fty2, Ftu2 }, trace)
      : pullOutSpaced({ D, n, Le, Fty2, Ftu2 }, trace);
    return isRefusal(nominal) ? nominal : available(nominal, method, trace);
  },
  pullOver: ({ t1, Dw, Dh, Fty1 }, method, trace) => {
    const nominal = pullOver({ t1, Dw, D: Dh, Fty1 }, trace);
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
