/** The row of low bricks on something let into a wall that is no whole number of courses high. */

import { placeCourse } from '../place/course';
import type { Band, PlacedPiece, SettingOut } from '../types';
import { carve, type Gap } from './carve';

/** A stretch of one course, mm from the wall's left end. */
export interface CoursePart {
  readonly course: number;
  readonly from: number;
  readonly to: number;
}

/** Only the courses that say where perpends may not stand. */
const about = (bands: readonly Band[], course: number) =>
  bands.filter(({ from, to }) => from <= course + 1 && to > course - 1);

/**
 * Pieces on plan that go on in the perpends of a course, from end to end of a part of it, as if nothing had been let into
 * the wall there: cut flush with its ends, and none of them under the least cut where there is any other way.
 */
export function partOfCourse(out: SettingOut, { course, from, to }: CoursePart): PlacedPiece[] {
  const whole = out.uncarved ?? out;
  const { length, joints } = whole.spec;
  const beyond = Math.abs(length) + Math.abs(from) + Math.abs(to);
  const gaps: Gap[] = [
    { course, from: -beyond, to: from - joints.perpend, upright: true },
    { course, from: to + joints.perpend, to: 2 * beyond, upright: true },
  ];
  const rows = whole.rows.map((row) => ({ ...row, bands: about(row.bands, course) }));
  const bands = rows[0]?.bands ?? [];
  const cut = carve({ ...whole, rows, bands, patches: [] }, gaps);
  return placeCourse(cut, course);
}
