import type { LaidRun, PieceGroup, Segment } from '../types';

/** Joints of a run by the place of each group, so that a window far along it is found at once. */
interface Index {
  /** Mm from the segment's left end to each group. */
  readonly starts: readonly number[];
  readonly widths: readonly number[];
}

const indexes = new WeakMap<LaidRun, Index>();

function indexOf(run: LaidRun): Index {
  const known = indexes.get(run);
  if (known) return known;
  const widths = run.groups.map((group) => widthOf(group, run.joint));
  let at = run.from + run.endJoints.left * run.joint;
  const starts = widths.map((width, i) => {
    const start = at;
    at += width * run.groups[i]!.times;
    return start;
  });
  const index = { starts, widths };
  indexes.set(run, index);
  return index;
}

function widthOf({ pieces }: PieceGroup, joint: number): number {
  return pieces.reduce((sum, { count, length }) => sum + count * (length + joint), 0);
}

/** First index of an ordered list of numbers that is at least `least`, its length if none. */
export function firstFrom(ordered: readonly number[], least: number): number {
  let low = 0;
  let high = ordered.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ordered[middle]! >= least) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * Middles of the joints between pieces in one course of a stretch, mm along the wall, from `low` to
 * `high` and in order. What lies outside is stepped over.
 */
export function jointsOf(segment: Segment, course: number, low: number, high: number): number[] {
  const run = segment.runs[course % segment.runs.length]!;
  const found: number[] = [];
  const end = segment.from + run.from + run.length - run.endJoints.right * run.joint;
  const { starts, widths } = indexOf(run);
  const first = Math.max(0, firstFrom(starts, low - segment.from) - 1);
  for (let i = first; i < starts.length && segment.from + starts[i]! <= high; i++) {
    const { pieces, times } = run.groups[i]!;
    const from = segment.from + starts[i]!;
    const width = widths[i]!;
    for (let t = turns((low - from) / width, times); t < times; t++) {
      if (from + t * width > high) break;
      collect(pieces, from + t * width, run.joint, { low, high, end }, found);
    }
  }
  return found;
}

const turns = (whole: number, most: number) => Math.min(most, Math.max(0, Math.floor(whole)));

function collect(
  pieces: PieceGroup['pieces'],
  from: number,
  joint: number,
  { low, high, end }: { low: number; high: number; end: number },
  found: number[],
): void {
  let x = from;
  for (const { length, count } of pieces) {
    const pitch = length + joint;
    for (let i = turns((low - x) / pitch - 1, count); i < count; i++) {
      const middle = x + (i + 1) * pitch - joint / 2;
      if (middle > high) break;
      if (middle >= low && middle < end) found.push(middle);
    }
    x += count * pitch;
  }
}
