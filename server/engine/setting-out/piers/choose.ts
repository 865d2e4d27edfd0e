/** Courses chosen together: no perpend over another, as few straight joints inside as may be. */
import { innerJoints, type Perpend, perpends, shared } from './joints';
import type { Region } from './region';
import type { Filling } from './search';

/** One way to lay one course, and what of it the next course has to lap. */
export interface Candidate extends Filling {
  readonly faces: ReadonlySet<Perpend>;
  /** The same, a bit for each: two courses are held against each other many thousand times. */
  readonly bits: bigint;
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
    bits: bitsOf(faces),
    get inner() {
      inner ??= innerJoints(filling.pieces, region);
      return inner;
    },
  };
}

/** Every perpend that any plan has, in the order they were met: no more than the faces of the largest have room for. */
const places = new Map<Perpend, bigint>();

function bitsOf(faces: Iterable<Perpend>): bigint {
  let bits = 0n;
  for (const each of faces) {
    let bit = places.get(each);
    if (bit === undefined) {
      bit = 1n << BigInt(places.size);
      places.set(each, bit);
    }
    bits |= bit;
  }
  return bits;
}

/** A quarter brick of joint straight through two courses, against a cut piece. */
const STRAIGHT = 0.5;

/** What two courses one on the other cost between them; infinite where a perpend stands over a perpend. */
export function between(a: Candidate, b: Candidate): number {
  if ((a.bits & b.bits) !== 0n) return Number.POSITIVE_INFINITY;
  return STRAIGHT * shared(a.inner, b.inner);
}

/** The best of each course for a cycle that goes round and round; nothing where none laps. */
export function chooseCycle(
  layers: readonly (readonly Candidate[])[],
  cost: (a: Candidate, b: Candidate) => number = between,
): readonly Candidate[] | undefined {
  const steps = layers.map((layer, i) => onceEach(layer, layers[(i + 1) % layers.length]!, cost));
  let best: Way | undefined;
  for (const first of layers[0]?.keys() ?? []) {
    const way = closed(first, layers, steps, best?.cost ?? Number.POSITIVE_INFINITY);
    if (way) best = way;
  }
  return best?.chosen.map((at, i) => layers[i]![at]!);
}

/** What it costs to go from one candidate of a layer to one of the next, by their places. */
type Step = (from: number, to: number) => number;

/** Each pair is worked out once, when it is first asked for. */
function onceEach(
  from: readonly Candidate[],
  to: readonly Candidate[],
  cost: (a: Candidate, b: Candidate) => number,
): Step {
  const known = new Float64Array(from.length * to.length).fill(Number.NaN);
  return (a, b) => {
    const at = a * to.length + b;
    if (Number.isNaN(known[at]!)) known[at] = cost(from[a]!, to[b]!);
    return known[at]!;
  };
}

/** Places in the layers, one for each, and what they come to. */
interface Way {
  readonly cost: number;
  readonly chosen: readonly number[];
}

/** The cheapest way round that begins with `first`, if it beats `least`. */
function closed(
  first: number,
  layers: readonly (readonly Candidate[])[],
  steps: readonly Step[],
  least: number,
): Way | undefined {
  let ways: Way[] = [{ cost: layers[0]![first]!.cost, chosen: [first] }];
  for (const [i, layer] of layers.entries())
    if (i > 0)
      ways = layer.flatMap(
        ({ cost }, next) => cheapest(ways, { next, cost }, steps[i - 1]!, least) ?? [],
      );
  const home = steps.at(-1)!;
  let best: Way | undefined;
  for (const way of ways) {
    const cost = way.cost + (layers.length > 1 ? home(way.chosen.at(-1)!, first) : 0);
    if (cost < (best?.cost ?? least)) best = { ...way, cost };
  }
  return best;
}

function cheapest(
  ways: readonly Way[],
  { next, cost }: { readonly next: number; readonly cost: number },
  step: Step,
  least: number,
): Way | undefined {
  let best: Way | undefined;
  for (const way of ways) {
    const before = way.cost + cost;
    if (before >= (best?.cost ?? least)) continue;
    const sum = before + step(way.chosen.at(-1)!, next);
    if (sum < (best?.cost ?? least)) best = { cost: sum, chosen: [...way.chosen, next] };
  }
  return best;
}
