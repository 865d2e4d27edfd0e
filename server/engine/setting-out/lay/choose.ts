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
 * a quarter lap (three steps) outweighs any of them; and two courses one on the other, neither of
 * which ties the two leaves of a wall together.
 */
const LAP = 3;
const PARTS = 5;
/** What each step of lap too little costs over or under what stands already: a little more than in the stretch itself. */
const STANDING = 4;
/** Candidates kept for each course: past the best few, none is ever chosen. */
const KEPT = 24;

function poorBond(a: Candidate, b: Candidate, lap: number): number {
  const parts = a.parts && b.parts ? PARTS : 0;
  return parts + LAP * Math.max(0, lap - EPS * 100 - leastLap(a.perpends, b.perpends));
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

function cheapest(candidates: readonly Candidate[]): Candidate[] {
  return [...candidates].sort((a, b) => a.cost - b.cost).slice(0, KEPT);
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
): Candidate[] | null {
  const layers = courses.map((layer, i) => cheapest(beware ? wary(layer, beware[i]!) : layer));
  if (layers.length === 0 || layers.some((layer) => layer.length === 0)) return null;
  let best: { cost: number; path: Candidate[] } | null = null;
  for (const first of layers[0]!) {
    if (best && first.cost >= best.cost) break;
    const found = bestFrom(first, layers, lap);
    if (!best || found.cost < best.cost - EPS) best = found;
  }
  return best!.path;
}

function bestFrom(first: Candidate, layers: readonly Candidate[][], lap: number) {
  let paths = [{ cost: first.cost, path: [first] }];
  for (const layer of layers.slice(1))
    paths = layer.map((to) => {
      const costs = paths.map(({ cost, path }) => cost + poorBond(path.at(-1)!, to, lap));
      const least = costs.indexOf(Math.min(...costs));
      return { cost: costs[least]! + to.cost, path: [...paths[least]!.path, to] };
    });
  const closed = paths.map(({ cost, path }) => ({
    cost: cost + (path.length > 2 ? poorBond(path.at(-1)!, first, lap) : 0),
    path,
  }));
  return closed.reduce((a, b) => (b.cost < a.cost ? b : a));
}
