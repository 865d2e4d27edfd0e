/** Copings that are laid in a mix of their own: bricks on top, and the mortar of precast lengths and tiles. */
import { phrase } from '../../../../shared/phrase';
import type { Tally } from '../../setting-out';
import { sum, type Term } from '../../working/term';
import { type Apart, hoursFor } from '../apart';
import type { Mix } from '../goods';
import type { Masonry } from '../masonry';
import type { TaskNeed } from '../needs';
import type { CopingBricks } from './coping-bricks';

/** Mortar without bricks, of what lies under them or in place of them. */
interface Beside {
  readonly mix: Mix;
  readonly mortar: readonly Tally[];
}

export function copingApart(
  bricks: readonly CopingBricks[],
  beside: Beside | undefined,
  tasks: readonly TaskNeed[],
  { brick }: Masonry,
): Apart[] {
  const what = phrase`the coping`;
  const hours = tasks.find((t) => t.task === 'coping')?.hours;
  const on = bricks.flatMap(({ mix, brick: other, counted }): Apart[] => {
    const { tally, bricks: count } = counted;
    if (!mix) return [];
    const laid = [{ tally, brick: other }];
    return [{ mix, what, laid, bricks: [count], hours: hours ? [part(hours, count, bricks)] : [] }];
  });
  if (!beside?.mortar.length) return on;
  const laid = beside.mortar.map((tally) => ({ tally, brick }));
  const others = tasks.filter((t) => t.task !== 'coping').map((t) => t.hours);
  return [...on, { mix: beside.mix, what, laid, bricks: [], hours: others }];
}

function part(hours: Term, count: Term, bricks: readonly CopingBricks[]): Term {
  if (bricks.length === 1) return hours;
  const all = bricks.map((b) => b.counted.bricks);
  return hoursFor(
    phrase`laying that coping`,
    hours,
    count,
    sum(phrase`bricks of the coping`, 'bricks', all),
  );
}
