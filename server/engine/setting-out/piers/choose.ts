/** Courses chosen together: no perpend over another, as few straight joints inside as may be. */
import { disjoint, innerJoints, type Perpend, perpends, shared } from './joints';
import type { Region } from './region';
import type { Filling } from './search';

/** One way to lay one course, and what of it the next course has to lap. */
export interface Candidate extends Filling {
  readonly faces: ReadonlySet<Perpend>;
  readonly inner: ReadonlySet<number>;
}

/** `plain` are joints that show beside those of its pieces. What is inside is only looked at where faces lap. */
export function candidate(
  filling: Filling,
  region: Region,
  plain: readonly Perpend[] = [],
): Candidate {
  let inner: ReadonlySet<number> | undefined;
  const faces = perpends(filling.pieces, region);
  for (const each of plain) faces.add(each);
  return {
    ...filling,
    faces,
    get inner() {
      inner ??= innerJoints(filling.pieces, region);
      return inner;
    },
  };
}

/** A quarter brick of joint straight through two courses, against a cut piece. */
const STRAIGHT = 0.5;

/** What two courses one on the other cost between them; infinite where a perpend stands over a perpend. */
export function between(a: Candidate, b: Candidate): number {
  if (!disjoint(a.faces, b.faces)) return Number.POSITIVE_INFINITY;
  return STRAIGHT * shared(a.inner, b.inner);
}

/** The best of each course for a cycle that goes round and round; nothing where none laps. */
export function chooseCycle(
  layers: readonly (readonly Candidate[])[],
  cost: (a: Candidate, b: Candidate) => number = between,
): readonly Candidate[] | undefined {
  let best: Way | undefined;
  for (const first of layers[0] ?? []) {
    const way = closed(first, layers, cost, best?.cost ?? Number.POSITIVE_INFINITY);
    if (way) best = way;
  }
  return best?.chosen;
}

interface Way {
  readonly cost: number;
  readonly chosen: readonly Candidate[];
}

/** The cheapest way round that begins with `first`, if it beats `least`. */
function closed(
  first: Candidate,
  layers: readonly (readonly Candidate[])[],
  cost: (a: Candidate, b: Candidate) => number,
  least: number,
): Way | undefined {
  let ways: Way[] = [{ cost: first.cost, chosen: [first] }];
  for (const layer of layers.slice(1))
    ways = layer.flatMap((next) => cheapest(ways, next, cost, least) ?? []);
  const ends = ways.map((way) => ({
    ...way,
    cost: way.cost + (layers.length > 1 ? cost(way.chosen.at(-1)!, first) : 0),
  }));
  const best = ends.reduce<Way | undefined>((a, b) => (a && a.cost <= b.cost ? a : b), undefined);
  return best && best.cost < least ? best : undefined;
}

function cheapest(
  ways: readonly Way[],
  next: Candidate,
  cost: (a: Candidate, b: Candidate) => number,
  least: number,
): Way | undefined {
  let best: Way | undefined;
  for (const way of ways) {
    const before = way.cost + next.cost;
    if (before >= (best?.cost ?? least)) continue;
    const sum = before + cost(way.chosen.at(-1)!, next);
    if (sum < (best?.cost ?? least)) best = { cost: sum, chosen: [...way.chosen, next] };
  }
  return best;
}
