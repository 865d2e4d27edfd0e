/** A top or a ground that falls: brickwork goes down in steps of whole courses, and where they are is to be said. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { jointsIn, type Masonry } from '../../brickwork/masonry';
import type { LineFacts } from '../../resolve/env';
import { type Fall, fallSteps, type StepAt } from '../../setting-out';
import { coursesText, coursesTold } from '../courses';
import { type Remark, type RemarkWay, rewrite } from '../remark';

/** Steps that are offered are no higher than so many courses, where no footing says how high they may be. */
const STEP_COURSES = 3;

/** The steps that a fall is reckoned with until it is said in steps, with the remark that says so. */
export function fallInSteps(
  line: LineFacts,
  masonry: Masonry,
  length: number,
  remarks: Remark[],
): StepAt[] {
  const fall = fallOf(line, masonry, length);
  if (!fall) return [];
  const choices = choicesOf(fall, masonry);
  remarks.push(falls(line, fall, choices, masonry));
  return choices[0] ?? [];
}

function fallOf(line: LineFacts, masonry: Masonry, length: number): Fall | undefined {
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  const mm = line.number('fall');
  if (!unit || !joints || mm === undefined) return undefined;
  const toRight = line.word('side') === 'right';
  const down = Math.round(mm / (unit.height + joints.bed));
  const half = (unit.length + joints.perpend) / 2;
  // The courses that a step of the ground adds are at its lower end, those that one of the top leaves at its higher.
  const from = (line.line.kind.key === 'ground') === toRight ? 'right' : 'left';
  const end = masonry.facts.orDefault(from)?.word('end') || 'stopped';
  const odd = end === 'stopped' ? -joints.perpend : 0;
  return { length, courses: toRight ? down : -down, half, from, odd };
}

/** The fewest steps that are low enough first, then twice as many, and one for each course. */
function choicesOf(fall: Fall, masonry: Masonry): StepAt[][] {
  const all = Math.abs(fall.courses);
  const fewest = Math.ceil(all / highest(masonry));
  const counts = [...new Set([fewest, 2 * fewest, all])].filter((n) => n <= all);
  return counts.flatMap((count) => {
    const steps = fallSteps(fall, count);
    return steps ? [steps] : [];
  });
}

/** Courses of a step: no more than its footing is thick, where one is said. */
function highest({ facts, brick, jointTerms }: Masonry): number {
  const deep = facts.line('footing')?.sides('size')?.at(-1);
  const gauge = (brick.size?.height ?? 0) + jointTerms.bed.value.toNumber();
  if (deep === undefined || !(gauge > 0)) return STEP_COURSES;
  return Math.max(1, Math.floor(deep / gauge));
}

function falls(
  line: LineFacts,
  fall: Fall,
  choices: readonly StepAt[][],
  masonry: Masonry,
): Remark {
  const { env } = masonry;
  const what = line.line.kind.key === 'ground' ? phrase`The ground` : phrase`The top`;
  const height = lengthText(env, line.number('fall') ?? 0);
  const courses = coursesTold(Math.abs(fall.courses));
  const [first] = choices;
  const reckoned = first
    ? stepsReckoned(first)
    : fall.courses
      ? phrase`No step is reckoned with, and the price is not complete. Say where it steps: top steps at 2.5 m down 1 course.`
      : phrase`No step is reckoned with.`;
  const message = phrase`${what} falls ${height}, the nearest to ${courses}. Brickwork falls in steps of whole courses: ${reckoned}`;
  const ways = choices.map((steps) => wayOf(line, steps, masonry));
  const lost = !first && fall.courses !== 0;
  const name = masonry.facts.name || phrase`the wall`;
  const leavesOut =
    line.line.kind.key === 'ground'
      ? phrase`the steps in which the ground of ${name} falls are not known`
      : phrase`the steps in which the top of ${name} falls are not known`;
  return {
    code: 'falls',
    severity: lost ? 'warning' : 'information',
    origin: line.origin,
    message,
    ...(lost ? { leavesOut } : {}),
    ways,
  };
}

/** `2 steps of 2 courses`; of unlike ones, the highest. */
function stepsText(steps: readonly StepAt[]): string {
  const high = Math.max(...steps.map(({ by }) => Math.abs(by)));
  const alike = steps.every(({ by }) => Math.abs(by) === high);
  const count = steps.length === 1 ? phrase`1 step` : phrase`${steps.length} steps`;
  return phrase`${count} of ${alike ? '' : phrase`up to `}${coursesTold(high)}`;
}

function stepsReckoned(steps: readonly StepAt[]): string {
  return steps.length === 1
    ? phrase`${stepsText(steps)} is reckoned with until they are said.`
    : phrase`${stepsText(steps)} are reckoned with until they are said.`;
}

function wayOf(line: LineFacts, steps: readonly StepAt[], { env }: Masonry): RemarkWay {
  const indent = ' '.repeat(line.line.syntax.indent);
  const texts = steps.map(({ at, by }) => {
    const way = by < 0 ? 'down' : 'up';
    const key = line.line.kind.key;
    return `${key} steps at ${lengthText(env, at)} ${way} ${coursesText(Math.abs(by))}`;
  });
  return { title: stepsText(steps), edits: [rewrite(line.origin, texts.join(`\n${indent}`))] };
}
