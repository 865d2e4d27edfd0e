import type { Step, WallSpec } from '../types';

/** A stretch of a wall's top or of the ground under it: mm along the wall, courses above the lowest ground. */
export interface Level {
  readonly from: number;
  readonly to: number;
  readonly level: number;
}

/** Where a line steps: mm from the wall's left end, and by how many courses, up positive, from there to the right. */
export interface StepAt {
  readonly at: number;
  readonly by: number;
}

/** Steps nearer one another, or to an end of the wall, are at one place, mm. */
const SAME = 1e-6;

/** A line that begins at `start` courses and steps; a wall without steps has one stretch. */
export function levelsOf(length: number, start: number, steps: readonly StepAt[]): Level[] {
  const sorted = [...steps].sort((a, b) => a.at - b.at);
  const levels: Level[] = [];
  let from = 0;
  let level = start;
  for (const { at, by } of sorted) {
    if (at >= length - SAME) break;
    if (at > from + SAME) {
      levels.push({ from, to: at, level });
      from = at;
    }
    level += by;
  }
  levels.push({ from, to: length, level });
  return levels;
}

/** How many courses up the line is at `x` mm; at a step, what lies to the right of it. */
export function levelAt(levels: readonly Level[], x: number): number {
  const found = levels.find(({ to }) => x < to - SAME) ?? levels.at(-1);
  return found?.level ?? 0;
}

/** Every stretch over which both the top and the ground are level, from the left. */
export function stretchesOf(
  ground: readonly Level[],
  top: readonly Level[],
): { from: number; to: number; bottom: number; top: number }[] {
  const ends = [...ground, ...top].map(({ to }) => to).sort((a, b) => a - b);
  let from = 0;
  return ends.flatMap((to) => {
    if (to <= from + SAME) return [];
    const middle = (from + to) / 2;
    const stretch = { from, to, bottom: levelAt(ground, middle), top: levelAt(top, middle) };
    from = to;
    return [stretch];
  });
}

/** What is not built of a wall whose spec is a full rectangle of `courses`: above a lower top, and in higher ground. */
export function stepsOf(ground: readonly Level[], top: readonly Level[], courses: number): Step[] {
  const over = top.map(({ from, to, level }) => ({ from, to, bottom: level, top: courses }));
  const under = ground.map(({ from, to, level }) => ({ from, to, bottom: 0, top: level }));
  return [...over, ...under].filter((step) => step.top > step.bottom);
}

type Stepping = Pick<WallSpec, 'length' | 'courses' | 'steps'>;

/** The ground under a wall that was set out, as its steps leave it. */
export function groundOf(spec: Stepping): Level[] {
  const under = (spec.steps ?? []).filter(({ bottom }) => bottom === 0);
  return alongOf(spec.length, under, 0, ({ top }) => top);
}

/** The top of a wall that was set out, as its steps leave it. */
export function topOf(spec: Stepping): Level[] {
  const over = (spec.steps ?? []).filter(({ bottom }) => bottom > 0);
  return alongOf(spec.length, over, spec.courses, ({ bottom }) => bottom);
}

/** `usual` wherever none of the steps is. */
function alongOf(
  length: number,
  steps: readonly Step[],
  usual: number,
  level: (step: Step) => number,
): Level[] {
  const levels: Level[] = [];
  let at = 0;
  for (const step of [...steps].sort((a, b) => a.from - b.from)) {
    if (step.from > at + SAME) levels.push({ from: at, to: step.from, level: usual });
    levels.push({ from: step.from, to: step.to, level: level(step) });
    at = step.to;
  }
  if (at < length - SAME || levels.length === 0)
    levels.push({ from: at, to: length, level: usual });
  return levels;
}

/** The most courses anywhere between the ground and the top above it. */
export function mostCourses(ground: readonly Level[], top: readonly Level[]): number {
  return Math.max(0, ...stretchesOf(ground, top).map((s) => s.top - s.bottom));
}
