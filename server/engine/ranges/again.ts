/**
 * Work whose geometry hangs on a range: it is laid again for a few values of it, and what it takes is known run by
 * run. All other work says by its terms how it hangs on its ranges.
 */
import type { Needs } from '../brickwork/needs';
import type { Term } from '../working/term';
import { followable, type Lanes, Unfollowed } from './lanes';
import { RUNS, SAMPLES } from './points';

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
 * What each amount is in every sample, from what the work took in each run.
 * @throws Unfollowed where a run takes something that the work as it stands does not
 */
export function lanesOfRuns(needs: Needs, runs: readonly Needs[]): [Term, Lanes][] {
  const totals = runs.map(totalsOf);
  const first = new Set<string>();
  const lanes = [...amountsOf(needs)].map(([key, term]): [Term, Lanes] => {
    const more = first.has(key);
    first.add(key);
    // Two amounts of one kind are one amount to the price: the first stands for both.
    const of = (run: number) => (more ? 0 : (totals[run]!.get(key) ?? 0));
    return [term, Float64Array.from({ length: SAMPLES }, (_, lane) => of(lane % RUNS))];
  });
  const strange = totals.some((t) => [...t].some(([key, amount]) => amount && !first.has(key)));
  if (strange) throw new Unfollowed('a run takes what the work as it stands does not');
  return lanes;
}

function totalsOf(needs: Needs): Map<string, number> {
  const totals = new Map<string, number>();
  for (const [key, term] of amountsOf(needs))
    totals.set(key, (totals.get(key) ?? 0) + term.value.toNumber());
  return totals;
}
