/** A face, course by course. */
import { proveCourse } from './course';
import { proveLaps } from './laps';
import type { BuiltCourse, LayoutFault, ProofRules } from './types';

/**
 * Everything that is wrong with the face of a piece of brickwork, from the lowest course up; nothing
 * when it is sound. Costs n log n for the pieces of each course, whatever they are.
 */
export function proveFace(courses: readonly BuiltCourse[], rules: ProofRules): LayoutFault[] {
  const order = [...courses].sort((a, b) => a.course - b.course);
  return order.flatMap((course, i) => {
    const below = order[i - 1];
    const onIt = below && below.course === course.course - 1;
    return [...proveCourse(course, rules), ...(onIt ? proveLaps(below, course, rules) : [])];
  });
}
