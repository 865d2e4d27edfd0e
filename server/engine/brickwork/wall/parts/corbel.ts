/** Courses laid out over one another at the top: the same bricks, held against how far they may go. */

import { phrase } from '../../../../../shared/phrase';
import type { Remark } from '../../../findings/remark';
import { corbelCorner, corbelFar } from '../../../findings/tops/corbel';
import { type CourseEnds, type SettingOut, sumTallies, type Tally } from '../../../setting-out';
import type { FaceArea } from '../../faces';
import { saidFrom, sizeSaid } from '../../said';
import { areasIn } from '../piers/projecting';
import type { WallPlan } from '../spec';
import type { PartOf } from './part';

export const corbel: PartOf = (masonry, plan, counts) => {
  const line = masonry.facts.line('corbel');
  const { ends: made, apart } = counts.corbel;
  const corner = corbelCorner(line, apart, masonry);
  const courses = Math.floor(line?.number('courses') ?? 0);
  const out = line?.number('project');
  if (!line || out === undefined || courses < 1) return corner && { remarks: [corner] };
  const found = [...corbelFar(line, plan.spec, masonry), corner];
  const remarks = found.filter((r): r is Remark => r !== undefined);
  const which = courses === 1 ? phrase`top course` : phrase`top ${courses} courses`;
  const each = courses === 1 ? '' : phrase` over the one below`;
  const areas = areasIn(asLong(counts.out, made), topmost(courses, plan));
  const past = made.length ? { past: made } : {};
  return {
    remarks,
    mortar: [bedsLess(areas, out, counts.out, made)],
    says: saidFrom(
      [
        phrase`Lay the ${which} out, ${courses === 1 ? '' : phrase`each `}${sizeSaid(out, masonry.env)}${each}.`,
      ],
      line,
    ),
    facts: { corbel: { areas, out, each: true, both: false, ...past } },
  };
};

/** The uppermost courses of each level of the top. */
function topmost(courses: number, { top }: WallPlan): FaceArea[] {
  return top.map(({ from, to, level }) => {
    return { from, to, courses: { from: Math.max(0, level - courses), to: level } };
  });
}

const SAME = 0.5;

/** The wall with all of its courses as long as it is. */
function asLong(out: SettingOut, made: readonly CourseEnds[]): SettingOut {
  if (!made.length) return out;
  const ends = new Map(made.map((each) => [each.course, each]));
  const bands = out.bands.map((band) => {
    const { left = 0, right = 0 } = ends.get(band.from) ?? {};
    const { length } = out.spec;
    const segments = band.segments.map((segment) => {
      const from = Math.abs(segment.from + left) < SAME ? 0 : segment.from;
      const to = Math.abs(segment.to - right - length) < SAME ? length : segment.to;
      return { ...segment, from, to };
    });
    return { ...band, segments };
  });
  return { ...out, bands };
}

/** Each course lies on the one below but for what it stands out: so much of its bed is left out. */
function bedsLess(
  areas: readonly FaceArea[],
  out: number,
  wall: SettingOut,
  made: readonly CourseEnds[],
): Tally {
  const plain = areas.reduce(
    (sum, a) => sum + (a.to - a.from) * (a.courses.to - a.courses.from),
    0,
  );
  const isIn = ({ course }: CourseEnds) =>
    areas.some(({ courses }) => course >= courses.from && course < courses.to);
  const beds = made.filter(isIn).reduce((sum, { left, right }) => sum + left + right, plain);
  const less = beds * Math.min(out, wall.thickness) * wall.spec.joints.bed;
  return { ...sumTallies([]), grossVolume: 0 - less };
}
