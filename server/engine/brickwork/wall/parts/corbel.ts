/** Courses laid out over one another at the top: the same bricks, held against how far they may go. */

import type { Remark } from '../../../findings/remark';
import { corbelFar } from '../../../findings/tops/corbel';
import { type SettingOut, sumTallies, type Tally } from '../../../setting-out';
import type { FaceArea } from '../../needs';
import { sizeSaid } from '../../said';
import { areasIn } from '../piers/projecting';
import type { WallPlan } from '../spec';
import type { PartOf } from './part';

export const corbel: PartOf = (masonry, plan, counts) => {
  const line = masonry.facts.line('corbel');
  const courses = Math.floor(line?.number('courses') ?? 0);
  const out = line?.number('project');
  if (!line || out === undefined || courses < 1) return undefined;
  const remarks = corbelFar(line, plan.spec, masonry).filter((r): r is Remark => r !== undefined);
  const which = courses === 1 ? 'top course' : `top ${courses} courses`;
  const each = courses === 1 ? '' : ' over the one below';
  const areas = areasIn(counts.out, topmost(courses, plan));
  return {
    remarks,
    mortar: [bedsLess(areas, out, counts.out)],
    says: [
      `Lay the ${which} out, ${courses === 1 ? '' : 'each '}${sizeSaid(out, masonry.env)}${each}.`,
    ],
    facts: { corbel: { areas, out, each: true, both: false } },
  };
};

/** The uppermost courses of each level of the top. */
function topmost(courses: number, { top }: WallPlan): FaceArea[] {
  return top.map(({ from, to, level }) => {
    return { from, to, courses: { from: Math.max(0, level - courses), to: level } };
  });
}

/** Each course lies on the one below but for what it stands out: so much of its bed is left out. */
function bedsLess(areas: readonly FaceArea[], out: number, wall: SettingOut): Tally {
  const beds = areas.reduce((sum, a) => sum + (a.to - a.from) * (a.courses.to - a.courses.from), 0);
  const less = beds * Math.min(out, wall.thickness) * wall.spec.joints.bed;
  return { ...sumTallies([]), grossVolume: 0 - less };
}
