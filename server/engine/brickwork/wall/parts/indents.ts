/** A wall toothed into standing work that was not left toothed: the indents that are cut there for its courses. */

import { exact } from '../../../../../shared/exact';
import { phrase } from '../../../../../shared/phrase';
import { endSaid } from '../../../kinds-said';
import type { SettingOut, Side } from '../../../setting-out';
import { counted, fact, product, type Term } from '../../../working/term';
import type { Masonry } from '../../masonry';
import { sizeSaid } from '../../said';
import type { WallPlan } from '../spec';

export interface Indents {
  readonly count: Term;
  readonly bricks: Term;
  /** For the client. */
  readonly says: string;
}

/** Nearer than this is at the end itself, mm. */
const SAME = 0.5;

/** The courses that run on past an end of the wall, and how far the farthest of them does, mm. */
function toothing({ bands, spec }: SettingOut, side: Side): { courses: number; deep: number } {
  let [courses, deep] = [0, 0];
  for (const { from, to, segments } of bands)
    for (const segment of segments)
      for (const [turn, run] of segment.runs.entries()) {
        const past =
          side === 'left'
            ? 0 - segment.from - run.from
            : segment.from + run.from + run.length - spec.length;
        if (past <= SAME) continue;
        courses += turnsIn(from, to, turn, segment.runs.length);
        deep = Math.max(deep, past);
      }
  return { courses, deep };
}

/** How many of the courses `from` to `to`, the last not included, are the `turn`-th of every `cycle`. */
function turnsIn(from: number, to: number, turn: number, cycle: number): number {
  const upTo = (course: number) => Math.ceil((course - turn) / cycle);
  return upTo(to) - upTo(from);
}

/** A brick is cut out for each indent and each brick of thickness, as for a pocket one course high (common practice). */
export function indentsAt(
  side: Side,
  { facts, env }: Masonry,
  { spec, height }: WallPlan,
  out: SettingOut,
): Indents {
  const { courses, deep } = toothing(out, side);
  const line = facts.line(side)!;
  const count = counted(phrase`Indents at the ${endSaid(side)}`, courses, '', {
    note: phrase`one for each course that runs in`,
    args: [height.term, fact(phrase`indents are cut`, exact(1), '', line.origin)],
  });
  const abreast = fact(
    phrase`bricks through the wall`,
    exact(Math.ceil(spec.thickness / 2)),
    'bricks',
  );
  const bricks = product(phrase`Bricks cut out at the ${endSaid(side)}`, 'bricks', [
    count,
    abreast,
  ]);
  const says = phrase`Cut indents one course high and ${sizeSaid(deep, env)} deep into the standing work at its ${endSaid(side)}, and tooth it into them.`;
  return { count, bricks, says };
}
