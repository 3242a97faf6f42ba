/** Timing that shows a faster wrong answer: every measured function returns a checksum, printed beside its time. */
export interface Timing {
  readonly ms: number;
  readonly spread: number;
  readonly checksum: number;
}

/** Best of several runs after one to warm up, with the spread of the runs. */
export function best(run: () => number, times: number): Timing {
  let checksum = run();
  const all: number[] = [];
  for (let i = 0; i < times; i++) {
    const start = performance.now();
    checksum = run();
    all.push(performance.now() - start);
  }
  const mean = all.reduce((sum, ms) => sum + ms, 0) / all.length;
  const spread = Math.sqrt(all.reduce((sum, ms) => sum + (ms - mean) ** 2, 0) / all.length);
  return { ms: Math.min(...all), spread, checksum };
}

export function median(run: () => number, times: number): Timing {
  let checksum = run();
  const all: number[] = [];
  for (let i = 0; i < times; i++) {
    const start = performance.now();
    checksum = run();
    all.push(performance.now() - start);
  }
  all.sort((a, b) => a - b);
  return {
    ms: all[all.length >> 1] as number,
    spread: (all.at(-1) as number) - (all[0] as number),
    checksum,
  };
}

export function report(
  title: string,
  rows: readonly (readonly [name: string, timing: Timing, remark: string])[],
): void {
  process.stdout.write(`${title}\n`);
  for (const [name, { ms, spread, checksum }, remark] of rows)
    process.stdout.write(
      `  ${name.padEnd(44)} ${ms.toFixed(2).padStart(9)} ms ± ${spread.toFixed(2).padEnd(7)} checksum ${checksum.toPrecision(9)}  ${remark}\n`,
    );
}

/** The same numbers every run (a linear congruential generator), so that runs can be compared. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
