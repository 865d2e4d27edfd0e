/** Of all ways to lay the courses beside a wall that runs through, those that lap one another with the least cutting. */
import { jointsOf } from './course';
import { against, type Rules } from './laps';
import type { CourseParts, Part, Way } from './types';

export interface Courses {
  /** By their place in the cycle, those that the stretch has. */
  readonly turns: ReadonlyMap<number, CourseParts>;
  /** Pairs of them that lie on one another, each once. */
  readonly pairs: readonly (readonly [number, number])[];
  /** Joints of courses of other stretches, over or under one of them. */
  readonly held: readonly Held[];
}

export interface Held {
  readonly turn: number;
  readonly joints: readonly number[];
}

/** Times that courses of a longer cycle are gone through. */
const SWEEPS = 4;

/** Sets `now` of each part. */
export function choose(courses: Courses, rules: Rules): void {
  const choice = new Choice(courses, rules);
  const [across, ...through] = [...courses.turns.values()]
    .sort((a, b) => a.parts.length - b.parts.length)
    .flatMap((c) => c.parts);
  if (courses.turns.size <= 2 && across && through.length !== 1) choice.ofTwo(across, through);
  else choice.inTurn();
}

/** A way, and what it costs whatever is laid over and under it. */
interface Priced {
  readonly way: Way;
  readonly cost: number;
}

class Choice {
  private readonly priced = new Map<Part, readonly Priced[]>();

  constructor(
    private readonly courses: Courses,
    private readonly rules: Rules,
  ) {
    for (const [turn, { parts }] of courses.turns)
      for (const p of parts) this.priced.set(p, this.cheapestFirst(turn, p));
  }

  private cheapestFirst(turn: number, { ways }: Part): Priced[] {
    const { held, turns } = this.courses;
    const stays = held.filter((h) => h.turn === turn).map((h) => h.joints);
    const fixed = this.beside(turn).map((other) => turns.get(other)!.fixed);
    const all = [...stays, ...fixed];
    return ways()
      .map((way) => ({ way, cost: this.over(way, way.cost, all, Number.POSITIVE_INFINITY) }))
      .sort((a, b) => a.cost - b.cost);
  }

  private beside(turn: number): number[] {
    const over = this.courses.pairs.flatMap(([a, b]) => (a === turn ? [b] : b === turn ? [a] : []));
    return [...new Set(over)].filter((other) => other !== turn);
  }

  private over(
    { joints }: Way,
    cost: number,
    others: readonly (readonly number[])[],
    most: number,
  ) {
    let sum = cost;
    for (const other of others) if (sum < most) sum += against(joints, other, this.rules);
    return sum;
  }

  /** One course, and for each way to lay it the best of the other: nothing better is left out. */
  ofTwo(across: Part, through: readonly Part[]): void {
    let best = Number.POSITIVE_INFINITY;
    for (const { way, cost: own } of this.priced.get(across)!) {
      if (own >= best) break;
      let cost = own;
      const others: Way[] = [];
      for (const p of through) {
        const found = this.bestOf(p, [way.joints], best - cost);
        cost += found.cost;
        others.push(found.way);
      }
      if (cost >= best) continue;
      best = cost;
      across.now = way;
      for (const [i, p] of through.entries()) p.now = others[i]!;
    }
  }

  private bestOf(part: Part, over: readonly (readonly number[])[], most: number): Priced {
    let best: Priced = { way: part.now, cost: most };
    for (const { way, cost: own } of this.priced.get(part)!) {
      if (own >= best.cost) break;
      const cost = this.over(way, own, over, best.cost);
      if (cost < best.cost) best = { way, cost };
    }
    return best;
  }

  /** Each part of each course with those over and under it as they stand. */
  inTurn(): void {
    const { turns } = this.courses;
    for (let sweep = 0; sweep < SWEEPS; sweep++)
      for (const [turn, { parts }] of turns) {
        const others = this.beside(turn).map((other) =>
          turns.get(other)!.parts.flatMap((p) => p.now.joints),
        );
        for (const p of parts) p.now = this.bestOf(p, others, Number.POSITIVE_INFINITY).way;
      }
  }
}

/** Whether perpends lap as rules call a lap, as they are laid now. */
export function allLap({ turns, pairs, held }: Courses, { still }: Rules): boolean {
  const near = (a: readonly number[], b: readonly number[]) =>
    a.some((x) => b.some((y) => Math.abs(x - y) < still - 1e-3));
  const own = pairs.some(
    ([a, b]) => a !== b && near(jointsOf(turns.get(a)!), jointsOf(turns.get(b)!)),
  );
  return !own && !held.some(({ turn, joints }) => near(jointsOf(turns.get(turn)!), joints));
}
