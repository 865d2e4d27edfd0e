/** A bond that does not bond as it is written: found by laying it as sample walls and proving each. */
import { bondOf, courseLines, halvesSetOut } from '../brickwork/wall/bond';
import { BlockFacts, type Env, type LineFacts } from '../resolve/env';
import {
  type BondPattern,
  type BondProof,
  bondHolds,
  type CoursePattern,
  depthsOf,
  type LayoutFault,
  proveBond,
  type Thickness,
} from '../setting-out';
import { SourceBlock } from '../workspace/source';
import { takesNumber } from './idle';
import { nameOrigin, type Remark, type RemarkEdit, type RemarkWay } from './remark';

/** A bond with more units before it repeats is not tried: every one that has a name has far fewer. */
const MOST_UNITS = 64;
const MOST_COURSES = 16;

const known = new WeakMap<SourceBlock, readonly Remark[]>();

/** What is wrong with a bond block of the file itself. It hangs on nothing else, so that it is kept with the block. */
export function bondUnsound(block: SourceBlock, env: Env): readonly Remark[] {
  if (block.kind !== 'bond') return [];
  const before = known.get(block);
  if (before) return before;
  const remarks = remarksOf(block, env);
  known.set(block, remarks);
  return remarks;
}

function remarksOf(block: SourceBlock, env: Env): Remark[] {
  const facts = block.read.heading && new BlockFacts(block, block.read.heading, env);
  if (!facts) return [];
  for (const tried of trialsOf(facts)) {
    const proof = proofOf(facts, tried);
    if (proof && !isSound(proof)) return [remarkOf(facts, tried, proof)];
  }
  return [];
}

/** One way in which a wall may ask for the bond. */
interface Trial {
  readonly thickness: Thickness;
  /** What the wall gives for `n`; the bond’s own where it gives none. */
  readonly n?: number;
}

/** What a wall may sensibly give for `n`. */
const NUMBERS = [1, 2, 3, 4, 5, 6];
/** Of walls with a number of their own only so few lengths are tried, half bricks apart: odd and even ones. */
const FEW = 5;

const everyOf = ({ n }: Trial) => (n === undefined ? 1 : FEW);

/** Each thickness as a wall gets it that gives no number, then with the other numbers. */
function trialsOf(facts: BlockFacts): Trial[] {
  const thick = thicknessesOf(facts);
  const own = facts.line('n')?.number('n') ?? 1;
  const others = takesNumber(facts) ? NUMBERS.filter((n) => n !== own) : [];
  const numbered = others.flatMap((n) => thick.map((thickness) => ({ thickness, n })));
  return [...thick.map((thickness) => ({ thickness })), ...numbered];
}

/** The thicknesses it is given for; without one, the least that its units show. */
function thicknessesOf(facts: BlockFacts): Thickness[] {
  const lines = facts.lines('thick');
  if (lines.length) return lines.flatMap((line) => halvesSetOut(line.number('thick')) ?? []);
  const bond = bondOf(facts, undefined, 1);
  return bond?.courses.some(({ units }) => units.includes('header')) ? [2] : [1];
}

function proofOf(facts: BlockFacts, trial: Trial): BondProof | undefined {
  const { thickness, n } = trial;
  const bond = bondOf(facts, n, thickness);
  return bond && isTried(bond, thickness) ? proveBond(bond, thickness, everyOf(trial)) : undefined;
}

function isTried(bond: BondPattern, thickness: Thickness): boolean {
  const units = bond.courses.reduce((sum, course) => sum + course.units.length, 0);
  const few = units <= MOST_UNITS && bond.courses.length <= MOST_COURSES;
  return few && depthsOf(bond, thickness) !== null;
}

const isSound = ({ pattern, lengths }: BondProof) => pattern.length + lengths.length === 0;

function remarkOf(facts: BlockFacts, trial: Trial, proof: BondProof): Remark {
  const { thickness, n } = trial;
  const { pattern, lengths, tried } = proof;
  const [first] = pattern;
  const fault = first ?? lengths[0]!.fault;
  const where = first
    ? 'Wherever the pattern runs'
    : `Between two free ends, at ${lengths.length} of ${tried} lengths from 1 to 12 bricks (the shortest ${inBricks(lengths[0]!.halves)})`;
  const { courses } = bondOf(facts, n, thickness)!;
  const cycle = courses.length;
  const asked = n === undefined ? '' : `, where a wall asks for ${facts.name} ${n}`;
  const message = `${facts.title} does not bond as it is written${asked}. ${where}, ${saidOf(fault, cycle)} Let a course begin elsewhere, or ask for less lap.`;
  return {
    code: 'bond-unsound',
    severity: 'warning',
    origin: lineOf(facts, trial, fault.course % cycle)?.origin ?? nameOrigin(facts.block),
    message,
    ways: () => waysOf(facts, trial, fault.course % cycle),
  };
}

function saidOf({ kind, course, measured, wanted }: LayoutFault, cycle: number): string {
  const upper = (course % cycle) + 1;
  const lower = ((course + cycle - 1) % cycle) + 1;
  const over = upper === lower ? 'each course' : `course ${upper}`;
  const under = upper === lower ? 'the one below' : `course ${lower}`;
  if (kind === 'aligned') return `perpends of ${over} stand straight over those of ${under}.`;
  if (kind === 'lap-short')
    return `${over} laps ${under} by only ${ofBrick(measured)} of a brick where it asks for ${ofBrick(wanted)}.`;
  if (kind === 'closer-at-end' || kind === 'closer-misplaced')
    return `course ${upper} puts a closer elsewhere than beside its quoin header.`;
  if (kind === 'closer-missing')
    return `${over} and ${under} want a closer or a three-quarter bat beside the quoin header.`;
  return `course ${upper} cannot be closed.`;
}

/** Sample bricks are 240 mm with their joint; nearest twelfth, which quarters and thirds both are. */
function ofBrick(mm: number): string {
  const twelfths = Math.round(mm / 20);
  const part = [12, 6, 4, 3, 2, 1].find((each) => twelfths % each === 0) ?? 1;
  return twelfths === 0 ? 'nothing' : `${twelfths / part}/${12 / part}`;
}

function inBricks(halves: number): string {
  return halves === 2 ? '1 brick' : `${halves / 2} bricks`;
}

/** The line that gives a course of the cycle, where each line gives one. */
function lineOf(facts: BlockFacts, { thickness }: Trial, course: number): LineFacts | undefined {
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
function waysOf(facts: BlockFacts, trial: Trial, fault: number): RemarkWay[] {
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
    const title = `Let course ${i + 1} begin ${start} brick from the end`;
    return edit ? [{ title, edits: [edit] }] : [];
  });
}

function lapsOf(facts: BlockFacts): RemarkWay[] {
  const line = facts.line('lap');
  if (!line?.values.lap) return [];
  return LAPS.map((part) => ({
    title: `Ask for a lap of ${part} brick`,
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
  return [trial, ...trialsOf(after)].every((each) => {
    const bond = bondOf(after, each.n, each.thickness);
    return bond && isTried(bond, each.thickness) && bondHolds(bond, each.thickness, everyOf(each));
  });
}
