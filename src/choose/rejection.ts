/** Why an item cannot serve a connection: the first thing that rules it out, with its numbers. */
export const rejectionRules = [
  'kind',
  'head',
  'washer',
  'hole',
  'head room',
  'metal',
  'colour',
  'treated wood',
  'point',
  'drilling',
  'thread pitch',
  'reach',
  'thread in holding ply',
  'shows below',
  'too long',
  'grip',
  'strength',
  'cost',
] as const;
export type RejectionRule = (typeof rejectionRules)[number];

export interface Ruling {
  readonly rule: RejectionRule;
  /** One sentence with the numbers. */
  readonly because: string;
}

export interface Rejection extends Ruling {
  readonly item: string;
}
