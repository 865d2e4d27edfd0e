/** A backing whose courses do not come out where the face ends: blocks are then cut in height. */
import { phrase } from '../../../shared/phrase';
import { lengthText } from '../brickwork/lengths';
import type { Masonry } from '../brickwork/masonry';
import type { Backing } from '../brickwork/wall/parts/backing/lay';
import type { WallPlan } from '../brickwork/wall/spec';
import type { Remark, RemarkWay } from './remark';

export function backingCourses(backing: Backing, masonry: Masonry, plan: WallPlan): Remark[] {
  const { line, off, out } = backing;
  if (!off.length) return [];
  const { env } = masonry;
  const each = off.map(({ what, by }) => phrase`${lengthText(env, by)} at ${what}`).join(', ');
  const title = backing.masonry.brick.title;
  const message = phrase`Courses of ${title} (${lengthText(env, out.gauge)}) do not come out with those of the face: ${each} is cut off in height. The blocks cut are counted as whole ones.`;
  return [
    {
      code: 'backing-courses',
      severity: 'information',
      origin: line.origin,
      message,
      ways: () => waysOf(backing, masonry, plan),
    },
  ];
}

/** Heights in courses of the face at which the backing comes out, the nearest lower and higher. */
function waysOf({ out }: Backing, { facts, env }: Masonry, { spec }: WallPlan): RemarkWay[] {
  const line = facts.line('height');
  if (!line?.values.courses) return [];
  const face = spec.unit.height + spec.joints.bed;
  const near = [-1, 1].flatMap((step) => {
    for (let n = spec.courses + step; n > 0 && Math.abs(n - spec.courses) <= FARTHEST; n += step)
      if (comesOut(n * face, out.gauge)) return [n];
    return [];
  });
  return near.map((courses) => ({
    title: phrase`Make the wall ${courses} courses high, ${lengthText(env, courses * face)}`,
    edits: [{ ...line.at('courses'), text: `${courses} courses` }],
  }));
}

/** As far as one looks for a height, in courses. */
const FARTHEST = 12;

function comesOut(height: number, gauge: number): boolean {
  const courses = height / gauge;
  return Math.abs(courses - Math.round(courses)) * gauge < 0.5;
}
