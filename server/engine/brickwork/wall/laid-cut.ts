/** The cut that a stretch is laid with, read off the courses as they lie: a way out says that and nothing else. */
import { type Decided, type Segment, type SettingOut, setOut, type Where } from '../../setting-out';

export interface LaidCut {
  /** Lengths of its cuts, mm, in the order of the courses; courses cut alike are told once. */
  readonly lengths: readonly number[];
  /** Most cuts in one course. */
  readonly each: number;
  readonly joint: number;
  /** In which third of the stretch they lie; both where one lies at either end. */
  readonly at: Where | 'both';
}

type Ends = Pick<Segment, 'from' | 'to'>;

/** Nearer than this is the same cut, mm: finer than is marked by hand. */
const SAME = 0.05;

/** The cuts of a stretch, wherever in the height of the wall it lies; nothing where it has none. */
export function cutIn(out: SettingOut, ends: Ends): LaidCut | undefined {
  const segments = out.bands.flatMap(({ segments }) =>
    segments.filter((s) => s.from === ends.from && s.to === ends.to),
  );
  const courses = segments.flatMap((segment) =>
    segment.runs.map((run) => ({ run, cuts: cutsOf(run) })),
  );
  const cuts = courses.flatMap((c) => c.cuts);
  if (!cuts.length) return undefined;
  const length = ends.to - ends.from;
  const thirds = new Set(cuts.map(({ middle }) => thirdOf(middle / length)));
  return {
    lengths: distinct(cuts.map((c) => c.length)),
    each: Math.max(...courses.map((c) => c.cuts.reduce((sum, cut) => sum + cut.count, 0))),
    joint: courses.find((c) => c.cuts.length)!.run.joint,
    at:
      thirds.size === 1
        ? [...thirds][0]!
        : thirds.size === 2 && !thirds.has('middle')
          ? 'both'
          : 'middle',
  };
}

/** The same as it would be with the cut wished for at one place, all other decisions kept. */
export function cutAt(out: SettingOut, ends: Ends, where: Where): LaidCut | undefined {
  const { spec } = out;
  const others = (spec.decided ?? []).filter((d) => d.from !== ends.from || d.to !== ends.to);
  const own: Decided = { ...ends, limits: spec.limits, cutAt: where };
  return cutIn(setOut({ ...spec, decided: [...others, own] }), ends);
}

function cutsOf(run: Segment['runs'][number]) {
  const found: { length: number; count: number; middle: number }[] = [];
  let x = run.from + run.endJoints.left * run.joint;
  for (const { pieces, times } of run.groups) {
    const period = pieces.reduce((sum, p) => sum + p.count * (p.length + run.joint), 0);
    let at = x;
    for (const { piece, length, count } of pieces) {
      if (piece === 'cut') found.push({ length, count: count * times, middle: at + length / 2 });
      at += count * (length + run.joint);
    }
    x += times * period;
  }
  return found;
}

function thirdOf(share: number): Where {
  return share < 1 / 3 ? 'left' : share > 2 / 3 ? 'right' : 'middle';
}

function distinct(lengths: readonly number[]): number[] {
  return lengths.filter((a, i) => lengths.findIndex((b) => Math.abs(a - b) < SAME) === i);
}
