/** Ways out of a bond that does not bond: other starts of its courses, and the lap that they do keep. */
import { phrase } from '../../../../shared/phrase';
import { bondOf, courseLines } from '../../brickwork/wall/bond';
import { BlockFacts, type LineFacts } from '../../resolve/env';
import type { CoursePattern } from '../../setting-out';
import { SourceBlock } from '../../workspace/source';
import type { RemarkEdit, RemarkWay } from '../remark';
import { holdsFor, type Trial } from './trials';

/** The line that gives a course of the cycle, where each line gives one. */
export function lineOf(
  facts: BlockFacts,
  { thickness }: Trial,
  course: number,
): LineFacts | undefined {
  const lines = courseLines(facts, thickness);
  return lines.every(isOne) ? lines[course] : undefined;
}

const isOne = ({ line }: LineFacts) => line.kind.key === 'course';

/** Starts and laps worth trying, in bricks. */
const STARTS: readonly (readonly [number, string])[] = [
  [0.5, '1/2'],
  [0.25, '1/4'],
  [0.75, '3/4'],
  [1.25, '5/4'],
  [1, '1'],
  [1.5, '3/2'],
  [1.75, '7/4'],
  [0, '0'],
];
const LAPS = ['1/2', '1/3', '1/4'];

/** Starts offered: of a course that may begin in several places, the first few. */
const MOST_STARTS = 3;

/** Other starts of the course at fault, else of another; and the greatest lap that is kept. Only what proves sound is offered. */
export function waysOf(facts: BlockFacts, trial: Trial, fault: number): RemarkWay[] {
  const lines = [...courseLines(facts, trial.thickness).filter(isOne).entries()];
  const order = [...lines.filter(([i]) => i === fault), ...lines.filter(([i]) => i !== fault)];
  const holds = (way: RemarkWay) => soundAfter(facts, way.edits, trial);
  const courses = bondOf(facts, trial.n, trial.thickness)?.courses ?? [];
  const starts = firstFew(order, ([i, line]) =>
    startsOf(i, line, repeatOf(courses[i])).filter(holds).slice(0, MOST_STARTS),
  );
  const lap = lapsOf(facts).find(holds);
  return [...starts, ...(lap ? [lap] : [])];
}

/** What the first of them gives that gives anything. */
function firstFew<T, R>(all: readonly T[], give: (each: T) => R[]): R[] {
  for (const each of all) {
    const given = give(each);
    if (given.length > 0) return given;
  }
  return [];
}

/** Bricks after which the units of a course come again: a start further in is one nearer the end. */
function repeatOf(course: CoursePattern | undefined): number {
  const units = course?.units ?? [];
  return units.reduce((sum, unit) => sum + (unit === 'stretcher' ? 1 : 0.5), 0);
}

function startsOf(i: number, line: LineFacts, repeat: number): RemarkWay[] {
  return STARTS.flatMap(([at, start]) => {
    const edit = at < repeat ? startAt(line, start) : undefined;
    const title = phrase`Let course ${i + 1} begin ${start} brick from the end`;
    return edit ? [{ title, edits: [edit] }] : [];
  });
}

function lapsOf(facts: BlockFacts): RemarkWay[] {
  const line = facts.line('lap');
  if (!line?.values.lap) return [];
  return LAPS.map((part) => ({
    title: phrase`Ask for a lap of ${part} brick`,
    edits: [{ ...line.at('lap'), text: `${part} brick` }],
  }));
}

function startAt(line: LineFacts, start: string): RemarkEdit | undefined {
  const { units, start: written, place } = line.values;
  if (!units || place) return undefined;
  if (written) return { ...line.at('start'), text: `${start} brick` };
  const { line: at, end } = units.span;
  return { block: line.block, span: { line: at, start: end, end }, text: ` from ${start} brick` };
}

function soundAfter(facts: BlockFacts, edits: readonly RemarkEdit[], trial: Trial) {
  const { block, env } = facts;
  const lines = [...block.lines];
  for (const { span, text } of edits) {
    const line = lines[span.line] ?? '';
    lines[span.line] = line.slice(0, span.start) + text + line.slice(span.end);
  }
  const changed = new SourceBlock(block.file, block.firstLine, lines);
  const heading = changed.read.heading;
  if (!heading || changed.read.faults.length > block.read.faults.length) return false;
  const after = new BlockFacts(changed, heading, env);
  return holdsFor(after, trial);
}
