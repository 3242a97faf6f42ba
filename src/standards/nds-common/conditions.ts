/** Conditions of service that the adjustment factors of NDS chapter 11 ask for, in the words used everywhere here. */
import { oneOf } from '../../trace/clause.ts';

export const methods = ['ASD', 'LRFD'] as const;
/** Load of shortest duration in the combination. */
export const loads = ['permanent', 'occupancy live', 'snow', 'roof live', 'wind or earthquake'] as const;
export type Load = (typeof loads)[number];
export const moistures = ['dry', 'wet'] as const;
export type Moisture = (typeof moistures)[number];
/** Sustained temperature of the wood, not the peak of an afternoon. */
export const temperatures = ['to 100 F', '100 to 125 F', '125 to 150 F'] as const;
export const holdingMembers = ['lumber', 'plywood', 'OSB'] as const;
export type HoldingMember = (typeof holdingMembers)[number];
export const screwStandards = ['ASME B18.6.1', 'other than ASME B18.6.1'] as const;
export type ScrewStandard = (typeof screwStandards)[number];
export const shanks = ['smooth', 'smooth stainless', 'ring'] as const;
export type Shank = (typeof shanks)[number];

export const methodInput = oneOf(methods, 'allowable stress design or load and resistance factor design');
export const loadInput = oneOf(loads, 'load of shortest duration in the combination');
export const inServiceInput = oneOf(moistures, 'wood in service: wet is above 19 percent');
export const atFabricationInput = oneOf(
  moistures,
  'wood when the fastener was driven: wet is above 19 percent',
);
export const temperatureInput = oneOf(temperatures, 'sustained temperature of the wood');
export const memberInput = oneOf(holdingMembers, 'what the fastener holds in');
export const screwStandardInput = oneOf(screwStandards, 'standard the screw is made to');

/** Specific gravities of NDS Table 12.3.3A, and so of the withdrawal tables, run from 0.31 to 0.73. */
export const gravityLimits = { min: 0.31, max: 0.73 } as const;
