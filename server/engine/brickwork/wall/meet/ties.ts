/** Ties in the beds of a wall at one place along it: across a movement joint, or into a wall that it meets. */
import { phrase } from '../../../../../shared/phrase';
import type { LineFacts } from '../../../resolve/env';
import { counted, type Term } from '../../../working/term';
import type { WallPlan } from '../spec';

/** How many courses stand there. */
export function coursesBefore(plan: WallPlan, at: number): number {
  const standing = (levels: WallPlan['top']) => {
    const level = levels.filter((l) => l.from <= at + 0.5).at(-1) ?? levels[0];
    return level?.level ?? 0;
  };
  return Math.max(0, standing(plan.top) - standing(plan.ground));
}

/** Courses from one tie to the next, never farther apart in height than the line says. */
function coursesApart(line: LineFacts, { spec }: WallPlan): number {
  const gauge = spec.unit.height + spec.joints.bed;
  return Math.max(1, Math.floor(((line.number('apart') ?? 0) + 0.5) / gauge));
}

/** A tie lies on top of every so many courses, with a course over it; one for each brick of thickness. `courses` are those at each place. */
export function tieTerm(
  label: string,
  line: LineFacts,
  plan: WallPlan,
  courses: readonly number[],
): Term {
  const apart = coursesApart(line, plan);
  const abreast = Math.ceil(plan.spec.thickness / 2);
  const each = courses.map((high) => Math.max(0, Math.floor((high - 1) / apart)) * abreast);
  const ties = each.reduce((sum, n) => sum + n, 0);
  const detail = () =>
    each.map((n, i) => phrase`${n} in ${courses[i]} courses, one on every ${apart}`);
  const note = phrase`counted bed by bed, none on the top course`;
  const said = line.term('apart', phrase`ties, how far apart in height`);
  return counted(label, ties, 'pieces', { detail, note, args: [said, plan.height.term] });
}
