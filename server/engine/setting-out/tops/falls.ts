import type { StepAt } from './profile';

/** A line that falls evenly over a wall, to be laid in whole courses. */
export interface Fall {
  /** Of the wall, mm. */
  length: number;
  /** Courses that it falls from left to right; negative where it rises. */
  courses: number;
  /** A half brick with its joint, mm. */
  half: number;
  /** What the courses beside a step are measured from: they are the longer ones there. */
  from: 'left' | 'right';
  /** From that end to a step, beyond so many half bricks, mm: less a joint at a free end. */
  odd: number;
}

/** More steps than this in one wall are a slope. */
export const MOST_STEPS = 40;

/**
 * So many steps, spread evenly, each as near to its place as half bricks from the end allow; the odd
 * courses go to the first ones. Nothing where they do not all find a place of their own.
 */
export function fallSteps(fall: Fall, count: number): StepAt[] | undefined {
  const { length, courses, half, from, odd } = fall;
  const all = Math.abs(courses);
  if (count < 1 || count > Math.min(all, MOST_STEPS)) return undefined;
  const each = Math.floor(all / count);
  const steps = Array.from({ length: count }, (_, i) => {
    const place = ((i + 1) * length) / (count + 1);
    const away = from === 'left' ? place : length - place;
    const near = Math.round((away - odd) / half) * half + odd;
    const by = each + (i < all % count ? 1 : 0);
    return { at: from === 'left' ? near : length - near, by: courses > 0 ? -by : by };
  });
  const inOrder = steps.every(({ at }, i) => at > (steps[i - 1]?.at ?? 0) && at < length);
  return inOrder ? steps : undefined;
}
