/** One edition of the wood specification as the engine uses it: design capacities of one fastener, in pounds. */

import type { makeNailLateral, makeScrewLateral } from './11.3-adjusted-lateral.ts';
import type { makeHeadPullThrough, makeNailedSheathing } from './11.3-adjusted-pull-through.ts';
import type {
  makeLagWithdrawal,
  makeNailWithdrawal,
  makeScrewWithdrawal,
} from './11.3-adjusted-withdrawal.ts';
import type { makeCombined } from './12.4-combined.ts';

export interface WoodEdition {
  /** As cited in proofs. */
  readonly name: string;
  readonly screwWithdrawal: ReturnType<typeof makeScrewWithdrawal>;
  readonly lagWithdrawal: ReturnType<typeof makeLagWithdrawal>;
  readonly nailWithdrawal: ReturnType<typeof makeNailWithdrawal>;
  readonly headPullThrough: ReturnType<typeof makeHeadPullThrough>;
  readonly nailedSheathing: ReturnType<typeof makeNailedSheathing>;
  readonly screwLateral: ReturnType<typeof makeScrewLateral>;
  readonly nailLateral: ReturnType<typeof makeNailLateral>;
  readonly combined: ReturnType<typeof makeCombined>;
}
