/** Courses that stand out before the face of a wall: where they show in it. */
import type { SettingOut } from '../../../setting-out';
import type { FaceArea } from '../../faces';

/** Overlaps less than this are none, mm. */
const SAME = 0.5;

/** What of a setting-out lies in stretches of courses: its openings and piers are left out. */
export function areasIn(out: SettingOut, stretches: readonly FaceArea[]): FaceArea[] {
  const areas = out.bands.flatMap((band) =>
    stretches.flatMap(({ from, to, courses }) => {
      const low = Math.max(band.from, courses.from);
      const high = Math.min(band.to, courses.to);
      if (!(high > low)) return [];
      return band.segments.flatMap((segment): FaceArea[] => {
        const [left, right] = [Math.max(from, segment.from), Math.min(to, segment.to)];
        if (!(right - left > SAME)) return [];
        return [{ from: left, to: right, courses: { from: low, to: high } }];
      });
    }),
  );
  return joined(areas);
}

/** Areas as long as one another that lie on each other as one: bands part where anything beside them begins or ends. */
function joined(areas: readonly FaceArea[]): FaceArea[] {
  const whole = new Map<string, FaceArea>();
  const done: FaceArea[] = [];
  for (const area of areas.toSorted((a, b) => a.courses.from - b.courses.from)) {
    const key = `${area.from} ${area.to}`;
    const below = whole.get(key);
    const on = below?.courses.to === area.courses.from;
    if (below && !on) done.push(below);
    whole.set(key, on ? { ...area, courses: { ...area.courses, from: below.courses.from } } : area);
  }
  return [...done, ...whole.values()];
}
