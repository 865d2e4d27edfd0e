/** The courses of a pier that stands alone, on plan. */
import { phrase } from '../../../../shared/phrase';
import type { CoursePlan, UnitSize } from '../../setting-out';
import type { Units } from '../lengths';
import type { Drawing } from '../model';
import type { DrawingSet } from '../sheet/set';
import { apart, edgesOf } from './course-plan';
import { planOf } from './plan';

export interface PierPlanOptions {
  title: string;
  units?: Units;
  unit: UnitSize;
  /** Over its faces, mm. */
  width: number;
  depth: number;
  /** From the bottom, repeated upward. */
  courses: readonly CoursePlan[];
  /** The lower of the two drawn, from 0. */
  course?: number;
}

function planAt(course: number, options: PierPlanOptions): Drawing {
  const { courses, units = 'millimetres', unit, width, depth, title } = options;
  const { pieces, core } = courses[course % courses.length]!;
  const left = pieces.filter(({ x }) => x < 1).map(({ y }) => y);
  return planOf({
    title: phrase`Course ${course + 1}`,
    description: phrase`${title}, course ${course + 1} on plan.`,
    units,
    unit,
    window: { left: 0, right: width, front: 0, back: depth },
    goesOn: { left: false, right: false },
    pieces,
    part: { course: course + 1 },
    cores: core,
    along: edgesOf(pieces, 0, width),
    through: apart([0, ...left, depth]),
    throughForm: 'running',
  });
}

/** Two courses, one on the other, side by side. */
export function pierPlanSet(options: PierPlanOptions): DrawingSet {
  const { title, units = 'millimetres', course = 0 } = options;
  const both = options.courses.length > 1 ? [course, course + 1] : [course];
  return {
    title,
    description: phrase`Courses ${both.map((at) => at + 1).join(phrase` and `)} of a pier on plan.`,
    units,
    scale: units === 'feet' ? 4 : 5,
    groups: both.map((at) => ({ title: '', drawings: [planAt(at, options)] })),
    notes: [phrase`Seen from above, the front face below. Courses are numbered from the ground.`],
  };
}
