/**
 * Adds up what many pieces of work take. Long lists are added in groups that are kept: when one piece of work
 * changes, its group and the groups’ sum are added again, and nothing else.
 */

import { phrase } from '../../../shared/phrase';
import type { BrickNeed, MixNeed, Needs, PieceNeed, TaskNeed } from '../brickwork/needs';
import { laysOf } from '../mortar/lays';
import { type Origin, sum, type Term } from '../working/term';
import { GROUP, Groups } from '../workspace/groups';
import type { HasNeeds } from './costs';
import { wasteIn } from './waste';

export class NeedsPool {
  private readonly groups = new Groups<HasNeeds, Needs>((works, at) =>
    pool(
      works.map((w) => w.needs),
      at,
    ),
  );

  /**
   * The needs of all, pooled; at most one per brick, mix and material, and one for the hours. Lists of up to two
   * groups are added in one go, so that the working reads as one sum.
   */
  all(works: readonly HasNeeds[]): readonly Needs[] {
    return works.length <= 2 * GROUP ? works.map((w) => w.needs) : this.groups.of(works);
  }
}

function pool(needs: readonly Needs[], at: number): Needs {
  const which = phrase`parts ${at + 1} to ${at + needs.length} of the work`;
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
      (n, litres, all) => ({ ...n, litres, lays: laysOf(all.map((m) => m.lays)) }),
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
    waste: wasteIn(needs),
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
  put: (n: T, t: Term, all: readonly T[]) => T,
  label: string,
): T[] {
  const byKey = new Map<string, T[]>();
  for (const need of needs) {
    const list = byKey.get(key(need));
    if (list) list.push(need);
    else byKey.set(key(need), [need]);
  }
  return [...byKey.values()].map((list) =>
    put(list[0]!, sum(label, term(list[0]!).unit, list.map(term)), list),
  );
}

function longest(needs: readonly Needs[]): Term | undefined {
  const days = needs.flatMap((n) => n.leastDays ?? []);
  return days.reduce<Term | undefined>((a, b) => (a?.value.gte(b.value) ? a : b), undefined);
}

function hours(tasks: readonly TaskNeed[], label: string): TaskNeed[] {
  const parties = new Map(tasks.map(({ by }) => [by?.name, by]));
  return [...parties].map(([name, by]) => {
    const own = tasks.filter((t) => t.by?.name === name).map((t) => t.hours);
    return { task: 'all', hours: sum(label, 'h', own), by };
  });
}
