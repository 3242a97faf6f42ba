/** Counts, packs, weight and price. Counts are rounded up once, prices to the cent where a line is priced; nothing earlier. */
export interface CountByZone {
  readonly zone: number;
  readonly count: number;
}

export interface TakeoffLine {
  readonly item: string;
  readonly designation: string;
  readonly kind: 'screw' | 'nail' | 'rivet' | 'clip' | 'plate' | 'washer' | 'bit';
  /** Which connections it serves, and how many each takes by zone. */
  readonly uses: readonly {
    readonly connection: string;
    readonly zones: readonly CountByZone[];
    readonly count: number;
  }[];
  readonly colour?: string;
  /** Driven or set, before waste. */
  readonly count: number;
  /** With waste, rounded up to a whole piece. */
  readonly withWaste: number;
  readonly pack: number;
  readonly packs: number;
  /** Pieces ordered: packs times pack. */
  readonly ordered: number;
  readonly unitPrice: number;
  readonly price: number;
  readonly weight_lbf: number;
}

export interface Takeoff {
  readonly lines: readonly TakeoffLine[];
  readonly currency: string;
  readonly total: number;
  readonly weight_lbf: number;
  readonly runs: readonly {
    readonly plane: string;
    readonly runs: number;
    readonly seams: number;
    readonly slopeArea_ft2: number;
  }[];
  readonly edges: readonly { readonly tag: string; readonly length_ft: number }[];
}
