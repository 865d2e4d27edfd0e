import type { Parity } from './corner';

/** How a wall of a chain is laid. */
export interface Placing {
  /** The course of its bond that it is begun with. */
  readonly begun: Parity;
  /** The courses in which it gives way at the end that the chain comes into it by, and goes out of it by. */
  readonly in: Parity;
  readonly out: Parity;
}

/** Walls that meet end to end. */
export interface ChainQuestion {
  readonly walls: number;
  /** The last meets the first again. */
  readonly closed: boolean;
  /** Whether a wall has to be begun with the first course of its bond, whatever that costs; none when left out. */
  readonly held?: (wall: number) => boolean;
  /** Whether the courses of the next wall are numbered from one an odd number lower or higher at the corner with it; none when left out. */
  readonly lifted?: (wall: number) => boolean;
  /** Whether the corner between a wall and the next bonds; asked of ways in which one gives way where the other runs through. */
  readonly bonds: (wall: number, own: Placing, next: Placing) => boolean;
}

/** What a corner that does not bond costs, and a wall begun with the second course that may not be, beside one that may. */
const UNBONDED = 1000;
const HELD = 1e6;

const PLACINGS: readonly Placing[] = ([0, 1] as const).flatMap((begun) =>
  ([0, 1] as const).flatMap((into) => ([0, 1] as const).map((out) => ({ begun, in: into, out }))),
);

/** A way to lay the walls so far: how the last of them is laid, and the way up to it. */
interface Path {
  readonly cost: number;
  readonly last: Placing;
  readonly before?: Path;
}

function cheapest(paths: readonly Path[]): Path | undefined {
  return paths.reduce<Path | undefined>((a, b) => (a && a.cost <= b.cost ? a : b), undefined);
}

class Choice {
  private readonly known = new Map<string, number>();

  constructor(private readonly question: ChainQuestion) {}

  private begun(wall: number, { begun }: Placing): number {
    return begun === 1 && this.question.held?.(wall) ? HELD : begun;
  }

  /** From a wall to the next; nothing where both would give way, or neither. */
  private corner(wall: number, own: Placing, next: Placing): number | undefined {
    const lifted = this.question.lifted?.(wall) ?? false;
    if ((own.out === next.in) !== lifted) return undefined;
    const key = `${wall} ${own.begun}${own.out}${next.begun}`;
    let cost = this.known.get(key);
    if (cost === undefined) {
      cost = this.question.bonds(wall, own, next) ? 0 : UNBONDED;
      this.known.set(key, cost);
    }
    return cost;
  }

  private on(path: Path, wall: number, last: Placing): Path[] {
    const corner = this.corner(wall - 1, path.last, last);
    if (corner === undefined) return [];
    return [{ cost: path.cost + corner + this.begun(wall, last), last, before: path }];
  }

  /** The best way from any of `starts` to each placing of the last wall. */
  private through(starts: readonly Placing[]): Path[] {
    let paths = starts.map((last): Path => ({ cost: this.begun(0, last), last }));
    for (let wall = 1; wall < this.question.walls; wall++)
      paths = PLACINGS.flatMap(
        (last) => cheapest(paths.flatMap((path) => this.on(path, wall, last))) ?? [],
      );
    return paths;
  }

  best(): Path | undefined {
    const { walls, closed } = this.question;
    if (!closed) return cheapest(this.through(PLACINGS));
    const round = PLACINGS.flatMap((start) =>
      this.through([start]).flatMap((path): Path[] => {
        const corner = this.corner(walls - 1, path.last, start);
        return corner === undefined ? [] : [{ ...path, cost: path.cost + corner }];
      }),
    );
    return cheapest(round);
  }
}

/**
 * Chooses, for walls that meet end to end, the course each is begun with and the courses in which it
 * gives way, so that as many corners as can be are bonded and, of those ways, the most walls begin with the
 * first course of their bond. Work goes with the number of walls.
 */
export function chooseChain(question: ChainQuestion): readonly Placing[] {
  if (question.walls < 1) return [];
  const placings: Placing[] = [];
  for (let at = new Choice(question).best(); at; at = at.before) placings.push(at.last);
  return placings.reverse();
}
