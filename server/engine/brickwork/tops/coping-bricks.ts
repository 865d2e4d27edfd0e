/** Bricks of copings, brick by brick, and the hours they take. */
import { phrase } from '../../../../shared/phrase';
import type { Gang } from '../../labour/gang';
import { taskHours } from '../../labour/output';
import type { Env } from '../../resolve/env';
import { missing, sum, type Term } from '../../working/term';
import { type Counted, countBricks } from '../count';
import type { Brick, Mix } from '../goods';
import type { Masonry } from '../masonry';
import type { TaskNeed } from '../needs';
import type { CopingLaid } from './coping';
import { copingBrick } from './coping-made';

export interface CopingBricks {
  readonly brick: Brick;
  readonly counted: Counted;
  /** How many of them are cut on edge or on end, to less than their height. */
  readonly cuts: number;
  /** What they are laid in, where that is another mix than the wall’s. */
  readonly mix?: Mix;
}

/** The wall’s own brick first, where any run is of it. */
export function copingBricks(
  laid: readonly CopingLaid[],
  masonry: Masonry,
  inputs: readonly Term[],
): CopingBricks[] {
  const named = laid.map(({ run }) => run.made.brick?.name).filter((n) => n !== undefined);
  const own = masonry.brick.name;
  const names = [...new Set(named)].sort((a, b) => Number(b === own) - Number(a === own));
  return names.flatMap((name) => {
    const runs = laid.filter(({ run }) => run.made.brick?.name === name);
    const mixes = [...new Set(runs.map(({ run }) => run.mix?.name))];
    return mixes.map((mix) => {
      const alike = runs.filter(({ run }) => run.mix?.name === mix);
      return inBrick(alike, masonry, inputs);
    });
  });
}

function inBrick(
  laid: readonly CopingLaid[],
  masonry: Masonry,
  inputs: readonly Term[],
): CopingBricks {
  const brick = laid[0]!.run.made.brick!;
  const own = brick.name === masonry.brick.name;
  const cuts = laid.reduce((sum, each) => sum + each.cuts, 0);
  const counted = countBricks(
    laid.every(({ run }) => run.made.kind === 'brick-on-end')
      ? phrase`Bricks on end`
      : phrase`Bricks on edge`,
    laid.map((each) => each.tally),
    own ? masonry : { ...masonry, brick },
    // Another brick is another list: what was laid with is kept by the list.
    own ? inputs : [...inputs],
    () => laid.map((each) => each.detail),
    cuts,
  );
  return { brick, counted, cuts, mix: laid[0]!.run.mix };
}

/** Hours for all of them; a gap where the brick that a coping line names has no size to lay it by. */
export function copingTasks(
  bricks: readonly CopingBricks[],
  masonry: Masonry,
  env: Env,
  gang: Gang,
): TaskNeed[] {
  const label = phrase`Laying the coping`;
  const line = masonry.facts.line('coping');
  const named = line && copingBrick(line, masonry);
  if (named && !named.size && named.name !== masonry.brick.name) {
    const [gap] = named.gaps;
    return [{ task: 'coping', hours: missing(label, 'h', gap!.what, gap!.origin) }];
  }
  if (!bricks.length) return [];
  const counts = bricks.map((b) => b.counted.bricks);
  const amount =
    counts.length === 1 ? counts[0]! : sum(phrase`bricks of the coping`, 'bricks', counts);
  return [{ task: 'coping', hours: taskHours('coping', label, amount, env, gang) }];
}
