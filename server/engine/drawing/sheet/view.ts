import type { Segment, SettingOut } from '../../setting-out';
import type { Box } from '../model';

/** The part of a wall that is drawn. */
export interface Visible {
  /** Mm along the wall. */
  from: number;
  to: number;
  courses: { from: number; to: number };
}

/** A wall, and the part of it that is drawn: mm along it, and courses. */
export interface View {
  out: SettingOut;
  left: number;
  right: number;
  from: number;
  to: number;
  /** What stands past the wall's ends is drawn too: toothing, overhangs, a pier above its top. */
  whole: boolean;
}

export function viewOf(out: SettingOut, visible?: Visible): View {
  const { length, courses } = out.spec;
  const high = Math.floor(Math.max(courses, ...out.spec.piers.map((pier) => pier.courses)));
  return {
    out,
    left: Math.max(0, visible?.from ?? 0),
    right: Math.min(length, visible?.to ?? length),
    from: Math.max(0, Math.floor(visible?.courses.from ?? 0)),
    to: Math.min(high, Math.ceil(visible?.courses.to ?? high)),
    whole: visible === undefined,
  };
}

/** Visits the segments in view with the courses of each that are. */
export function eachSegment(
  view: View,
  visit: (segment: Segment, from: number, to: number) => void,
): void {
  for (const band of view.out.bands) {
    const from = Math.max(band.from, view.from);
    const to = Math.min(band.to, view.to);
    if (to <= from) continue;
    for (const segment of band.segments)
      if (segment.to > view.left && segment.from < view.right) visit(segment, from, to);
  }
}

/** What of a box is in view; null when nothing is. */
export function clip(view: View, box: Box): Box | null {
  if (view.whole) return box;
  const { gauge } = view.out;
  const x = Math.max(box.x, view.left);
  const y = Math.max(box.y, view.from * gauge);
  const width = Math.min(box.x + box.width, view.right) - x;
  const height = Math.min(box.y + box.height, view.to * gauge) - y;
  return width > 0 && height > 0 ? { ...box, x, y, width, height } : null;
}
