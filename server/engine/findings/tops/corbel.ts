/** Courses that are laid further out than the library says they may be. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { type Masonry, thicknessOf } from '../../brickwork/masonry';
import { defaultLine, factsOf, type LineFacts } from '../../resolve/env';
import type { WallSpec } from '../../setting-out';
import type { SourceBlock } from '../../workspace/source';
import { coursesText, coursesTold } from '../courses';
import type { Remark, RemarkWay } from '../remark';

/** Nothing where no library says how far. `spec` is the wall’s. */
export function corbelFar(
  line: LineFacts,
  { unit, thickness, joints }: WallSpec,
  masonry: Masonry,
): (Remark | undefined)[] {
  const { env } = masonry;
  const rule = defaultLine(env, 'corbels');
  const share = (key: string) => rule?.number(key) ?? Number.POSITIVE_INFINITY;
  const out = line.number('project')!;
  const courses = Math.floor(line.number('courses')!);
  const wall = thicknessOf(thickness, unit, joints.perpend);
  const each = Math.min(share('height') * unit.height, share('width') * unit.width);
  const all = share('wall') * wall;
  const source = rule?.line.syntax.comment?.text.replace(/^#\s*/, '') ?? '';
  const far = (key: string, message: string, ways: readonly RemarkWay[]): Remark => ({
    code: 'corbel-far',
    about: key,
    severity: 'warning',
    origin: line.at(key),
    message: phrase`${message}${source ? ` (${source})` : ''}. Ask a structural engineer about anything further.`,
    related: rule && [{ origin: rule.origin, message: phrase`How far courses may be laid out` }],
    ways,
  });
  const text = (mm: number) => lengthText(env, mm);
  return [
    out > each + SAME
      ? far(
          'project',
          phrase`Each course may be laid out ${text(each)} over the one below, and here it is ${text(out)}`,
          smaller(line, Math.min(each, all / courses), masonry),
        )
      : undefined,
    out * courses > all + SAME
      ? far(
          'courses',
          phrase`Together they may be laid out ${text(all)} from a wall ${text(wall)} thick, and here they are ${text(out * courses)}`,
          fewer(line, Math.floor((all + SAME) / out)),
        )
      : undefined,
  ];
}

const SAME = 1e-6;

/** Down to the next 5 mm, or to an eighth of an inch. */
function smaller(line: LineFacts, most: number, { env }: Masonry): RemarkWay[] {
  const step = env.imperial ? 25.4 / 8 : 5;
  const out = Math.floor((most + SAME) / step) * step;
  if (out <= 0) return [];
  const text = lengthText(env, out);
  return [{ title: phrase`${text} each`, edits: [{ ...line.at('project'), text }] }];
}

/** A corner round a corbel, of walls whose courses are not laid with one another there. */
export function corbelCorner(
  line: LineFacts | undefined,
  others: readonly SourceBlock[],
  { facts, env }: Masonry,
): Remark | undefined {
  if (!others.length) return undefined;
  const names = others.map((block) => factsOf(block, env)!.name).join(phrase` and `);
  return {
    code: 'corbel-corner',
    severity: 'warning',
    origin: (line ?? facts).origin,
    message: phrase`The corbel of ${names} goes round its corner with ${facts.name || phrase`this wall`}, but the courses of the two are not level. They are counted and drawn as long as the wall, without what goes round the corner.`,
    ways: [],
  };
}

function fewer(line: LineFacts, courses: number): RemarkWay[] {
  if (courses < 1) return [];
  const text = coursesText(courses);
  return [
    { title: phrase`Lay out ${coursesTold(courses)}`, edits: [{ ...line.at('courses'), text }] },
  ];
}
