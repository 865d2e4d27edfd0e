/**
 * Work whose geometry hangs on a range: it is laid again for a few values of it, and what it takes is known run by
 * run. All other work says by its terms how it hangs on its ranges.
 */
import type { Needs } from '../brickwork/needs';
import type { Range, Term } from '../working/term';
import { followable, type Lanes, rangesIn, Samples, saysHow, Unfollowed } from './lanes';
import { SAMPLES } from './points';

/** Every amount that a piece of work takes, under what it is an amount of. */
function* amountsOf(needs: Needs): Iterable<readonly [string, Term]> {
  for (const n of needs.bricks) yield [`brick ${n.brick}`, n.bricks];
  for (const n of needs.mixes) yield [`mix ${n.mix}`, n.litres];
  for (const n of needs.pieces) yield [`piece ${n.material}`, n.count];
  for (const n of needs.tasks) yield [`task ${n.task}`, n.hours];
  if (needs.leastDays) yield ['days', needs.leastDays];
  if (needs.waste) yield ['waste by volume', needs.waste.volume];
  if (needs.waste) yield ['waste by mass', needs.waste.mass];
}

/** Whether every amount says how it hangs on its ranges. */
export function allFollowable(needs: Needs): boolean {
  const seen = new Set<Term>();
  for (const [, term] of amountsOf(needs)) if (!followable(term, seen)) return false;
  return true;
}

/** Ranges behind amounts that do not say how they hang on them, such as bricks that were counted by laying them. */
export function rangesToPin(needs: Needs): ReadonlySet<object> {
  const found = new Set<object>();
  const seen = new Set<Term>();
  const look = (term: Term): void => {
    if (!term.ranged || seen.has(term)) return;
    seen.add(term);
    if (saysHow(term)) term.args.forEach(look);
    else for (const { said } of rangesIn(term)) found.add(said);
  };
  for (const [, term] of amountsOf(needs)) look(term);
  return found;
}

/** The same needs, each amount an object of its own that samples can be put in the place of. */
export function opened(needs: Needs): Needs {
  const open = (term: Term): Term => ({ ...term, ranged: true });
  return {
    ...needs,
    opened: true,
    bricks: needs.bricks.map((n) => ({ ...n, bricks: open(n.bricks) })),
    mixes: needs.mixes.map((n) => ({ ...n, litres: open(n.litres) })),
    pieces: needs.pieces.map((n) => ({ ...n, count: open(n.count) })),
    tasks: needs.tasks.map((n) => ({ ...n, hours: open(n.hours) })),
    leastDays: needs.leastDays && open(needs.leastDays),
    waste: needs.waste && { volume: open(needs.waste.volume), mass: open(needs.waste.mass) },
  };
}

/**
 * What each amount is in every sample, from what the work took in each run; `runOf` tells which run each sample is.
 * Ranges that are not pinned in a run are followed within it.
 * @throws Unfollowed where a run takes something that the work as it stands does not, or does not say how
 */
export function lanesOfRuns(
  needs: Needs,
  runs: readonly Needs[],
  runOf: readonly number[],
  valuesOf: (range: Range) => Lanes,
): [Term, Lanes][] {
  const keys = new Map<string, Lanes>();
  const out = [...amountsOf(needs)].map(([key, term]): [Term, Lanes] => {
    const lanes = new Float64Array(SAMPLES);
    // Two amounts of one kind are one amount to the price: the first stands for both.
    if (!keys.has(key)) keys.set(key, lanes);
    return [term, lanes];
  });
  runs.forEach((run, i) => {
    const mine = runOf.flatMap((each, lane) => (each === i ? [lane] : []));
    const part = (range: Range) => Float64Array.from(mine, (lane) => valuesOf(range)[lane]!);
    const samples = new Samples(mine.length, part);
    for (const [key, term] of amountsOf(run)) put(samples.lanesOf(term), mine, keys.get(key));
  });
  return out;
}

function put(found: Lanes, lanes: readonly number[], into: Lanes | undefined): void {
  if (!into && found.some((amount) => amount !== 0))
    throw new Unfollowed('a run takes what the work as it stands does not');
  if (into) for (const [i, lane] of lanes.entries()) into[lane]! += found[i]!;
}
