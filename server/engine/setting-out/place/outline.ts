/** What one course of a wall has to fill on plan: each of its rows from line to line, and the joints between rows. */
import type { PlanOutline } from '../prove';
import type { Segment, SettingOut } from '../types';

/**
 * Rectangles on plan, mm as {@link PlacedPiece} has them, for a wall that meets no other. Free and plain ends are the
 * lines of the work itself; where a course is toothed it ends as it was laid, which a proof of the face judges.
 */
export function planOutline(out: SettingOut, course: number): PlanOutline[] {
  const { joints } = out.spec;
  const rows = rowsAt(out, course);
  const between = rows.slice(1).flatMap((row, i) => jointsBetween(rows[i]!, row, joints.perpend));
  return [...rows.flat(), ...between];
}

function rowsAt(out: SettingOut, course: number): PlanOutline[][] {
  const { unit, joints } = out.spec;
  const half = (unit.length + joints.perpend) / 2;
  let y = 0;
  return out.rows.flatMap(({ bands, depths }) => {
    const deep = depths[course % depths.length]!;
    if (deep === 0) return [];
    const place = { y, height: Math.min(deep * half - joints.perpend, out.thickness - y) };
    y += deep * half;
    const band = bands.find(({ from, to }) => course >= from && course < to);
    return [(band?.segments ?? []).map((s) => ({ ...endsOf(s, course), ...place }))];
  });
}

function endsOf(segment: Segment, course: number) {
  const { left, right } = segment;
  const run = segment.runs[course % segment.runs.length]!;
  const from = left === 'toothed' ? segment.from + run.from : segment.from;
  const to = right === 'toothed' ? segment.from + run.from + run.length : segment.to;
  // Teeth have a joint of their own, half of which the work that they bond into would cover.
  const kind = (end: Segment['left']) => (end === 'stopped' ? end : ('butted' as const));
  return { x: from, width: to - from, left: kind(left), right: kind(right) };
}

/** Where one row stands behind another, as far as both reach. */
function jointsBetween(
  front: readonly PlanOutline[],
  back: readonly PlanOutline[],
  joint: number,
): PlanOutline[] {
  const found: PlanOutline[] = [];
  for (let i = 0, k = 0; i < front.length && k < back.length; ) {
    const [a, b] = [front[i]!, back[k]!];
    const from = Math.max(a.x, b.x);
    const to = Math.min(a.x + a.width, b.x + b.width);
    const { left } = a.x === from ? a : b;
    const { right } = a.x + a.width === to ? a : b;
    const y = a.y + a.height;
    if (to > from) found.push({ x: from, width: to - from, left, right, y, height: joint });
    if (a.x + a.width <= to) i++;
    else k++;
  }
  return found;
}
