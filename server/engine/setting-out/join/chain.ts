import type { Parity } from './corner';

/** What a wall can do at one of its ends, by the course of its bond it is begun with, then by parity. */
export type Giving = readonly [readonly [boolean, boolean], readonly [boolean, boolean]];

/** A wall of a chain: the end it comes in by from the wall before, and goes out by to the next. */
export interface ChainWall {
  readonly in?: Giving;
  readonly out?: Giving;
}

/** How a wall of a chain is laid. */
export interface Placing {
  /** The course of its bond that it is begun with. */
  readonly begun: Parity;
  /** The courses in which it gives way at that end. */
  readonly in: Parity;
  readonly out: Parity;
}

/** What a corner that does not bond costs, beside a wall begun with its second course. */
const UNBONDED = 1000;

const PLACINGS: readonly Placing[] = ([0, 1] as const).flatMap((begun) =>
  ([0, 1] as const).flatMap((into) => ([0, 1] as const).map((out) => ({ begun, in: into, out }))),
);

function costOf(wall: ChainWall, { begun, in: into, out }: Placing): number {
  const bad = (end: Giving | undefined, parity: Parity) => (end && !end[begun][parity] ? 1 : 0);
  return UNBONDED * (bad(wall.in, into) + bad(wall.out, out)) + begun;
}

/** A way to lay the walls so far: how the last of them is laid, and the way up to it. */
interface Path {
  readonly cost: number;
  readonly last: Placing;
  readonly before?: Path;
}

/** At a corner one wall gives way in the courses in which the other runs through. */
const meets = (a: Placing, b: Placing) => a.out !== b.in;

function cheapest(paths: readonly Path[]): Path | undefined {
  return paths.reduce<Path | undefined>((a, b) => (a && a.cost <= b.cost ? a : b), undefined);
}

/** The best way on to each placing of the next wall. */
function onward(paths: readonly Path[], wall: ChainWall): Path[] {
  return PLACINGS.flatMap((last) => {
    const before = cheapest(paths.filter((path) => meets(path.last, last)));
    return before ? [{ cost: before.cost + costOf(wall, last), last, before }] : [];
  });
}

/** The best way from any of `starts` through all walls. */
function through(walls: readonly ChainWall[], starts: readonly Placing[]): Path[] {
  const [head, ...others] = walls;
  const begin = starts.map((last): Path => ({ cost: costOf(head!, last), last }));
  return others.reduce<Path[]>(onward, begin);
}

function placingsOf(path: Path | undefined): Placing[] {
  const placings: Placing[] = [];
  for (let at = path; at; at = at.before) placings.push(at.last);
  return placings.reverse();
}

/**
 * Chooses, for walls that meet end to end, the course each is begun with and the courses in which it
 * gives way, so that as many corners as can be are bonded and, of those ways, the most walls begin with the
 * first course of their bond. `closed` says that the last meets the first again. Work goes with the
 * number of walls.
 */
export function chooseChain(walls: readonly ChainWall[], closed: boolean): readonly Placing[] {
  if (walls.length === 0) return [];
  if (!closed) return placingsOf(cheapest(through(walls, PLACINGS)));
  const round = PLACINGS.flatMap((start) =>
    through(walls, [start]).filter(({ last }) => meets(last, start)),
  );
  return placingsOf(cheapest(round));
}
