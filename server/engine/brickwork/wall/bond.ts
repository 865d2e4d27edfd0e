/** A bond from its lines: courses from the bottom up, repeated. */

import type { Value, Values } from '../../../../grammar/read/values';
import { phrase } from '../../../../shared/phrase';
import { BlockFacts, factsNamed, type LineFacts } from '../../resolve/env';
import {
  type BondPattern,
  type CoursePattern,
  depthsOf,
  type FaceUnit,
  type RowPattern,
  type Thickness,
} from '../../setting-out';
import { halvesOf } from '../masonry';

/** More courses to a pattern than this, or more units to a course, is a slip of the pen. */
const MOST_COURSES = 64;
const MOST_UNITS = 64;

/**
 * `n` is the number the wall gives, for bonds that ask for one. Nothing when the bond has no course, or more of
 * them than anyone means: a pattern cut short would be another bond. Courses that stand under the wall’s own
 * thickness come before those of the bond.
 */
export function bondOf(
  facts: BlockFacts,
  n: number | undefined,
  halves: number,
): BondPattern | undefined {
  const number = n ?? facts.line('n')?.number('n') ?? 1;
  const courses: CoursePattern[] = [];
  for (const line of courseLines(facts, halves)) {
    const course = courseOf(line, number, courses.at(-1));
    const times = line.line.kind.key === 'courses' ? countOf(line.values, number) : 1;
    const turns = times > 1 ? [{ ...course, start: undefined }, course] : [course];
    if (courses.length + times > MOST_COURSES) return undefined;
    for (let i = 0; i < times; i++) courses.push(turns[i % turns.length]!);
  }
  if (!courses.length || courses.some((c) => !canBeLaid(c))) return undefined;
  const lap = facts.line('lap')?.number('lap') ?? 0;
  return { name: facts.name, courses, lap };
}

function canBeLaid({ core, back, ...front }: CoursePattern): boolean {
  const rows = [front, core, back].filter((row) => row !== undefined);
  return rows.every(({ units }) => units.length > 0 && units.length <= MOST_UNITS);
}

/** `course` and `courses` lines in the order they stand: those of the thickness, else the bond’s own. */
export function courseLines(facts: BlockFacts, halves: number): LineFacts[] {
  const thick = facts.lines('thick').find((line) => halvesOf(line.number('thick') ?? 0) === halves);
  const own = thick && new BlockFacts(thick.block, thick.line, facts.env);
  const found = own ? coursesIn(own) : [];
  return found.length ? found : coursesIn(facts);
}

function coursesIn(facts: BlockFacts): LineFacts[] {
  const lines = [...facts.lines('course'), ...facts.lines('courses')];
  return lines.sort((a, b) => a.line.syntax.span.line - b.line.syntax.span.line);
}

function courseOf(line: LineFacts, n: number, below: CoursePattern | undefined): CoursePattern {
  const row = (name: string, under: RowPattern | undefined) => rowOf(line, name, n, under);
  const front = row('', below) ?? { units: [] };
  return { ...front, core: row('core-', below?.core), back: row('back-', below?.back) };
}

function rowOf(
  line: LineFacts,
  row: string,
  n: number,
  below: RowPattern | undefined,
): RowPattern | undefined {
  const list = line.values[`${row}units`];
  if (list?.kind !== 'list') return undefined;
  const units: FaceUnit[] = [];
  for (const values of list.of) {
    const times = values.times || values.letter ? countOf(values, n) : 1;
    for (let i = 0; i < times && units.length <= MOST_UNITS; i++)
      units.push(text(values.unit) as FaceUnit);
  }
  const centred = line.word(`${row}place`) === 'centred';
  return { units, start: centred ? centredOn(units, below) : line.number(`${row}start`) };
}

/** Half the repeat of its units to the left of where those below begin. */
function centredOn(units: readonly FaceUnit[], below: RowPattern | undefined): number {
  const repeat = units.reduce((sum, unit) => sum + (unit === 'stretcher' ? 1 : 0.5), 0);
  return (below?.start ?? 0) - repeat / 2;
}

function countOf(values: Values, n: number): number {
  if (values.letter) return n;
  return values.times?.kind === 'quantity' ? Math.floor(values.times.low.toNumber()) : 1;
}

function text(value: Value | undefined): string {
  return value && 'text' in value ? value.text : '';
}

/** Half bricks through a wall, for a thickness that is set out. */
export function halvesSetOut(thick: number | undefined): Thickness | undefined {
  const halves = (thick ?? 0) * 2;
  return [1, 2, 3, 4].includes(halves) ? (halves as Thickness) : undefined;
}

/** The bond that a piece of work names, as it is laid so thick; nothing for one that does not say how that is filled. */
export function bondNamedIn(facts: BlockFacts, halves: Thickness): BondPattern | undefined {
  const line = facts.orDefault('bond');
  const named = line && factsNamed(facts.env, 'bond', line.word('bond'));
  const bond = named && bondOf(named, line.number('n'), halves);
  return bond && depthsOf(bond, halves) ? bond : undefined;
}

/** Why there is none, in a sentence without its full stop. */
export function whyNoBond(facts: BlockFacts, halves: Thickness): string {
  const name = facts.name || phrase`this work`;
  const line = facts.orDefault('bond');
  const known = line && factsNamed(facts.env, 'bond', line.word('bond'));
  if (!known) return phrase`the bond of ${name} is not known`;
  if (bondOf(known, line.number('n'), halves))
    return phrase`${known.title} does not say what stands behind the face of a wall as thick as ${name}`;
  return phrase`the bond of ${name} has no course, or more than ${MOST_COURSES} before it repeats`;
}
