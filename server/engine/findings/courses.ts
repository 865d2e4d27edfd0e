import { phrase } from '../../../shared/phrase';

/** So many courses, for a sentence. */
export function coursesTold(count: number): string {
  return count === 1 ? phrase`1 course` : phrase`${count} courses`;
}

/** So many courses as it stands in a job file: `1 course`, `3 courses`. */
export function coursesText(count: number): string {
  return `${count} ${count === 1 ? 'course' : 'courses'}`;
}
