/** Ways out of a run that does not work, the most welcome first. */
import {
  type Fit,
  type JointWay,
  type LengthWay,
  type Row,
  rowOf,
  type Segment,
  sizeOf,
  type Way,
} from '../../setting-out';
import { laidOnce } from './laid-once';
import type { WallPlan } from './spec';

/** Whether the bond's own pattern closes on so many half bricks between these ends. */
function closesOn(halves: number, segment: Segment, plan: WallPlan): boolean {
  const { spec } = plan;
  const { left, right } = segment;
  const length = sizeOf(rowIn(segment, plan), halves);
  const courses = spec.bond.courses.length;
  const alone = {
    openings: [],
    piers: [],
    steps: [],
    movement: [],
    decided: [],
    only: 'face' as const,
  };
  const bare = { ...spec, left, right, length, courses, ...alone };
  return laidOnce(bare).bands.every((band) => band.segments.every((s) => !s.broken.length));
}

/** The ways of a run as a wall sees them, found when somebody asks. */
export function ranked(fit: Fit, best: number, segment: Segment, plan: WallPlan): Fit {
  const { length, works, pieces, joint, numbers } = fit;
  let ways: Way[] | undefined;
  return {
    length,
    works,
    pieces,
    joint,
    numbers,
    get ways() {
      ways ??= closingFirst(oneCut(sensible(fit.ways, best)), segment, plan);
      return ways;
    },
  };
}

/** However it is cut, a wall is laid in one way: see {@link cutIn}. */
function oneCut(ways: readonly Way[]): Way[] {
  const first = ways.find((w) => w.kind === 'cut');
  return ways.filter((w) => w.kind !== 'cut' || w === first);
}

/** Other lengths on which the bond closes come before those on which it would be broken. */
function closingFirst(ways: readonly Way[], segment: Segment, plan: WallPlan): Way[] {
  const lengths = ways.filter((w): w is LengthWay => w.kind === 'length');
  const closes = lengths.filter((w) => closesOn(2 * w.wholes + w.half, segment, plan));
  const inOrder = [...closes, ...lengths.filter((w) => !closes.includes(w))];
  return ways.map((w) => (w.kind === 'length' ? inOrder.shift()! : w));
}

/** As far as one looks for a length on which a bond closes, in half bricks. */
const FARTHEST = 8;

/** The nearest lengths, shorter and longer, on which the bond’s own pattern closes. */
export function closingLengths(segment: Segment, length: number, plan: WallPlan): LengthWay[] {
  const row = rowIn(segment, plan);
  return [-1, 1].flatMap((side) => {
    for (let by = 1; by <= FARTHEST; by++) {
      const halves = segment.halves + side * by;
      if (halves < 1) return [];
      if (closesOn(halves, segment, plan)) return [lengthWay(halves, sizeOf(row, halves), length)];
    }
    return [];
  });
}

function lengthWay(halves: number, size: number, length: number): LengthWay {
  return {
    kind: 'length',
    wholes: Math.floor(halves / 2),
    half: (halves % 2) as 0 | 1,
    length: size,
    change: size - length,
  };
}

/** Of a joint: so far off it a way that is the only one of its kind may be, and still be worth a word. */
const NEAR = 1 / 2;

/**
 * Of whole bricks and half-bond, both at joints nobody would accept, only the nearer to the best joint is offered; where
 * there is but one of them, it has to be near.
 */
function sensible(ways: readonly Way[], best: number): readonly Way[] {
  const off = (kind: 'joints' | 'half-bond') => {
    const way = ways.find((w): w is JointWay => w.kind === kind);
    return way && !way.acceptable ? Math.abs(way.joint - best) : 0;
  };
  const worse = off('half-bond') > off('joints') ? 'half-bond' : 'joints';
  if (!off(worse)) return ways;
  const alone = !off(worse === 'joints' ? 'half-bond' : 'joints');
  if (alone && off(worse) <= NEAR * best) return ways;
  return ways.filter((w) => w.kind !== worse || ways.length === 1);
}

export function rowIn(segment: Segment, { spec }: WallPlan): Row {
  return rowOf(spec.unit, spec.joints.perpend, segment, spec.limits);
}
