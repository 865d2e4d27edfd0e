/** A plinth that is not so many half bricks thicker than its wall. */
import { phrase } from '../../../../shared/phrase';
import type { Masonry } from '../../brickwork/masonry';
import type { LineFacts } from '../../resolve/env';
import { coursesText } from '../courses';
import { type Remark, rewrite } from '../remark';

/** Whole rows of half a brick: in front, or a quarter brick out from each face. */
const WAYS = ['1/2 brick front', '1/4 brick both'];

export function plinthOff(line: LineFacts, { facts }: Masonry): Remark {
  const courses = coursesText(Math.max(1, Math.floor(line.number('courses') ?? 1)));
  const brick = line.values.brick ? ` in ${line.word('brick')}` : '';
  const message = phrase`A plinth is laid as so many half bricks more than the wall: half a brick out from the front of ${facts.name || phrase`the wall`}, or a quarter out from each face. What this one stands out is no such number, and no bricks are counted for it.`;
  const ways = WAYS.map((out) => ({
    title: phrase`Let it stand out ${out.replace(' front', phrase`, in front`).replace(' both', phrase`, from both faces`)}`,
    edits: [rewrite(line.origin, `plinth ${courses} project ${out}${brick}`)],
  }));
  return {
    code: 'plinth-off',
    severity: 'warning',
    origin: line.at('project'),
    message: phrase`${message} The price is not complete without them.`,
    leavesOut: phrase`the bricks of the plinth of ${facts.name || phrase`the wall`} are not counted`,
    ways,
  };
}
