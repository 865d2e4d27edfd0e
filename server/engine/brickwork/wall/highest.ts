/** How much higher than it is laid a wall or a pier may come, whose height is a range. */

import { endsOf, isRange } from '../../resolve/ends';
import type { LineFacts } from '../../resolve/env';

/**
 * Mm from the height that is laid, the middle of the range, to its high end; nought where it is no range. `line` gives
 * courses, or a length by one of `lengths`; `gauge` is the height of a course, mm.
 */
export function higherAtMost(
  line: LineFacts | undefined,
  gauge: number,
  lengths: readonly string[] = ['height'],
): number {
  const courses = endsOf(line, 'courses');
  if (line && courses && isRange(courses))
    return Math.max(0, (Math.floor(courses.most) - Math.floor(line.number('courses')!)) * gauge);
  for (const key of lengths) {
    const high = endsOf(line, key);
    if (line && high && isRange(high)) return higher(line.number(key)!, high.most, gauge);
  }
  return 0;
}

/** In whole courses, and no lower than the line says: its beds may be opened to reach it. */
function higher(laid: number, most: number, gauge: number): number {
  const whole = (high: number) => Math.round(high / gauge) * gauge;
  return Math.max(0, Math.max(whole(most), most) - whole(laid));
}
