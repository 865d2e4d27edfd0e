/** How much of a plan rectangles cover: a sweep from left to right over a tree of what is covered across. */
import type { Area } from '../types';

/** From `from` to `to` along the work: what is covered across it, mm, and the sum of all that lies there. */
export interface Slab {
  readonly from: number;
  readonly to: number;
  readonly covered: number;
  readonly sum: number;
}

/** Counts of intervals over sorted coordinates: covered length in log n a change. */
class Across {
  private readonly counts: Int32Array;
  private readonly lengths: Float64Array;
  sum = 0;

  constructor(private readonly ys: readonly number[]) {
    this.counts = new Int32Array(4 * ys.length + 4);
    this.lengths = new Float64Array(4 * ys.length + 4);
  }

  get covered(): number {
    return this.lengths[1]!;
  }

  change(from: number, to: number, by: 1 | -1): void {
    this.sum += by * (to - from);
    if (this.ys.length > 1) this.at(1, 0, this.ys.length - 1, from, to, by);
  }

  private at(node: number, low: number, high: number, from: number, to: number, by: number): void {
    const { ys, counts, lengths } = this;
    if (to <= ys[low]! || from >= ys[high]!) return;
    if (from <= ys[low]! && to >= ys[high]!) counts[node] = counts[node]! + by;
    else {
      const middle = (low + high) >> 1;
      this.at(2 * node, low, middle, from, to, by);
      this.at(2 * node + 1, middle, high, from, to, by);
    }
    if (counts[node]! > 0) lengths[node] = ys[high]! - ys[low]!;
    else if (high - low === 1) lengths[node] = 0;
    else lengths[node] = lengths[2 * node]! + lengths[2 * node + 1]!;
  }
}

/** Slabs from left to right, cut wherever a rectangle begins or ends. */
export function slabsOf(areas: readonly Area[]): Slab[] {
  const real = areas.filter((a) => a.width > 0 && a.height > 0 && isReal(a));
  const ys = [...new Set(real.flatMap((a) => [a.y, a.y + a.height]))].sort((a, b) => a - b);
  const events = real.flatMap((a) => [
    { x: a.x, by: 1 as const, a },
    { x: a.x + a.width, by: -1 as const, a },
  ]);
  events.sort((a, b) => a.x - b.x);
  const across = new Across(ys);
  const slabs: Slab[] = [];
  for (const [i, { x, by, a }] of events.entries()) {
    across.change(a.y, a.y + a.height, by);
    const next = events[i + 1]?.x ?? x;
    if (next > x) slabs.push({ from: x, to: next, covered: across.covered, sum: across.sum });
  }
  return slabs;
}

function isReal({ x, y, width, height }: Area): boolean {
  return [x, y, width, height].every(Number.isFinite);
}

/** Mm² that the slabs cover, and mm² that lie there, what overlaps counted as often as it does. */
export function areaOf(slabs: readonly Slab[]): { covered: number; sum: number } {
  let covered = 0;
  let sum = 0;
  for (const { from, to, covered: c, sum: s } of slabs) {
    covered += (to - from) * c;
    sum += (to - from) * s;
  }
  return { covered, sum };
}
