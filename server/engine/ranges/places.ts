/** Which range of a job takes which points: so that one of them is sampled alike wherever it is used. */
import type { Range } from '../working/term';
import type { Ranged } from './found';
import type { Lanes } from './lanes';
import { pointOf, RUNS, runPointOf, SAMPLES } from './points';

/** A range that work is laid again for: those of one group take their values together, run by run. */
interface Coarse {
  readonly group: number;
  /** Its place among those of the group. */
  readonly at: number;
}

export class Places {
  private readonly fine = new Map<object, number>();
  private readonly coarse = new Map<object, Coarse>();
  private readonly lanes = new Map<object, Lanes>();
  private readonly runs = new Map<number, readonly number[]>();
  /** Groups take the first orders of the lattice, which go together best, and fine ranges the next. */
  private readonly groups: number;

  /** `groupOf`: of ranges that work is laid again for, which therefore take no more than {@link RUNS} values. */
  constructor(ranges: readonly Ranged[], groupOf: (said: object) => number | undefined) {
    const groups = new Map<number, { readonly rank: number; size: number }>();
    for (const { key } of ranges) {
      const named = groupOf(key);
      if (named === undefined) {
        this.fine.set(key, this.fine.size);
        continue;
      }
      const group = groups.get(named) ?? { rank: groups.size, size: 0 };
      groups.set(named, group);
      this.coarse.set(key, { group: group.rank, at: group.size });
      group.size += 1;
    }
    this.groups = groups.size;
  }

  /** Whether every range that both know takes the same points in both. */
  agreesWith(other: Places): boolean {
    return [...this.fine.keys(), ...this.coarse.keys()].every(
      (key) => !other.knows(key) || this.placeOf(key) === other.placeOf(key),
    );
  }

  private knows(key: object): boolean {
    return this.fine.has(key) || this.coarse.has(key);
  }

  /** Of a range that work is laid again for. */
  groupOf(said: object): number | undefined {
    return this.coarse.get(said)?.group;
  }

  private placeOf(key: object): string {
    const coarse = this.coarse.get(key);
    return coarse ? `${coarse.group}/${coarse.at}` : `${this.groups + this.fine.get(key)!}`;
  }

  /** How far run number `run` lies in the range that `said` is, 0 to 1. Nothing for one that no work is laid again for. */
  inRun(said: object, run: number): number | undefined {
    const coarse = this.coarse.get(said);
    return coarse && runPointOf(coarse.at, run);
  }

  /** Which run of a group each sample is. Groups have as little to do with each other as ranges have. */
  runsOf(group: number): readonly number[] {
    const known =
      this.runs.get(group) ??
      Array.from({ length: SAMPLES }, (_, lane) => Math.floor(pointOf(group, lane) * RUNS));
    this.runs.set(group, known);
    return known;
  }

  /** How far each sample lies in it. */
  pointsOf(said: object): Lanes {
    const known = this.lanes.get(said) ?? Float64Array.from({ length: SAMPLES }, this.point(said));
    this.lanes.set(said, known);
    return known;
  }

  private point(said: object): (_: unknown, lane: number) => number {
    const coarse = this.coarse.get(said);
    if (coarse) {
      const runs = this.runsOf(coarse.group);
      return (_, lane) => runPointOf(coarse.at, runs[lane]!);
    }
    const at = this.fine.get(said);
    return (_, lane) => (at === undefined ? 0.5 : pointOf(this.groups + at, lane));
  }

  /** The values of a range in every sample, in the unit its term is said in. */
  valuesOf({ low, high, whole, said }: Range): Lanes {
    const [from, to] = [low.toNumber(), high.toNumber()];
    return this.pointsOf(said).map((u) =>
      whole ? Math.min(to, from + Math.floor(u * (to - from + 1))) : from + u * (to - from),
    );
  }
}

/** Sets that have anything in common, or are bound together by others that have, are of one group. */
export function groupsOf(sets: readonly ReadonlySet<object>[]): ReadonlyMap<object, number> {
  const groups = new Map<object, number>();
  sets.forEach((set, i) => {
    const met = new Set([...set].flatMap((key) => groups.get(key) ?? []));
    for (const [key, group] of groups) if (met.has(group)) groups.set(key, i);
    for (const key of set) groups.set(key, i);
  });
  return groups;
}
