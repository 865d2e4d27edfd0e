/** The cut that a stretch is laid with, read off the courses as they lie: a way out says that and nothing else. */
import type { Segment, SettingOut, Where } from '../../setting-out';

export interface LaidCut {
  /** Lengths of its cuts, mm, in the order of the courses; courses cut alike are told once. */
  readonly lengths: readonly number[];
  /** Most cuts in one course. */
  readonly each: number;
  readonly joint: number;
  /** In which third of the stretch they lie; both where one lies at either end. */
  readonly at: Where | 'both';
}

/** Nearer than this is the same cut, mm: finer than is marked by hand. */
const SAME = 0.05;

/** Stretches by their ends, wherever in the height of a wall they lie. */
export function byEnds({ bands }: SettingOut): ReadonlyMap<string, readonly Segment[]> {
  const found = new Map<string, Segment[]>();
  for (const segment of bands.flatMap((band) => band.segments)) {
    const known = found.get(endsOf(segment));
    if (known) known.push(segment);
    else found.set(endsOf(segment), [segment]);
  }
  return found;
}

export function endsOf({ from, to }: Pick<Segment, 'from' | 'to'>): string {
  return `${from} ${to}`;
}

/** The cuts of like stretches; nothing where they have none. */
export function cutIn(segments: readonly Segment[]): LaidCut | undefined {
  const courses = segments.flatMap(({ runs }) => runs.map((run) => ({ run, cuts: cutsOf(run) })));
  const cuts = courses.flatMap((c) => c.cuts);
  const [first] = segments;
  if (!cuts.length || !first) return undefined;
  const length = first.to - first.from;
  return {
    lengths: distinct(cuts.map((c) => c.length)),
    each: Math.max(...courses.map((c) => c.cuts.reduce((sum, cut) => sum + cut.count, 0))),
    joint: courses.find((c) => c.cuts.length)!.run.joint,
    at: placeOf(cuts.map(({ middle }) => thirdOf(middle / length))),
  };
}

function placeOf(thirds: readonly Where[]): LaidCut['at'] {
  const [first, ...others] = new Set(thirds);
  if (!others.length) return first!;
  return thirds.includes('middle') ? 'middle' : 'both';
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
