/** What an arch takes of the courses it passes through. */
import { type Arch, halfWidthAt, ringArea, soffitArea } from './arch';
import type { Gap } from './carve';

/** Where an arch stands: its centre line, mm from the wall's left end, and the course it springs from. */
export interface Standing {
  middle: number;
  course: number;
}

/** One course of the wall and an arch: what a brick of it keeps at the least and at the most. */
export interface ArchCourse {
  course: number;
  /** Half the width in which no brick is left, mm: bricks are as long as their longest side. */
  least: number;
  /** Half the width within which bricks are cut, mm. */
  most: number;
  /** The skewback cuts it. */
  skewback: boolean;
}

/** Heights of a course's bricks over the springing line, mm. */
interface Levels {
  gauge: number;
  bed: number;
}

/** The courses that an arch passes through, from its springing up. */
export function archCourses(arch: Arch, at: Standing, { gauge, bed }: Levels): ArchCourse[] {
  const count = Math.ceil(arch.crown / gauge - 1e-9);
  const widest = halfWidthAt(arch, arch.skewback);
  return Array.from({ length: Math.max(0, count) }, (_, i) => {
    const low = i * gauge + bed;
    const high = (i + 1) * gauge;
    const [below, above] = [halfWidthAt(arch, low), halfWidthAt(arch, high)];
    const holds = low < arch.skewback && arch.skewback < high;
    const most = Math.max(below, above, holds ? widest : 0);
    const skewback = low < arch.skewback;
    return { course: at.course + i, least: Math.min(below, above), most, skewback };
  });
}

/** Where an arch leaves nothing of a course, mm along the wall. */
export function archGaps(courses: readonly ArchCourse[], { middle }: Standing): Gap[] {
  return courses
    .filter(({ least }) => least > 0)
    .map(({ course, least }) => ({ course, from: middle - least, to: middle + least }));
}

/**
 * What opening and arch take of the face over the whole gaps, mm²: the wedges that cut bricks lose
 * beside and under the extrados. Exact, but for the bed joint under the course it springs from.
 */
export function wedgeArea(arch: Arch, gaps: readonly Gap[], gauge: number): number {
  const whole = gaps.reduce((sum, { from, to }) => sum + (to - from) * gauge, 0);
  return soffitArea(arch) + ringArea(arch) - whole;
}
