/** Courses that stand out before the face of a wall: where they show in it. */
import type { SettingOut } from '../../setting-out';
import type { FaceArea } from '../needs';

/** Overlaps less than this are none, mm. */
const SAME = 0.5;

/** What of a setting-out lies in stretches of courses: its openings and piers are left out. */
export function areasIn(out: SettingOut, stretches: readonly FaceArea[]): FaceArea[] {
  return out.bands.flatMap((band) =>
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
}
