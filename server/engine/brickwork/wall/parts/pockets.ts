/** A wall bonded into standing work: the pockets and indents that are cut there for its courses. */

import { exact } from '../../../../../shared/exact';
import { phrase } from '../../../../../shared/phrase';
import { endSaid } from '../../../kinds-said';
import { taskHours } from '../../../labour/output';
import { defaultLine, type LineFacts } from '../../../resolve/env';
import type { Side } from '../../../setting-out';
import { counted, fact, product, sum, type Term } from '../../../working/term';
import type { Masonry } from '../../masonry';
import type { Figure } from '../../needs';
import { saidFrom, sizeSaid } from '../../said';
import { SIDES } from '../meet/ends';
import type { WallPlan } from '../spec';
import { indentsAt } from './indents';
import type { Part, PartOf } from './part';

export const pockets: PartOf = (masonry, plan, { blocks, out }, gang): Part | undefined => {
  const sides = SIDES.filter((side) => blocks[side] !== undefined);
  const cut = sides.map((side) => pocketsAt(side, blocks[side]!, masonry, plan));
  const toothed = SIDES.filter((side) => masonry.facts.line(side)?.word('standing') === 'cut');
  const indents = toothed.map((side) => indentsAt(side, masonry, plan, out));
  if (!cut.length && !indents.length) return undefined;
  const each = [...cut, ...indents].map((c) => c.bricks);
  const bricks = sum(phrase`Bricks cut out of standing work`, 'bricks', each);
  const label = cut.length
    ? phrase`Cutting pockets in standing work`
    : phrase`Cutting indents in standing work`;
  return {
    figures: [
      ...figureOf(
        'pockets',
        phrase`Pockets in standing work`,
        cut.map((c) => c.pockets),
      ),
      ...figureOf(
        'indents',
        phrase`Indents in standing work`,
        indents.map((c) => c.count),
      ),
      { key: 'cut-out', term: bricks },
    ],
    tasks: [{ task: 'cut-out', hours: taskHours('cut-out', label, bricks, masonry.env, gang) }],
    says: [
      ...sides.flatMap((side) =>
        saidFrom([said(side, blocks[side]!, masonry, plan)], masonry.facts.line(side)),
      ),
      ...toothed.flatMap((side, i) => saidFrom([indents[i]!.says], masonry.facts.line(side))),
    ],
    does: ['cutting'],
  };
};

function figureOf(key: string, label: string, counts: readonly Term[]): Figure[] {
  return counts.length ? [{ key, term: sum(label, '', counts) }] : [];
}

interface Cut {
  readonly pockets: Term;
  readonly bricks: Term;
}

/** Every second block runs in, the lowest first; a brick comes out for each course of it and each brick of thickness. */
function pocketsAt(
  side: Side,
  block: number,
  { facts, env }: Masonry,
  { spec, height }: WallPlan,
): Cut {
  const count = Math.ceil(Math.ceil(spec.courses / block) / 2);
  const own = facts.line(side)!;
  const line: LineFacts = own.values.block ? own : (defaultLine(env, 'block-courses') ?? own);
  const courses = fact(phrase`courses to a block`, exact(block), 'courses', line.origin);
  const pockets = counted(phrase`Pockets at the ${endSaid(side)}`, count, '', {
    note: phrase`every second block of courses runs in, the lowest first`,
    args: [height.term, courses],
  });
  const abreast = fact(
    phrase`bricks through the wall`,
    exact(Math.ceil(spec.thickness / 2)),
    'bricks',
  );
  const parts = [pockets, courses, abreast];
  return {
    pockets,
    bricks: product(phrase`Bricks cut out at the ${endSaid(side)}`, 'bricks', parts),
  };
}

function said(side: Side, block: number, { env }: Masonry, { spec }: WallPlan): string {
  const high = block * (spec.unit.height + spec.joints.bed);
  const deep = (spec.unit.length + spec.joints.perpend) / 2;
  const courses = block === 1 ? phrase`every second course` : phrase`every second ${block} courses`;
  return phrase`Cut pockets ${sizeSaid(high, env)} high and ${sizeSaid(deep, env)} deep into the standing work at its ${endSaid(side)}, and run ${courses} into them.`;
}
