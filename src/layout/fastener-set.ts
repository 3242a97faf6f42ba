/** Fasteners of one connection on one plane, in columns: a million of them take 20 MB. */
export interface FastenerSet {
  readonly connection: string;
  readonly plane: string;
  /** Plan coordinates of the roof, in inches. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Index into the zones of the answer. */
  readonly zone: Uint8Array;
  /** How many fasteners stand at one place: screws of a clip, both sides of a rib. */
  readonly each: Uint8Array;
  /** Which run, rib or edge of the plane it stands on, counted from the left (edges: in the order of the outline). */
  readonly line: Uint16Array;
  readonly count: number;
}

/** Columns that grow by doubling and are cut to size once. */
export class FastenerColumns {
  private x = new Float64Array(256);
  private y = new Float64Array(256);
  private zone = new Uint8Array(256);
  private each = new Uint8Array(256);
  private line = new Uint16Array(256);
  private count = 0;

  add(x: number, y: number, zone: number, each: number, line: number): void {
    if (this.count === this.x.length) this.grow();
    this.x[this.count] = x;
    this.y[this.count] = y;
    this.zone[this.count] = zone;
    this.each[this.count] = each;
    this.line[this.count++] = line;
  }

  /** Whether a fastener stands within a distance already. Looks at every one: for the short rows of trims. */
  isNear(x: number, y: number, within: number): boolean {
    for (let i = 0; i < this.count; i++)
      if (Math.abs((this.x[i] as number) - x) < within && Math.abs((this.y[i] as number) - y) < within)
        return true;
    return false;
  }

  private grow(): void {
    const size = this.count * 2;
    const wide = (old: Float64Array) => {
      const next = new Float64Array(size);
      next.set(old);
      return next;
    };
    const narrow = (old: Uint8Array) => {
      const next = new Uint8Array(size);
      next.set(old);
      return next;
    };
    this.x = wide(this.x);
    this.y = wide(this.y);
    this.zone = narrow(this.zone);
    this.each = narrow(this.each);
    const lines = new Uint16Array(size);
    lines.set(this.line);
    this.line = lines;
  }

  done(connection: string, plane: string): FastenerSet {
    const n = this.count;
    return {
      connection,
      plane,
      x: this.x.subarray(0, n),
      y: this.y.subarray(0, n),
      zone: this.zone.subarray(0, n),
      each: this.each.subarray(0, n),
      line: this.line.subarray(0, n),
      count: n,
    };
  }
}
