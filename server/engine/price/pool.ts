/**
 * Adds up what many pieces of work take. Long lists are added in groups that are kept: when one piece of work
 * changes, its group and the groups’ sum are added again, and nothing else.
 */
import type { BrickNeed, MixNeed, Needs, PieceNeed, TaskNeed } from '../brickwork/needs';
import { type Origin, sum, type Term } from '../working/term';

/** Lists up to this long are added in one go, so that the working reads as one sum. */
const GROUP = 32;

interface Group {
  readonly of: readonly Needs[];
  readonly pooled: Needs;
}

export class NeedsPool {
  private groups: Group[] = [];

  /** The needs of all, pooled; at most one per brick, mix and material, and one for the hours. */
  all(needs: readonly Needs[]): readonly Needs[] {
    if (needs.length <= 2 * GROUP) return needs;
    const groups: Group[] = [];
    for (let at = 0; at < needs.length; at += GROUP) {
      const known = this.groups[groups.length];
      groups.push(known && same(known.of, needs, at) ? known : pooled(needs, at));
    }
    this.groups = groups;
    return groups.map((g) => g.pooled);
  }
}

/** Whether a group is what stands in the list from `at` on. */
function same(group: readonly Needs[], all: readonly Needs[], at: number): boolean {
  if (group.length !== Math.min(GROUP, all.length - at)) return false;
  return group.every((needs, i) => needs === all[at + i]);
}

function pooled(all: readonly Needs[], at: number): Group {
  const of = all.slice(at, at + GROUP);
  return { of, pooled: pool(of, at) };
}

function pool(needs: readonly Needs[], at: number): Needs {
  const which = `parts ${at + 1} to ${at + needs.length} of the work`;
  return {
    bricks: merged<BrickNeed>(
      needs.flatMap((n) => n.bricks),
      (n) => n.brick,
      (n) => n.bricks,
      (n, bricks) => ({ ...n, bricks }),
      which,
    ),
    mixes: merged<MixNeed>(
      needs.flatMap((n) => n.mixes),
      (n) => n.mix,
      (n) => n.litres,
      (n, litres) => ({ ...n, litres }),
      which,
    ),
    pieces: merged<PieceNeed>(
      needs.flatMap((n) => n.pieces),
      (n) => n.material,
      (n) => n.count,
      (n, count) => ({ ...n, count }),
      which,
    ),
    leastDays: longest(needs),
    tasks: hours(
      needs.flatMap((n) => n.tasks),
      which,
    ),
  };
}

function merged<T extends { origin: Origin }>(
  needs: readonly T[],
  key: (n: T) => string,
  term: (n: T) => Term,
  put: (n: T, t: Term) => T,
  label: string,
): T[] {
  const byKey = new Map<string, T[]>();
  for (const need of needs) {
    const list = byKey.get(key(need));
    if (list) list.push(need);
    else byKey.set(key(need), [need]);
  }
  return [...byKey.values()].map((list) =>
    put(list[0]!, sum(label, term(list[0]!).unit, list.map(term))),
  );
}

function longest(needs: readonly Needs[]): Term | undefined {
  const days = needs.flatMap((n) => n.leastDays ?? []);
  return days.reduce<Term | undefined>((a, b) => (a?.value.gte(b.value) ? a : b), undefined);
}

function hours(tasks: readonly TaskNeed[], label: string): TaskNeed[] {
  return tasks.length
    ? [
        {
          task: 'all',
          hours: sum(
            label,
            'h',
            tasks.map((t) => t.hours),
          ),
        },
      ]
    : [];
}
