/** Whether the courses of two walls come level, so that one can be bonded into the other. */
import type { SettingOut } from '../../../setting-out';

/** Courses of two walls this much apart in height run into one another all the same, mm to a course. */
const SAME_GAUGE = 0.5;

/** All the way up: within a bed joint at the top of the lower one. */
export function levelCourses(a: SettingOut, b: SettingOut): boolean {
  const courses = Math.min(a.spec.courses, b.spec.courses);
  const off = Math.abs(a.gauge - b.gauge);
  return off <= SAME_GAUGE && off * courses <= a.spec.joints.bed;
}
