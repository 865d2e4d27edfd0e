/** Medians, and ratios taken pair by pair: the machine may drift, but not between two neighbours. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}

export interface Paired {
  readonly a: number;
  readonly b: number;
  /** Median of a/b, round by round. */
  readonly ratio: number;
  readonly least: number;
  readonly most: number;
}

/** Rounds of A B A B; each round gives a time for either. */
export async function paired(
  rounds: number,
  a: () => Promise<number> | number,
  b: () => Promise<number> | number,
): Promise<Paired> {
  const as: number[] = [];
  const bs: number[] = [];
  for (let i = 0; i < rounds; i++) {
    as.push(await a());
    bs.push(await b());
  }
  const ratios = as.map((value, i) => value / bs[i]!);
  return {
    a: median(as),
    b: median(bs),
    ratio: median(ratios),
    least: Math.min(...ratios),
    most: Math.max(...ratios),
  };
}

export async function timed(work: () => unknown): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

/** Ms of processor that this process spent, collecting its rubbish and compiling included: what others do meanwhile does not count. */
export function spent(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
