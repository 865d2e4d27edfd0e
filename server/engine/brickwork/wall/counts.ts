/** Bricks and mortar of a wall and the piers in it, the damp course apart. */
import { exact } from '../../../../shared/exact';
import type { WallRun } from '../../findings/fit-run';
import type { LineFacts } from '../../resolve/env';
import {
  type CourseRange,
  type LaidRun,
  type SettingOut,
  setOut,
  sumTallies,
  type Tally,
  tally,
  tallyPier,
} from '../../setting-out';
import { fact, type Term } from '../../working/term';
import { type Counted, countBricks, heightTerms } from '../count';
import { type Brick, brickOf } from '../goods';
import { lengthText } from '../lengths';
import type { Masonry } from '../masonry';
import { pieceNamed } from '../pieces';
import { sideTerms } from '../plan-terms';
import { decidedRuns, runsOf } from './fits';
import type { WallPlan } from './spec';

export interface Dpc {
  readonly line: LineFacts;
  readonly brick: Brick;
  readonly courses: Term;
  readonly counted: Counted;
}

export interface WallCounts {
  readonly out: SettingOut;
  /** Its stretches between fixed points, from the left. */
  readonly runs: readonly WallRun[];
  /** Stretches of wall between fixed points, above the damp course. */
  readonly wall: Counted;
  readonly piers: Counted | undefined;
  readonly dpc: Dpc | undefined;
  /** Everything, for the mortar. */
  readonly all: Tally;
}

/** Laid once to know its runs, and again where a `fit` line decides for one. */
function layOut(masonry: Masonry, plan: WallPlan): { out: SettingOut; runs: readonly WallRun[] } {
  const out = setOut(plan.spec);
  const runs = runsOf(masonry, plan, out);
  const decided = decidedRuns(runs, plan.spec.limits);
  return { out: decided.length ? setOut({ ...plan.spec, decided }) : out, runs };
}

export function countWall(masonry: Masonry, plan: WallPlan): WallCounts {
  const { out, runs } = layOut(masonry, plan);
  const damp = dpcCourses(masonry);
  const above: CourseRange = { from: damp, to: null };
  const wall = counted(masonry, plan, 'Bricks in the wall', [tally(out, above)], () =>
    coursesText(out, masonry),
  );
  const pierTallies = plan.piers.map((p) =>
    tallyPier(p.spec, plan.spec.unit, plan.spec.joints, above),
  );
  const piers = pierTallies.length
    ? counted(masonry, plan, 'Bricks in its piers', pierTallies)
    : undefined;
  const dpc = damp > 0 ? countDpc(masonry, plan, out, damp) : undefined;
  const all = sumTallies([
    wall.tally,
    ...(piers ? [piers.tally] : []),
    ...(dpc ? [dpc.counted.tally] : []),
  ]);
  return { out, runs, wall, piers, dpc, all };
}

function counted(
  masonry: Masonry,
  plan: WallPlan,
  label: string,
  tallies: readonly Tally[],
  how?: () => string[],
): Counted {
  return countBricks(label, tallies, masonry, inputsOf(masonry, plan), how);
}

/** The facts that a wall is laid from, each with its line; made once for all counts of it. */
export function inputsOf(masonry: Masonry, plan: WallPlan): readonly Term[] {
  let inputs = made.get(plan);
  if (!inputs) {
    inputs = newInputs(masonry, plan);
    made.set(plan, inputs);
  }
  return inputs;
}

const made = new WeakMap<WallPlan, readonly Term[]>();

function newInputs(masonry: Masonry, plan: WallPlan): Term[] {
  const { facts } = masonry;
  const length = facts.line('length')!.term('length', 'length of the wall');
  const thick = facts.orDefault('thick')?.term('thick', 'thickness');
  const openings = plan.openings.flatMap(({ facts: o }) => [
    o.line('from')!.term('distance', `opening ${o.name}, from`),
    o.line('width')!.term('width', `opening ${o.name}, width`),
  ]);
  const piers = plan.piers.flatMap((p) => [
    { ...p.height.term, label: `pier ${p.spec.name}, courses` },
    ...sideTerms(p.facts, `pier ${p.spec.name}, `),
  ]);
  return [
    length,
    ...heightTerms(plan.height, masonry),
    ...(thick ? [thick] : []),
    ...openings,
    ...piers,
  ];
}

export function dpcCourses(masonry: Masonry): number {
  return Math.floor(masonry.facts.line('dpc')?.number('courses') ?? 0);
}

function countDpc(masonry: Masonry, plan: WallPlan, out: SettingOut, courses: number): Dpc {
  const line = masonry.facts.line('dpc')!;
  const range: CourseRange = { from: 0, to: courses };
  const tallies = [
    tally(out, range),
    ...plan.piers.map((p) => tallyPier(p.spec, plan.spec.unit, plan.spec.joints, range)),
  ];
  const brick = brickOf(line, masonry.env, line.origin);
  const counts = counted(masonry, plan, 'Bricks in the damp course', tallies);
  return {
    line,
    brick,
    courses: fact('courses', exact(courses), 'courses', line.at('courses')),
    counted: counts,
  };
}

/** How each stretch was laid, course pattern by course pattern. */
function coursesText(out: SettingOut, masonry: Masonry): string[] {
  const lines: string[] = [];
  for (const band of out.bands)
    for (const segment of band.segments) {
      const where = `${lengthText(masonry.env, segment.from)} to ${lengthText(masonry.env, segment.to)}`;
      lines.push(`Courses ${band.from + 1} to ${band.to}, from ${where}:`);
      lines.push(...distinctRuns(segment.runs).map((run) => `  ${runText(run, masonry)}`));
    }
  return lines;
}

/** Courses that are laid alike are told once. */
function distinctRuns(runs: readonly LaidRun[]): LaidRun[] {
  const seen = new Set<string>();
  return runs.filter((run) => {
    const key = JSON.stringify(run.groups);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function runText(run: LaidRun, masonry: Masonry): string {
  const groups = run.groups.map(({ pieces, times }) => {
    const text = pieces
      .map(({ piece, count, length }) => {
        const of = piece === 'cut' ? ` of ${lengthText(masonry.env, length)}` : '';
        return `${count > 1 ? `${count} ` : ''}${pieceNamed(piece, count)}${of}`;
      })
      .join(', ');
    return times > 1 ? `${times} × (${text})` : text;
  });
  return `${groups.join(', ')}; joints of ${lengthText(masonry.env, run.joint)}`;
}
