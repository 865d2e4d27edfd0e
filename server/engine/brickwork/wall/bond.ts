/** A bond from its lines: courses from the bottom up, repeated. */

import type { Value, Values } from '../../../../grammar/read/values';
import type { BlockFacts, LineFacts } from '../../resolve/env';
import type { BondPattern, CoursePattern, FaceUnit } from '../../setting-out';

/** More courses to a pattern than this, or more units to a course, is a slip of the pen. */
export const MOST_COURSES = 64;
const MOST_UNITS = 64;

/**
 * `n` is the number the wall gives, for bonds that ask for one. Nothing when the bond has no course, or more of
 * them than anyone means: a pattern cut short would be another bond.
 */
export function bondOf(facts: BlockFacts, n: number | undefined): BondPattern | undefined {
  const number = n ?? facts.line('n')?.number('n') ?? 1;
  const courses: CoursePattern[] = [];
  for (const line of courseLines(facts)) {
    const course = courseOf(line, number);
    const times = line.line.kind.key === 'courses' ? countOf(line.values, number) : 1;
    const turns = times > 1 ? [{ units: course.units }, course] : [course];
    if (courses.length + times > MOST_COURSES) return undefined;
    for (let i = 0; i < times; i++) courses.push(turns[i % turns.length]!);
  }
  if (!courses.length || courses.some((c) => !canBeLaid(c))) return undefined;
  const lap = facts.line('lap')?.number('lap') ?? 0;
  return { name: facts.name, courses, lap };
}

function canBeLaid({ units }: CoursePattern): boolean {
  return units.length > 0 && units.length <= MOST_UNITS;
}

/** `course` and `courses` lines in the order they stand. */
function courseLines(facts: BlockFacts): LineFacts[] {
  const lines = [...facts.lines('course'), ...facts.lines('courses')];
  return lines.sort((a, b) => a.line.syntax.span.line - b.line.syntax.span.line);
}

function courseOf(line: LineFacts, n: number): CoursePattern {
  const list = line.values.units;
  const units: FaceUnit[] = [];
  for (const values of list?.kind === 'list' ? list.of : []) {
    const times = values.times || values.letter ? countOf(values, n) : 1;
    for (let i = 0; i < times && units.length <= MOST_UNITS; i++)
      units.push(text(values.unit) as FaceUnit);
  }
  return { units, start: line.number('start') };
}

function countOf(values: Values, n: number): number {
  if (values.letter) return n;
  return values.times?.kind === 'quantity' ? Math.floor(values.times.low.toNumber()) : 1;
}

function text(value: Value | undefined): string {
  return value && 'text' in value ? value.text : '';
}
