/** Which range of a job takes which points: so that one of them is sampled alike wherever it is used. */
import type { Range } from '../working/term';
import type { Ranged } from './found';
import type { Lanes } from './lanes';
import { pointOf, RUNS, runPointOf, SAMPLES } from './points';

/** Places of one kind, against those of the same kind and of the other. */
function agree(
  mine: ReadonlyMap<object, number>,
  same: ReadonlyMap<object, number>,
  other: ReadonlyMap<object, number>,
): boolean {
  for (const [key, at] of mine) if (other.has(key) || (same.get(key) ?? at) !== at) return false;
  return true;
}

export class Places {
  private readonly fine = new Map<object, number>();
  private readonly coarse = new Map<object, number>();
  private readonly lanes = new Map<object, Lanes>();

  /** `again`: ranges that work is laid again for, which therefore take no more than {@link RUNS} values. */
  constructor(ranges: readonly Ranged[], again: (said: object) => boolean) {
    for (const { key } of ranges) {
      const order = again(key) ? this.coarse : this.fine;
      order.set(key, order.size);
    }
  }

  /** Whether every range that both know takes the same points in both. */
  agreesWith(other: Places): boolean {
    return (
      agree(this.fine, other.fine, other.coarse) && agree(this.coarse, other.coarse, other.fine)
    );
  }

  /** How far run number `run` lies in the range that `said` is, 0 to 1. One that is not laid again for stays in the middle. */
  inRun(said: object, run: number): number {
    const at = this.coarse.get(said);
    return at === undefined ? 0.5 : runPointOf(at, run);
  }

  /** The same whatever else the job holds, as long as the ranges that are laid again for stand in the same order. */
  orderOf(ranges: readonly Ranged[]): string {
    return ranges.map(({ key }) => this.coarse.get(key) ?? '').join(' ');
  }

  /** How far each sample lies in it. */
  pointsOf(said: object): Lanes {
    const known = this.lanes.get(said) ?? Float64Array.from({ length: SAMPLES }, this.point(said));
    this.lanes.set(said, known);
    return known;
  }

  private point(said: object): (_: unknown, lane: number) => number {
    if (this.coarse.has(said)) return (_, lane) => this.inRun(said, lane % RUNS);
    const at = this.fine.get(said);
    return (_, lane) => (at === undefined ? 0.5 : pointOf(at, lane));
  }

  /** The values of a range in every sample, in the unit its term is said in. */
  valuesOf({ low, high, whole, said }: Range): Lanes {
    const [from, to] = [low.toNumber(), high.toNumber()];
    return this.pointsOf(said).map((u) =>
      whole ? Math.min(to, from + Math.floor(u * (to - from + 1))) : from + u * (to - from),
    );
  }
}
