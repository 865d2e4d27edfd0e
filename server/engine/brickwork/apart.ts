/** Courses and copings that are laid in a mix of their own: how much of it they take, and what is laid in it. */

import { listed } from '../../../grammar/read/numbers';
import { phrase } from '../../../shared/phrase';
import type { LineFacts } from '../resolve/env';
import { product, quotient, sum, type Term, withGaps } from '../working/term';
import { type Laid, mortarOf } from './count';
import { type Mix, mixOf } from './goods';
import type { Masonry } from './masonry';
import type { MixNeed, TaskNeed } from './needs';

export interface Apart {
  readonly mix: Mix;
  /** As it is called in a sentence: `the damp course`. */
  readonly what: string;
  readonly laid: readonly Laid[];
  readonly bricks: readonly Term[];
  /** Of the gang, in which it is laid. */
  readonly hours: readonly Term[];
}

/** The mix that a line names, where it is another than that of the whole work. */
export function ownMix(line: LineFacts | undefined, { mix, env }: Masonry): Mix | undefined {
  if (!line?.values.mix || line.word('mix') === mix.name) return undefined;
  return mixOf(line, env, line.origin);
}

/** One need for each mix. `from` is what the whole work is laid from; `of` makes of one pier’s those of all alike. */
export function apartNeeds(
  all: readonly Apart[],
  masonry: Masonry,
  from: readonly Term[],
  of: (label: string, one: Term) => Term = (_, one) => one,
): MixNeed[] {
  const names = [...new Set(all.map(({ mix }) => mix.name))];
  return names.map((name) => {
    const mine = all.filter(({ mix }) => mix.name === name);
    return needOf(mine, masonry, from, of);
  });
}

function needOf(
  mine: readonly Apart[],
  { env }: Masonry,
  from: readonly Term[],
  of: (label: string, one: Term) => Term,
): MixNeed {
  const { mix } = mine[0]!;
  const what = listed([...new Set(mine.map((each) => each.what))], 'and');
  const label = phrase`Mortar of ${what}`;
  const laid = mine.flatMap((each) => each.laid);
  const litres = of(label, mortarOf(label, laid, env, from));
  const bricks = mine.flatMap((each) => each.bricks);
  const hours = mine.flatMap((each) => each.hours);
  return {
    mix: mix.name,
    block: mix.facts?.block,
    litres: withGaps(litres, mix.gaps),
    origin: mix.origin,
    apart: true,
    lays: {
      litres,
      bricks: bricks.length ? sum(phrase`bricks laid in it`, 'bricks', bricks) : undefined,
      hours: hours.length ? sum(phrase`hours of laying`, 'h', hours) : undefined,
    },
  };
}

/** What some of the bricks of a task take of its hours. */
export function hoursFor(label: string, hours: Term, bricks: Term, all: Term): Term {
  return quotient(label, 'h', product(phrase`hours, times bricks`, 'h', [hours, bricks]), all);
}

/** The damp course; `laid` are all the bricks that are laid with it in the face of the wall or in the pier. */
export function dampApart(
  mix: Mix,
  damp: Laid,
  bricks: Term,
  laid: readonly Term[],
  tasks: readonly TaskNeed[],
): Apart {
  const task = tasks.find((t) => t.task === 'facework' || t.task === 'pier-work');
  const all = sum(phrase`bricks laid with it`, 'bricks', laid);
  const hours = task ? [hoursFor(phrase`laying the damp course`, task.hours, bricks, all)] : [];
  return { mix, what: phrase`the damp course`, laid: [damp], bricks: [bricks], hours };
}
