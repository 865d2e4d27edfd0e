import type { Filling } from './compose';
import { BRICK, EPS } from './grid';
import { leastLap } from './laps';

/** One way to lay one course through a place where the bond is broken. */
export interface Candidate extends Filling {
  /** Steps the filling runs from and to. */
  from: number;
  to: number;
  /** Set when nothing in it runs through the wall, so that the courses next to it had better. */
  parts?: boolean;
  /** Perpends in the window that is judged, in order. */
  perpends: readonly number[];
}

/*
 * Weighed against the costs of a filling: each step of lap too little, so that a straight joint over
 * a quarter lap (three steps) outweighs any of them; a lap that is no lap by the rules, which is
 * worse than two three-quarter bats; and two courses one on the other, neither of which ties the two
 * leaves of a wall together.
 */
const LAP = 3;
const NO_LAP = 4;
/** Steps short of a quarter brick that rules still call a lap: 41 mm of 56, 46 of 62.5. DIN EN 1996-2 asks 45 mm, Dutch practice 40 (steen010.nl). */
export const STILL_LAP = 0.8;
const PARTS = 5;
/** What each step of lap too little costs over or under what stands already: a little more than in the stretch itself. */
const STANDING = 4;
/** Candidates kept for each course: past the best few, none is chosen but where those few do not lap. */
const KEPT = 24;
const KEPT_MORE = 80;

function poorBond(a: Candidate, b: Candidate, lap: number): number {
  const parts = a.parts && b.parts ? PARTS : 0;
  const short = Math.max(0, lap - EPS * 100 - leastLap(a.perpends, b.perpends));
  return parts + LAP * short + (short > STILL_LAP ? NO_LAP : 0);
}

/** Steps that a perpend keeps from one that stands above or below: a quarter brick, less what joints differ. */
const CLEAR = BRICK / 4 - 0.3;

/** The same candidates, dearer by what they lack of lap with what stands already. */
function wary(candidates: readonly Candidate[], beware: readonly number[]): Candidate[] {
  return candidates.map((candidate) => {
    const short = Math.max(0, CLEAR - leastLap(candidate.perpends, beware));
    return { ...candidate, cost: candidate.cost + STANDING * short };
  });
}

function cheapest(candidates: readonly Candidate[], most: number): Candidate[] {
  return [...candidates].sort((a, b) => a.cost - b.cost).slice(0, most);
}

/**
 * One candidate for each course of a cycle, so that costs and lacks of lap between neighbours, the
 * last with the first included, are least together. Null when a course has none. `beware` are
 * perpends that stand already above and below each course, in order.
 *
 * The first course's choice is fixed in turn and the rest found by dynamic programming.
 */
export function chooseBonded(
  courses: readonly (readonly Candidate[])[],
  lap: number,
  beware?: readonly (readonly number[])[],
  thorough = !beware,
): Candidate[] | null {
  const layers = beware ? courses.map((layer, i) => wary(layer, beware[i]!)) : courses;
  const chosen = bestOf(layers, lap, KEPT);
  // What stands already may ask for many ways of each stretch: then the best few have to do.
  const all = !chosen || !thorough || layers.every(({ length }) => length <= KEPT);
  return all || laps(chosen, lap) ? chosen : bestOf(layers, lap, KEPT_MORE);
}

/** Whether each course laps the next as rules have it, the last the first. */
function laps(chosen: readonly Candidate[], lap: number): boolean {
  return chosen.every(
    (a, i) => poorBond(a, chosen[(i + 1) % chosen.length]!, lap) < NO_LAP + PARTS,
  );
}

function bestOf(
  courses: readonly (readonly Candidate[])[],
  lap: number,
  most: number,
): Candidate[] | null {
  const layers = courses.map((layer) => cheapest(layer, most));
  if (layers.length === 0 || layers.some((layer) => layer.length === 0)) return null;
  const joins = layers.map((layer, i) => joinsOf(layer, layers[(i + 1) % layers.length]!, lap));
  let best: Chosen | null = null;
  for (const [first, { cost }] of layers[0]!.entries()) {
    if (best && cost >= best.cost) break;
    const found = bestFrom(first, layers, joins);
    if (!best || found.cost < best.cost - EPS) best = found;
  }
  return best!.path.map((at, i) => layers[i]![at]!);
}

/** What it costs that one candidate of a course lies on one of the next, each worked out when first asked for. */
type Joins = (a: number, b: number) => number;

function joinsOf(below: readonly Candidate[], above: readonly Candidate[], lap: number): Joins {
  const known = new Float64Array(below.length * above.length).fill(-1);
  return (a, b) => {
    const at = a * above.length + b;
    if (known[at]! < 0) known[at] = poorBond(below[a]!, above[b]!, lap);
    return known[at]!;
  };
}

/** Candidates by their places in each course, and what they cost together. */
interface Chosen {
  cost: number;
  path: number[];
}

function bestFrom(
  first: number,
  layers: readonly (readonly Candidate[])[],
  joins: readonly Joins[],
): Chosen {
  let costs = [{ at: first, cost: layers[0]![first]!.cost }];
  const cameFrom: number[][] = [];
  for (const [i, layer] of layers.entries()) {
    if (i === 0) continue;
    const before = costs;
    const from: number[] = [];
    costs = layer.map(({ cost }, at) => {
      const best = cheapestWay(before, (b) => joins[i - 1]!(b, at));
      from.push(before[best.place]!.at);
      return { at, cost: best.cost + cost };
    });
    cameFrom.push(from);
  }
  const closing = layers.length > 2 ? (b: number) => joins.at(-1)!(b, first) : () => 0;
  const { place, cost } = cheapestWay(costs, closing);
  return { cost, path: traced(costs[place]!.at, cameFrom) };
}

function cheapestWay(
  before: readonly { at: number; cost: number }[],
  joining: (at: number) => number,
): { place: number; cost: number } {
  let least = { place: 0, cost: Number.POSITIVE_INFINITY };
  for (const [place, { at, cost }] of before.entries()) {
    if (cost >= least.cost) continue;
    const all = cost + joining(at);
    if (all < least.cost) least = { place, cost: all };
  }
  return least;
}

function traced(last: number, cameFrom: readonly number[][]): number[] {
  const path = [last];
  for (const from of [...cameFrom].reverse()) path.unshift(from[path[0]!]!);
  return path;
}
