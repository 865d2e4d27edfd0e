/** So many courses, for a sentence or as it can stand in a job file: `1 course`, `3 courses`. */
export function coursesText(count: number): string {
  return `${count} ${count === 1 ? 'course' : 'courses'}`;
}
